package org.copperbook.desk.picture;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.sheets.picture.PngPicture;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.SvgPicture;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** Takes a picture out of the window: to the clipboard, into a file, onto paper. Files are written in a job. */
public final class PictureOutput {

    private static final double COPY_SCALE = 2;
    private static final double FILE_SCALE = 3;

    private final PictureCanvas canvas;
    private Function<String, Optional<Path>> where = this::chosenFile;
    private Consumer<String> saying = said -> { };
    private Supplier<List<String>> heading;
    private double unitsPerInch;

    PictureOutput(PictureCanvas canvas) {
        this.canvas = canvas;
        heading = () -> PictureHeading.around(canvas, canvas.scene().title(), LocalDate.now());
    }

    /** Asks for the file's place in another way than with the system's dialog; given the ending, "svg" or "png". */
    public void askWhere(Function<String, Optional<Path>> asking) {
        where = asking;
    }

    /** Tells in words what became of a file; called on the display's thread. */
    public void onSaid(Consumer<String> listener) {
        saying = listener;
    }

    /** What stands over the picture on paper in place of job and title; asked for when it is printed. */
    public void headed(Supplier<List<String>> lines) {
        heading = lines;
    }

    /** The lines that stand over the picture on paper. */
    public List<String> heading() {
        return heading.get();
    }

    /**
     * Prints in real size with nothing over it, smaller only where the paper is too small.
     *
     * @param units units of the scene to an inch of paper
     */
    public void inRealSize(double units) {
        unitsPerInch = units;
        heading = List::of;
    }

    /** Prints as another does: under the same heading, in the same size. */
    void like(PictureOutput other) {
        heading = other::heading;
        unitsPerInch = other.unitsPerInch;
    }

    /** Puts the whole picture on the clipboard. */
    public void copy() {
        if (canvas.scene().isEmpty()) {
            return;
        }
        ImageData image = new ImageData(new ByteArrayInputStream(PngPicture.of(canvas.scene(), COPY_SCALE)));
        Clipboard clipboard = new Clipboard(canvas.getDisplay());
        try {
            clipboard.setContents(new Object[] {image}, new Transfer[] {ImageTransfer.getInstance()});
            saying.accept(DeskWords.text("picture.copied"));
        } finally {
            clipboard.dispose();
        }
    }

    /** Saves as SVG where the person says. */
    public void saveSvg() {
        save("svg", scene -> SvgPicture.of(scene).getBytes(StandardCharsets.UTF_8));
    }

    /** Saves as PNG where the person says. */
    public void savePng() {
        save("png", scene -> PngPicture.of(scene, FILE_SCALE));
    }

    /** Prints on one page where the person says. */
    public void print() {
        if (canvas.scene().isEmpty()) {
            return;
        }
        PrintDialog dialog = new PrintDialog(canvas.getShell());
        PrinterData wanted = new PrinterData();
        wanted.orientation = PicturePage.orientation(canvas.scene());
        dialog.setPrinterData(wanted);
        PrinterData data = dialog.open();
        if (data != null) {
            Printer printer = new Printer(data);
            try {
                saying.accept(DeskWords.text(PicturePage.print(printer, heading(), canvas.scene(), unitsPerInch) ? "picture.printed"
                        : "picture.notPrinted"));
            } finally {
                printer.dispose();
            }
        }
    }

    private void save(String ending, Function<Scene, byte[]> drawing) {
        Scene scene = canvas.scene();
        if (scene.isEmpty()) {
            return;
        }
        Display display = canvas.getDisplay();
        where.apply(ending).ifPresent(file -> new DeskJob(DeskWords.text("picture.task"), monitor -> {
            String said;
            try {
                Files.write(file, drawing.apply(scene));
                said = DeskWords.text("picture.saved", file);
            } catch (IOException e) {
                said = DeskWords.text("picture.notSaved", file, String.valueOf(e.getMessage()));
            }
            String words = said;
            display.asyncExec(() -> {
                if (!canvas.isDisposed()) {
                    saying.accept(words);
                }
            });
        }).schedule());
    }

    private Optional<Path> chosenFile(String ending) {
        FileDialog dialog = new FileDialog(canvas.getShell(), SWT.SAVE);
        dialog.setText(DeskWords.text("picture.saveTitle"));
        dialog.setFilterExtensions(new String[] {"*." + ending});
        dialog.setFileName(canvas.scene().title().replaceAll("[^\\p{L}\\p{N} _.-]", "-").strip() + "." + ending);
        dialog.setOverwrite(true);
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    Menu menu() {
        Menu menu = new Menu(canvas);
        item(menu, "picture.fit", canvas::fit);
        item(menu, "picture.larger", canvas::larger);
        item(menu, "picture.smaller", canvas::smaller);
        new MenuItem(menu, SWT.SEPARATOR);
        item(menu, "picture.copy", this::copy);
        item(menu, "picture.svg", this::saveSvg);
        item(menu, "picture.png", this::savePng);
        item(menu, "picture.print", this::print);
        return menu;
    }

    private static void item(Menu menu, String key, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(DeskWords.text(key));
        item.addListener(SWT.Selection, e -> action.run());
    }
}
