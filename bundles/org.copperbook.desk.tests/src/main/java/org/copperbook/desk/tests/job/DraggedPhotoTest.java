package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.run.OwnStart;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A photo is dragged with the pointer itself onto a page; in a start of its own, since keys sent after it are lost. */
@OwnStart
class DraggedPhotoTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final String LIST = "/photos";

    private final Desktop desktop = new Desktop();
    @TempDir
    private Path folder;

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void aFileLetGoOverAFieldOrBesideItIsTaken() throws Exception {
        desktop.beSomebody();
        JobEditor editor = desktop.open("2026-0008");
        editor.show(BOOKING);
        desktop.settle(editor);
        int before = editor.document().rows(BOOKING, LIST).size();
        Path file = folder.resolve("dragged.png");
        ImageLoader saved = new ImageLoader();
        saved.data = new ImageData[] {new ImageData(60, 40, 24, new PaletteData(0xff0000, 0xff00, 0xff))};
        saved.save(file.toString(), SWT.IMAGE_PNG);
        Text field = (Text) desktop.field("/customer");
        String customer = field.getText();
        try (DraggedFile dragged = new DraggedFile(desktop, file)) {
            dragged.onto(field);
            desktop.until("the photo let go over a field is in the record",
                    () -> editor.document().rows(BOOKING, LIST).size() == before + 1);
            assertEquals(customer, field.getText());
            desktop.command("org.eclipse.ui.edit.undo");
            assertEquals(before, editor.document().rows(BOOKING, LIST).size());
            dragged.onto(field.getParent());
            desktop.until("the photo let go beside a field is in the record",
                    () -> editor.document().rows(BOOKING, LIST).size() == before + 1);
        }
        String hash = editor.document().value(BOOKING, LIST + "/" + before + "/hash").asText();
        assertEquals(-1, Files.mismatch(file, Files.write(folder.resolve("kept"),
                desktop.session().store().photo(hash).orElseThrow())));
    }
}
