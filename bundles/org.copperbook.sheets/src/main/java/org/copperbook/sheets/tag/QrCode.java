package org.copperbook.sheets.tag;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.ScenePalette;

/**
 * A QR code as marks of a scene (ISO/IEC 18004), with a quarter of it allowed to be dirty (level Q).
 *
 * @param modules dark and light modules, without the blank edge
 */
record QrCode(ByteMatrix modules) {

    /** Blank modules that the standard wants on every side. */
    static final int EDGE = 4;

    /** @throws IllegalArgumentException when the text is too long for a code */
    static QrCode of(String text) {
        boolean ascii = StandardCharsets.US_ASCII.newEncoder().canEncode(text);
        try {
            return new QrCode(Encoder.encode(text, ErrorCorrectionLevel.Q,
                    ascii ? Map.of() : Map.of(EncodeHintType.CHARACTER_SET, "UTF-8")).getMatrix());
        } catch (WriterException e) {
            throw new IllegalArgumentException("\"" + text + "\" does not go into a QR code", e);
        }
    }

    /** Width and height with the blank edge, in units of a scene. */
    int size(int module) {
        return (modules.getWidth() + 2 * EDGE) * module;
    }

    /** The largest module of whole units with which the code and its blank edge fit, at least 1. */
    int moduleFor(double room) {
        return Math.max(1, (int) (room / (modules.getWidth() + 2 * EDGE)));
    }

    /**
     * The dark modules; neighbours in a row are one bar.
     *
     * @param left   left end of the blank edge
     * @param top    upper end of the blank edge
     * @param module width of a module, in whole units so that no seam is drawn between bars
     */
    List<Mark> marks(int left, int top, int module) {
        List<Mark> bars = new ArrayList<>();
        for (int y = 0; y < modules.getHeight(); y++) {
            int x = 0;
            while (x < modules.getWidth()) {
                int from = x;
                while (x < modules.getWidth() && modules.get(x, y) == 1) {
                    x++;
                }
                if (x > from) {
                    bars.add(bar(left + (EDGE + from) * module, top + (EDGE + y) * module, (x - from) * module, module));
                } else {
                    x++;
                }
            }
        }
        return bars;
    }

    private static Mark bar(int x, int y, int width, int height) {
        return new Mark.Line("", ScenePalette.TEXT, 0, true, List.of(new Point(x, y), new Point(x + width, y),
                new Point(x + width, y + height), new Point(x, y + height)));
    }
}
