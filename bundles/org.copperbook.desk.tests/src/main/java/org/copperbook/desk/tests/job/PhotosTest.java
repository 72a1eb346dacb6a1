package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.photo.PhotosArea;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos come onto a page by file and by clipboard, are kept byte for byte, shown small and large, and named. */
class PhotosTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final String LIST = "/photos";

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);
    @TempDir
    private Path folder;
    private JobEditor editor;
    private PhotosArea area;

    @BeforeEach
    void aBookingIsOpen() throws Exception {
        desktop.beSomebody();
        editor = desktop.open("2026-0008");
        editor.show(BOOKING);
        desktop.settle(editor);
        area = desktop.photos();
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void aFileIsKeptByteForByteAndShown() throws Exception {
        Path file = picture("drive end.png", SWT.IMAGE_PNG, 900, 600);
        int before = rows();
        area.keep(List.of(file));
        desktop.until("the photo is in the record", () -> rows() == before + 1);
        String hash = row(before, "hash");
        assertEquals(sha256(Files.readAllBytes(file)), hash, "the record names the hash of the file's own bytes");
        assertArrayEquals(Files.readAllBytes(file), desktop.session().store().photo(hash).orElseThrow());
        assertEquals("drive end.png", row(before, "name"));
        desktop.until("the small picture is made", () -> area.isShown(before));
        Path saved = folder.resolve("saved.png");
        area.saveTo(hash, saved);
        desktop.until("the original is saved", () -> Files.exists(saved) && area.said().contains(saved.toString()));
        assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(saved));
    }

    @Test
    void aPictureAndAFileAreTakenFromTheClipboardByKey() throws Exception {
        int before = rows();
        ImageData picture = pixels(120, 80);
        onClipboard(picture, ImageTransfer.getInstance());
        pressPaste();
        desktop.until("the picture is in the record", () -> rows() == before + 1);
        byte[] kept = desktop.session().store().photo(row(before, "hash")).orElseThrow();
        ImageData back = new ImageLoader().load(new java.io.ByteArrayInputStream(kept))[0];
        assertEquals(picture.palette.getRGB(picture.getPixel(17, 9)), back.palette.getRGB(back.getPixel(17, 9)));
        Path file = picture("nde.jpg", SWT.IMAGE_JPEG, 300, 200);
        onClipboard(new String[] {file.toString()}, FileTransfer.getInstance());
        pressPaste();
        desktop.until("the file is in the record", () -> rows() == before + 2);
        assertEquals(sha256(Files.readAllBytes(file)), row(before + 1, "hash"));
    }

    @Test
    void whatIsNoPhotoIsSaidAndTheOthersAreKept() throws Exception {
        int before = rows();
        Path letter = Files.writeString(folder.resolve("letter.jpg"), "dear customer", StandardCharsets.UTF_8);
        byte[] whole = Files.readAllBytes(picture("end.png", SWT.IMAGE_PNG, 90, 60));
        Path bomb = Files.write(folder.resolve("bomb.png"), claiming(whole, 60_000));
        Path good = picture("good.png", SWT.IMAGE_PNG, 91, 60);
        area.keep(List.of(letter, bomb, good, good));
        desktop.until("the good one is kept", () -> rows() == before + 1);
        desktop.until("the others are named", () -> area.said().contains("letter.jpg")
                && area.said().contains("bomb.png"));
        Path damaged = Files.write(folder.resolve("half.png"), java.util.Arrays.copyOf(whole, whole.length / 2));
        area.keep(List.of(damaged));
        desktop.until("a damaged one is kept, since it may be all there is", () -> rows() == before + 2);
    }

    @Test
    void captionEnlargingTakingOutAndUndo() throws Exception {
        int before = rows();
        area.keep(List.of(picture("one.png", SWT.IMAGE_PNG, 400, 300)));
        desktop.until("the photo is in the record", () -> rows() == before + 1);
        Text caption = (Text) desktop.field("photo.captionText");
        caption.setFocus();
        caption.setText("burnt coil, drive end");
        caption.traverse(SWT.TRAVERSE_TAB_NEXT);
        desktop.work();
        assertEquals("burnt coil, drive end", row(before, "caption"));
        strip().notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("the photo stands there large", () -> large() != null);
        assertTrue(large().getText().contains("burnt coil"), large().getText());
        large().close();
        desktop.press("photo.remove");
        assertEquals(before, rows());
        desktop.command("org.eclipse.ui.edit.undo");
        assertEquals("burnt coil, drive end", row(before, "caption"), "undo brings the photo back with its words");
    }

    @Test
    void aStripOfManyPhotosMakesOnlyWhatIsInSight() throws Exception {
        int before = rows();
        List<Path> many = new java.util.ArrayList<>();
        for (int i = 0; i < 120; i++) {
            many.add(picture("many-" + i + ".png", SWT.IMAGE_PNG, 60 + i, 40));
        }
        area.keep(many);
        desktop.until("all are in the record", () -> rows() == before + 120);
        strip().setSelection(before);
        strip().showSelection();
        desktop.work();
        long filled = java.util.stream.IntStream.range(0, strip().getItemCount())
                .filter(i -> strip().getItem(i).getData("made") != null).count();
        assertTrue(strip().getItemCount() >= 120 && filled < 60, "of " + strip().getItemCount() + " rows " + filled
                + " were made");
    }

    private Table strip() {
        return (Table) desktop.field("photos");
    }

    private static Shell large() {
        for (Shell s : Display.getCurrent().getShells()) {
            if ("photo/large".equals(s.getData(org.copperbook.desk.Desk.ID))) {
                return s;
            }
        }
        return null;
    }

    private void pressPaste() {
        desktop.until("the page has the cursor", () -> desktop.field("photo.paste").setFocus());
        keys.control('v');
    }

    private int rows() {
        return editor.document().rows(BOOKING, LIST).size();
    }

    private String row(int index, String field) {
        return editor.document().rows(BOOKING, LIST).path(index).path(field).asText();
    }

    private static void onClipboard(Object what, Transfer kind) {
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        clipboard.setContents(new Object[] {what}, new Transfer[] {kind});
        clipboard.dispose();
    }

    private Path picture(String name, int format, int width, int height) throws IOException {
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {pixels(width, height)};
        Path file = folder.resolve(name);
        loader.save(file.toString(), format);
        return file;
    }

    private static ImageData pixels(int width, int height) {
        ImageData data = new ImageData(width, height, 24, new PaletteData(0xFF0000, 0xFF00, 0xFF));
        Random random = new Random(width * 31L + height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                data.setPixel(x, y, random.nextInt(0x1000000));
            }
        }
        return data;
    }

    /** A PNG whose head claims another width: bytes 16 to 19 (PNG specification, 11.2.2). */
    private static byte[] claiming(byte[] png, int width) {
        byte[] other = png.clone();
        java.nio.ByteBuffer.wrap(other).putInt(16, width).putInt(20, width);
        return other;
    }

    private static String sha256(byte[] bytes) throws Exception {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }
}
