package org.copperbook.sheets.log;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Bytes of a log as text and numbers. */
final class LogText {

    private static final double[] POWERS = new double[23];

    static {
        double p = 1;
        for (int i = 0; i < POWERS.length; i++) {
            POWERS[i] = p;
            p *= 10;
        }
    }

    private LogText() {
    }

    /** UTF-8, else one byte for each letter; the mark at the beginning of a file is left out. */
    static String decode(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
    }

    /** The cells of a line; a cell may stand in quotation marks. */
    static List<String> cells(String line, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    /**
     * A plain decimal number; NaN when the bytes are none. Up to 15 digits are read exactly, more are rounded by the
     * platform's own reader.
     */
    static double number(byte[] b, int from, int to, char mark) {
        int i = from;
        boolean minus = i < to && b[i] == '-';
        i += i < to && (b[i] == '-' || b[i] == '+') ? 1 : 0;
        long digits = 0;
        int count = 0;
        int after = 0;
        boolean seenMark = false;
        for (; i < to; i++) {
            int c = b[i];
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                count++;
                after += seenMark ? 1 : 0;
            } else if (c == mark && !seenMark) {
                seenMark = true;
            } else {
                break;
            }
            if (count > 15) {
                return slow(b, from, to, mark);
            }
        }
        if (count == 0) {
            return Double.NaN;
        }
        if (i < to) {
            return b[i] == 'e' || b[i] == 'E' ? slow(b, from, to, mark) : Double.NaN;
        }
        double value = digits / POWERS[after];
        return minus ? -value : value;
    }

    private static double slow(byte[] b, int from, int to, char mark) {
        String text = new String(b, from, to - from, StandardCharsets.ISO_8859_1).replace(mark, '.');
        if (!text.matches("[+-]?\\d+(\\.\\d*)?([eE][+-]?\\d{1,3})?")) {
            return Double.NaN;
        }
        double v = Double.parseDouble(text);
        return Double.isInfinite(v) ? Double.NaN : v;
    }
}
