package org.copperbook.desk.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the first bytes of a picture file say of it, read without decoding the picture, so that a file that claims to be
 * enormous is found out before any memory is given to it.
 *
 * @param kind   format, told by the bytes and not by the file's name
 * @param width  pixels; 0 when the head does not say
 * @param height pixels; 0 when the head does not say
 * @param turn   how the camera was held: quarter turns clockwise that show the picture upright, 0 to 3
 */
record ImageHead(Kind kind, int width, int height, int turn) {

    /** Formats of picture files. */
    enum Kind {
        JPEG(true), PNG(true), GIF(true), BMP(true),
        /** Kept, but not shown by the toolkit on every system. */
        TIFF(false), WEBP(false), HEIC(false),
        /** Kept, but not shown: a drawing can be small and take for ever to draw, or name files of this computer. */
        SVG(false);

        private final boolean shown;

        Kind(boolean shown) {
            this.shown = shown;
        }

        /** Whether the window can show it. */
        boolean isShown() {
            return shown;
        }
    }

    private static final int JPEG_MARK = 0xFF;
    private static final int APP1 = 0xE1;
    private static final int START_OF_SCAN = 0xDA;
    private static final int ORIENTATION = 0x0112;
    private static final int SVG_HEAD = 4096;
    private static final Pattern SVG_ROOT = Pattern.compile("<svg\\b[^>]*>", Pattern.DOTALL);
    private static final Pattern SVG_SIZE = Pattern.compile("\\b(width|height)\\s*=\\s*[\"']\\s*([0-9.eE+]+)");
    private static final Pattern SVG_BOX = Pattern.compile(
            "\\bviewBox\\s*=\\s*[\"']\\s*\\S+[\\s,]+\\S+[\\s,]+([0-9.eE+]+)[\\s,]+([0-9.eE+]+)");

    /** Reads the head of a picture; empty when the bytes are no picture of a known format. */
    static Optional<ImageHead> of(byte[] bytes) {
        try {
            return Optional.ofNullable(read(bytes));
        } catch (IndexOutOfBoundsException | java.nio.BufferUnderflowException truncated) {
            return Optional.empty();
        }
    }

    /** Pixels of the whole picture. */
    long pixels() {
        return (long) width * height;
    }

    private static ImageHead read(byte[] b) {
        ByteBuffer in = ByteBuffer.wrap(b);
        if (starts(b, 0, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
            return new ImageHead(Kind.PNG, in.getInt(16), in.getInt(20), 0);
        }
        if (starts(b, 0, JPEG_MARK, 0xD8, JPEG_MARK)) {
            return jpeg(in);
        }
        if (starts(b, 0, 'G', 'I', 'F', '8')) {
            in.order(ByteOrder.LITTLE_ENDIAN);
            return new ImageHead(Kind.GIF, in.getShort(6) & 0xFFFF, in.getShort(8) & 0xFFFF, 0);
        }
        if (starts(b, 0, 'B', 'M') && b.length > 26) {
            in.order(ByteOrder.LITTLE_ENDIAN);
            return new ImageHead(Kind.BMP, in.getInt(18), Math.abs(in.getInt(22)), 0);
        }
        if (starts(b, 0, 'I', 'I', '*', 0) || starts(b, 0, 'M', 'M', 0, '*')) {
            return new ImageHead(Kind.TIFF, 0, 0, 0);
        }
        if (starts(b, 0, 'R', 'I', 'F', 'F') && starts(b, 8, 'W', 'E', 'B', 'P')) {
            return new ImageHead(Kind.WEBP, 0, 0, 0);
        }
        if (starts(b, 4, 'f', 't', 'y', 'p', 'h', 'e') || starts(b, 4, 'f', 't', 'y', 'p', 'm', 'i', 'f')) {
            return new ImageHead(Kind.HEIC, 0, 0, 0);
        }
        return svg(b);
    }

    /** Goes from segment to segment up to the one with the size; on the way the camera may say how it was held. */
    private static ImageHead jpeg(ByteBuffer in) {
        int turn = 0;
        int at = 2;
        while (true) {
            if ((in.get(at) & 0xFF) != JPEG_MARK) {
                return null;
            }
            int marker = in.get(at + 1) & 0xFF;
            if (marker == JPEG_MARK) {
                at++;
                continue;
            }
            int length = in.getShort(at + 2) & 0xFFFF;
            boolean size = marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
            if (size) {
                return new ImageHead(Kind.JPEG, in.getShort(at + 7) & 0xFFFF, in.getShort(at + 5) & 0xFFFF, turn);
            }
            if (marker == START_OF_SCAN || length < 2) {
                return null;
            }
            if (marker == APP1) {
                turn = held(in, at + 4, length - 2).orElse(turn);
            }
            at += 2 + length;
        }
    }

    /** The orientation among a camera's notes (Exif 2.3, tag 0x0112), as quarter turns clockwise. */
    private static OptionalInt held(ByteBuffer whole, int from, int length) {
        if (length < 20 || from + length > whole.capacity()
                || !starts(whole.array(), from, 'E', 'x', 'i', 'f', 0, 0)) {
            return OptionalInt.empty();
        }
        ByteBuffer in = ByteBuffer.wrap(whole.array(), from + 6, length - 6).slice();
        in.order(in.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = in.getInt(4);
        if (directory < 8 || directory + 2 > in.capacity()) {
            return OptionalInt.empty();
        }
        int entries = in.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries && directory + 2 + 12 * (i + 1) <= in.capacity(); i++) {
            int entry = directory + 2 + 12 * i;
            if ((in.getShort(entry) & 0xFFFF) == ORIENTATION) {
                return OptionalInt.of(switch (in.getShort(entry + 8)) {
                    case 3, 4 -> 2;
                    case 5, 6 -> 1;
                    case 7, 8 -> 3;
                    default -> 0;
                });
            }
        }
        return OptionalInt.empty();
    }

    private static ImageHead svg(byte[] b) {
        String head = new String(b, 0, Math.min(b.length, SVG_HEAD), StandardCharsets.UTF_8);
        Matcher root = SVG_ROOT.matcher(head);
        if (!head.stripLeading().startsWith("<") && !head.startsWith("\uFEFF<") || !root.find()) {
            return null;
        }
        double width = 0;
        double height = 0;
        Matcher box = SVG_BOX.matcher(root.group());
        if (box.find()) {
            width = number(box.group(1));
            height = number(box.group(2));
        }
        Matcher size = SVG_SIZE.matcher(root.group());
        while (size.find()) {
            double n = number(size.group(2));
            width = size.group(1).equals("width") ? Math.max(width, n) : width;
            height = size.group(1).equals("height") ? Math.max(height, n) : height;
        }
        return new ImageHead(Kind.SVG, (int) Math.min(width, Integer.MAX_VALUE),
                (int) Math.min(height, Integer.MAX_VALUE), 0);
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException notOne) {
            return 0;
        }
    }

    private static boolean starts(byte[] b, int at, int... wanted) {
        if (b.length < at + wanted.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if ((b[at + i] & 0xFF) != wanted[i]) {
                return false;
            }
        }
        return true;
    }
}
