package org.copperbook.desk.photo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.copperbook.desk.text.DeskWords;

/** Looks at a file before it is kept as a photo: what is no picture, or would choke the window, is refused in words. */
final class PhotoIntake {

    /** Largest file kept. */
    static final long LARGEST_BYTES = 64L << 20;
    /** Most pixels that a file may claim to hold. */
    static final long MOST_PIXELS = 400_000_000L;

    /** What became of a file. */
    sealed interface Looked {

        /** It can be kept. */
        record Good(String name, byte[] bytes, ImageHead head) implements Looked {
        }

        /** It cannot, and why. */
        record Refused(String why) implements Looked {
        }
    }

    private PhotoIntake() {
    }

    /** Reads a file and looks at it. */
    static Looked read(Path file) {
        String name = file.getFileName() == null ? file.toString() : file.getFileName().toString();
        try {
            if (!Files.isRegularFile(file)) {
                return new Looked.Refused(DeskWords.text("photo.noFile", name));
            }
            if (Files.size(file) > LARGEST_BYTES) {
                return new Looked.Refused(DeskWords.text("photo.tooLarge", name, LARGEST_BYTES >> 20));
            }
            return look(name, Files.readAllBytes(file));
        } catch (IOException e) {
            return new Looked.Refused(DeskWords.text("photo.unread", name, String.valueOf(e.getMessage())));
        }
    }

    /** Looks at the bytes of a file. */
    static Looked look(String name, byte[] bytes) {
        Optional<ImageHead> head = ImageHead.of(bytes);
        if (bytes.length == 0) {
            return new Looked.Refused(DeskWords.text("photo.empty", name));
        }
        if (head.isEmpty()) {
            return new Looked.Refused(DeskWords.text("photo.noPicture", name));
        }
        if (head.get().width() < 0 || head.get().height() < 0 || head.get().pixels() > MOST_PIXELS) {
            return new Looked.Refused(DeskWords.text("photo.tooManyPixels", name, head.get().width(),
                    head.get().height()));
        }
        if (head.get().kind() == ImageHead.Kind.SVG && isProgram(bytes)) {
            return new Looked.Refused(DeskWords.text("photo.program", name));
        }
        return new Looked.Good(name, bytes, head.get());
    }

    /** A drawing that brings definitions of its own text, scripts or pages with it is no picture to be trusted. */
    private static boolean isProgram(byte[] svg) {
        String text = new String(svg, StandardCharsets.UTF_8).toLowerCase(java.util.Locale.ROOT);
        return text.contains("<!doctype") || text.contains("<!entity") || text.contains("<script")
                || text.contains("<foreignobject");
    }
}
