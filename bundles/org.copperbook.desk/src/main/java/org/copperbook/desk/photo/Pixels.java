package org.copperbook.desk.photo;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;

/** Decodes pictures and makes them small, away from the window's thread. */
final class Pixels {

    /** Pictures with more pixels are kept but not shown: decoding them would take the window's memory. */
    static final long MOST_SHOWN = 64_000_000L;
    private static final int RED = 0xFF0000;
    private static final int GREEN = 0xFF00;
    private static final int BLUE = 0xFF;

    private Pixels() {
    }

    /** The picture upright and not larger than a box; empty when it cannot be shown. */
    static Optional<ImageData> shown(byte[] bytes, int width, int height) {
        Optional<ImageHead> head = ImageHead.of(bytes);
        if (head.isEmpty() || !head.get().kind().isShown() || !fits(head.get().pixels())) {
            return Optional.empty();
        }
        byte[] decoded = bytes;
        if (head.get().kind() == ImageHead.Kind.GIF) {
            Optional<FirstFrame> first = FirstFrame.of(bytes).filter(f -> fits(f.pixels()));
            if (first.isEmpty()) {
                return Optional.empty();
            }
            decoded = first.get().bytes();
        }
        try {
            ImageData[] read = new ImageLoader().load(new ByteArrayInputStream(decoded));
            boolean sideways = head.get().turn() % 2 == 1;
            return read.length == 0 ? Optional.empty()
                    : Optional.of(turned(fitted(read[0], sideways ? height : width, sideways ? width : height),
                            head.get().turn()));
        } catch (RuntimeException | SWTError damaged) {
            return Optional.empty();
        } catch (OutOfMemoryError tooLarge) {
            // One array for the pixels; what was there before is untouched, and the photo is kept all the same.
            return Optional.empty();
        }
    }

    private static boolean fits(long pixels) {
        return pixels > 0 && pixels <= MOST_SHOWN;
    }

    /** A picture as the bytes of a PNG file. */
    static byte[] png(ImageData picture) {
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {picture};
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        loader.save(out, SWT.IMAGE_PNG);
        return out.toByteArray();
    }

    /** Made smaller by averaging, never larger; transparent parts become white paper. */
    static ImageData fitted(ImageData from, int width, int height) {
        double scale = Math.min(1, Math.min((double) width / from.width, (double) height / from.height));
        int w = Math.max(1, (int) Math.round(from.width * scale));
        int h = Math.max(1, (int) Math.round(from.height * scale));
        ImageData to = new ImageData(w, h, 24, new PaletteData(RED, GREEN, BLUE));
        for (int y = 0; y < h; y++) {
            int y0 = (int) ((long) y * from.height / h);
            int y1 = Math.max(y0 + 1, (int) ((long) (y + 1) * from.height / h));
            for (int x = 0; x < w; x++) {
                int x0 = (int) ((long) x * from.width / w);
                int x1 = Math.max(x0 + 1, (int) ((long) (x + 1) * from.width / w));
                to.setPixel(x, y, average(from, x0, x1, y0, y1));
            }
        }
        return to;
    }

    private static int average(ImageData from, int x0, int x1, int y0, int y1) {
        long red = 0;
        long green = 0;
        long blue = 0;
        // A few points of a large block tell its colour as well as all of them.
        int stepX = Math.max(1, (x1 - x0) / 4);
        int stepY = Math.max(1, (y1 - y0) / 4);
        int count = 0;
        for (int y = y0; y < y1; y += stepY) {
            for (int x = x0; x < x1; x += stepX) {
                RGB c = from.palette.getRGB(from.getPixel(x, y));
                int alpha = from.alphaData != null ? from.getAlpha(x, y) : 255;
                red += (c.red * alpha + 255 * (255 - alpha)) / 255;
                green += (c.green * alpha + 255 * (255 - alpha)) / 255;
                blue += (c.blue * alpha + 255 * (255 - alpha)) / 255;
                count++;
            }
        }
        return (int) (red / count) << 16 | (int) (green / count) << 8 | (int) (blue / count);
    }

    private static ImageData turned(ImageData from, int quarters) {
        ImageData now = from;
        for (int i = 0; i < quarters; i++) {
            ImageData next = new ImageData(now.height, now.width, now.depth, now.palette);
            for (int y = 0; y < now.height; y++) {
                for (int x = 0; x < now.width; x++) {
                    next.setPixel(now.height - 1 - y, x, now.getPixel(x, y));
                }
            }
            now = next;
        }
        return now;
    }
}
