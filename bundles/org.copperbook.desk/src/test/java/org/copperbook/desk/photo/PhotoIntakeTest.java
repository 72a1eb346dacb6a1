package org.copperbook.desk.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.copperbook.desk.photo.PhotoIntake.Looked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are photos are taken as they are; what is none, or would choke the window, is refused with a clear line. */
class PhotoIntakeTest {

    @TempDir
    private Path folder;

    @Test
    void thePngHeadGivesTheSize() {
        Looked.Good good = assertInstanceOf(Looked.Good.class, PhotoIntake.look("end.png", png(640, 480)));
        assertEquals(new ImageHead(ImageHead.Kind.PNG, 640, 480, 0), good.head());
    }

    /** Orientation values and what they mean: Exif 2.3, tag 0x0112. */
    @ParameterizedTest
    @CsvSource({"1, 0", "3, 2", "6, 1", "8, 3"})
    void theCamerasHoldingOfAJpegIsRead(int orientation, int quarterTurns) throws IOException {
        Looked.Good good = assertInstanceOf(Looked.Good.class, PhotoIntake.look("end.jpg", jpeg(orientation)));
        assertEquals(new ImageHead(ImageHead.Kind.JPEG, 4000, 3000, quarterTurns), good.head());
    }

    @Test
    void theBytesAreTakenUnchanged() throws IOException {
        byte[] bytes = jpeg(6);
        Path file = Files.write(folder.resolve("drive end.JPG"), bytes);
        assertArrayEquals(bytes, assertInstanceOf(Looked.Good.class, PhotoIntake.read(file)).bytes());
    }

    @Test
    void aPictureThatClaimsToBeEnormousIsRefusedBeforeItIsDecoded() {
        String why = refused(PhotoIntake.look("bomb.png", png(60_000, 60_000)));
        assertTrue(why.contains("bomb.png") && why.contains("left out"), why);
        refused(PhotoIntake.look("bomb.png", png(-5, 10)));
        refused(PhotoIntake.look("bomb.svg", text("<svg xmlns='http://www.w3.org/2000/svg' width='1e9' height='9'/>"
                .replace("height='9'", "height='1000000'"))));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<!DOCTYPE svg [<!ENTITY a 'aaaa'>]><svg xmlns='http://www.w3.org/2000/svg'>&a;</svg>",
        "<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>",
        "<svg xmlns='http://www.w3.org/2000/svg'><foreignObject/></svg>"})
    void aDrawingThatBringsMoreThanAPictureIsRefused(String svg) {
        refused(PhotoIntake.look("drawing.svg", text(svg)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "no picture at all", "%PDF-1.7 something", "PK\u0003\u0004 a workbook", "<html></html>",
        "\u00ff\u00d8\u00ff", "RIFF", "BM"})
    void whatIsNoPictureIsRefused(String content) {
        refused(PhotoIntake.look("photo.jpg", content.getBytes(StandardCharsets.ISO_8859_1)));
    }

    @Test
    void aFileTooLargeAFolderAndAFileThatIsGoneAreRefused() throws IOException {
        Path large = folder.resolve("large.jpg");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(PhotoIntake.LARGEST_BYTES + 1);
        }
        assertTrue(refused(PhotoIntake.read(large)).contains("64 MB"));
        refused(PhotoIntake.read(folder));
        refused(PhotoIntake.read(folder.resolve("gone.jpg")));
    }

    @Test
    void anyTruncatedOrScrambledFileIsAnsweredAndNeverThrows() throws IOException {
        Random random = new Random(20261125);
        for (byte[] whole : new byte[][] {jpeg(6), png(800, 600), text("<svg width='10' height='10'></svg>")}) {
            for (int i = 0; i < 2000; i++) {
                byte[] bytes = java.util.Arrays.copyOf(whole, random.nextInt(whole.length + 1));
                for (int k = 0; k < 3 && bytes.length > 0; k++) {
                    bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
                }
                PhotoIntake.look("some.jpg", bytes);
            }
        }
    }

    private static String refused(Looked looked) {
        return assertInstanceOf(Looked.Refused.class, looked).why();
    }

    private static byte[] text(String words) {
        return words.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] png(int width, int height) {
        return ByteBuffer.allocate(64).put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}).putInt(13)
                .put(text("IHDR")).putInt(width).putInt(height).array();
    }

    /** Head of a 4000 x 3000 JPEG with a camera's notes before its size. */
    private static byte[] jpeg(int orientation) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(new byte[] {(byte) 0xFF, (byte) 0xD8});
        ByteBuffer notes = ByteBuffer.allocate(32);
        notes.put(text("Exif")).putShort((short) 0).put(text("MM")).putShort((short) 42).putInt(8);
        notes.putShort((short) 1).putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation);
        out.write(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, 34});
        out.write(notes.array());
        out.write(ByteBuffer.allocate(19).put((byte) 0xFF).put((byte) 0xC0).putShort((short) 17).put((byte) 8)
                .putShort((short) 3000).putShort((short) 4000).array());
        return out.toByteArray();
    }
}
