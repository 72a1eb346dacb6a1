package org.copperbook.desk.tests.run;

import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;

/** Keeps the screen as it was when a test failed, beside the report. */
record FailurePicture(Path folder) implements TestExecutionListener {

    @Override
    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
        Display display = Display.getCurrent();
        if (result.getStatus() == TestExecutionResult.Status.SUCCESSFUL || display == null) {
            return;
        }
        Path picture = folder.resolve(Progress.name(test).replaceAll("[^A-Za-z0-9.-]+", "-") + ".png");
        Rectangle screen = display.getBounds();
        Image image = new Image(display, screen.width, screen.height);
        GC gc = new GC(display);
        try {
            gc.copyArea(image, screen.x, screen.y);
            var loader = new ImageLoader();
            loader.data = new ImageData[] {image.getImageData()};
            loader.save(picture.toString(), SWT.IMAGE_PNG);
            System.out.println("The screen at that moment: " + picture);
        } finally {
            gc.dispose();
            image.dispose();
        }
    }
}
