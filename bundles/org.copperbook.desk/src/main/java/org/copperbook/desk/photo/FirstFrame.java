package org.copperbook.desk.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Optional;

/**
 * A GIF file cut off after its first picture, so that one with a hundred thousand pictures costs no more than one with one.
 * Blocks as in the GIF89a specification.
 *
 * @param bytes  a whole GIF file with one picture
 * @param pixels pixels of the canvas or of the picture, whichever are more
 */
record FirstFrame(byte[] bytes, long pixels) {

    private static final int HEAD = 13;
    private static final int EXTENSION = 0x21;
    private static final int PICTURE = 0x2C;
    private static final int TRAILER = 0x3B;
    private static final int HAS_COLOURS = 0x80;

    /** Reads a GIF file up to the end of its first picture; empty when it has none or is cut off before its end. */
    static Optional<FirstFrame> of(byte[] gif) {
        try {
            return read(ByteBuffer.wrap(gif).order(ByteOrder.LITTLE_ENDIAN), gif);
        } catch (IndexOutOfBoundsException cutOff) {
            return Optional.empty();
        }
    }

    private static Optional<FirstFrame> read(ByteBuffer in, byte[] gif) {
        long canvas = (long) word(in, 6) * word(in, 8);
        int at = HEAD + colours(in.get(10));
        while (true) {
            int block = in.get(at) & 0xFF;
            if (block == EXTENSION) {
                at = afterData(in, at + 2);
            } else if (block == PICTURE) {
                long picture = (long) word(in, at + 5) * word(in, at + 7);
                // After the colours stands the width of the codes, then the data.
                int end = afterData(in, at + 10 + colours(in.get(at + 9)) + 1);
                byte[] one = Arrays.copyOf(gif, end + 1);
                one[end] = TRAILER;
                return Optional.of(new FirstFrame(one, Math.max(canvas, picture)));
            } else {
                return Optional.empty();
            }
        }
    }

    /** Bytes of a table of colours whose size stands in the low bits of the flags. */
    private static int colours(byte flags) {
        return (flags & HAS_COLOURS) == 0 ? 0 : 3 << ((flags & 7) + 1);
    }

    /** The place after a row of data blocks, each with its length before it, the last of length 0. */
    private static int afterData(ByteBuffer in, int from) {
        int at = from;
        for (int length = in.get(at) & 0xFF; length != 0; length = in.get(at) & 0xFF) {
            at += 1 + length;
        }
        return at + 1;
    }

    private static int word(ByteBuffer in, int at) {
        return in.getShort(at) & 0xFFFF;
    }
}
