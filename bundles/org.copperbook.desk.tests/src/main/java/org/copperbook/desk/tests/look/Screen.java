package org.copperbook.desk.tests.look;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;

/** The screen as it stands, as pixels and as a picture beside the reports of the tests. */
final class Screen {

    private Screen() {
    }

    /** What the screen shows now. */
    static ImageData pixels() {
        Display display = Display.getCurrent();
        Rectangle size = display.getBounds();
        Image image = new Image(display, size.width, size.height);
        GC gc = new GC(display);
        try {
            gc.copyArea(image, size.x, size.y);
            return image.getImageData();
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    /** Whether people want to look at every screen and not only at those with a flaw. */
    static boolean allWanted() {
        return Boolean.getBoolean("copperbook.tests.pictures");
    }

    /** Keeps a picture for people to look at; the name may hold any characters. */
    static void keep(ImageData pixels, String name) {
        Path folder = Path.of(System.getProperty("copperbook.tests.reports", "reports")).resolve("pictures");
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {pixels};
        loader.save(folder.resolve(name.replaceAll("[^A-Za-z0-9.-]+", "-") + ".png").toString(), SWT.IMAGE_PNG);
    }
}
