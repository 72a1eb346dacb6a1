package org.copperbook.sheets.cards;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.copperbook.calc.quantity.DecimalMark;

/** A text file with separated columns (RFC 4180, with any of the usual separators). */
final class TextTable implements CardTable {

    private static final int SAMPLE_BYTES = 1 << 18;
    private static final int SAMPLE_ROWS = 50;
    private static final Pattern MARKUP = Pattern.compile("(?is)\\s*<(!doctype|html|\\?xml|table|head).*");
    private static final Pattern COMMA_NUMBER = Pattern.compile("-?\\d{1,7},\\d{1,6}");
    private static final Pattern DOT_NUMBER = Pattern.compile("-?\\d{1,7}\\.\\d{1,6}");

    private final Path file;
    private final TableFormat detected;

    TextTable(Path file) throws IOException, UnreadableTableException {
        this.file = file;
        byte[] sample;
        try (InputStream in = Files.newInputStream(file)) {
            sample = in.readNBytes(SAMPLE_BYTES);
        }
        String encoding = encoding(sample, Files.size(file) > sample.length);
        String text = new String(sample, Charset.forName(encoding));
        if (MARKUP.matcher(text.substring(0, Math.min(text.length(), 500)).replace("\uFEFF", "")).matches()) {
            throw new UnreadableTableException(CardWords.say("file.markup", file.getFileName()));
        }
        if (text.indexOf('\0') >= 0) {
            throw new UnreadableTableException(CardWords.say("file.binary", file.getFileName()));
        }
        char separator = separator(text);
        detected = new TableFormat("", encoding, separator, decimal(text, separator), 0);
    }

    @Override
    public List<String> sheets() {
        return List.of();
    }

    @Override
    public TableFormat detected() {
        return detected;
    }

    @Override
    public List<String> read(TableFormat format, Rows rows) throws UnreadableTableException {
        // strict: a wrong encoding is said and not turned into question marks
        CharsetDecoder decoder = Charset.forName(format.encoding()).newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        try (Reader in = new BufferedReader(new InputStreamReader(
                new BufferedInputStream(Files.newInputStream(file)), decoder), 1 << 16)) {
            new SeparatedText(in, format.separator()).rows(rows);
            return List.of();
        } catch (CharacterCodingException e) {
            throw new UnreadableTableException(CardWords.say("text.encoding", file.getFileName(), format.encoding()), e);
        } catch (IOException e) {
            throw new UnreadableTableException(CardWords.say("file.unread", file.getFileName(), e.getMessage()), e);
        }
    }

    /** By byte order mark, else UTF-8 when it is valid, else by zero bytes UTF-16, else the usual one of old offices. */
    private static String encoding(byte[] sample, boolean cut) {
        if (sample.length >= 2 && (sample[0] & 0xFF) == 0xFF && (sample[1] & 0xFF) == 0xFE) {
            return "UTF-16LE";
        }
        if (sample.length >= 2 && (sample[0] & 0xFF) == 0xFE && (sample[1] & 0xFF) == 0xFF) {
            return "UTF-16BE";
        }
        int evenZeros = 0;
        int oddZeros = 0;
        for (int i = 0; i < sample.length; i++) {
            if (sample[i] == 0) {
                evenZeros += i % 2 == 0 ? 1 : 0;
                oddZeros += i % 2;
            }
        }
        if (oddZeros > sample.length / 4 && evenZeros == 0) {
            return "UTF-16LE";
        }
        if (evenZeros > sample.length / 4 && oddZeros == 0) {
            return "UTF-16BE";
        }
        return validUtf8(sample, cut) ? "UTF-8" : "windows-1252";
    }

    private static boolean validUtf8(byte[] sample, boolean cut) {
        // the sample may end inside a character
        for (int less = 0; less <= (cut ? 3 : 0); less++) {
            try {
                StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(sample, 0,
                        Math.max(0, sample.length - less)));
                return true;
            } catch (CharacterCodingException e) {
                continue;
            }
        }
        return false;
    }

    /** The separator that gives most rows the same number of columns, above one. */
    private static char separator(String text) {
        char best = ';';
        double bestScore = -1;
        for (char candidate : TableFormat.SEPARATORS) {
            List<Integer> widths = new ArrayList<>();
            for (TableRow row : sample(text, candidate)) {
                widths.add(row.cells().size());
            }
            int usual = widths.stream().sorted().skip(widths.size() / 2).findFirst().orElse(0);
            long alike = widths.stream().filter(w -> w == usual).count();
            double score = usual < 2 ? 0 : (double) alike / widths.size() * Math.log(usual + 1.0);
            if (score > bestScore) {
                best = candidate;
                bestScore = score;
            }
        }
        return best;
    }

    private static DecimalMark decimal(String text, char separator) {
        int commas = 0;
        int dots = 0;
        for (TableRow row : sample(text, separator)) {
            for (TableCell cell : row.cells()) {
                String t = cell.text().strip().toLowerCase(Locale.ROOT);
                commas += COMMA_NUMBER.matcher(t).matches() ? 1 : 0;
                dots += DOT_NUMBER.matcher(t).matches() ? 1 : 0;
            }
        }
        return commas > dots ? DecimalMark.COMMA : DecimalMark.DOT;
    }

    private static List<TableRow> sample(String text, char separator) {
        List<TableRow> rows = new ArrayList<>();
        try {
            new SeparatedText(new java.io.StringReader(text), separator).rows(row -> {
                rows.add(row);
                return rows.size() < SAMPLE_ROWS;
            });
        } catch (IOException | UnreadableTableException e) {
            // what was read up to the fault has to do for guessing; reading the file itself reports the fault
            return rows;
        }
        return rows;
    }
}
