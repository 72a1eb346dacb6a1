package org.copperbook.sheets.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.jobs.runup.LogQuantity;

/**
 * What the first rows of a log tell of it.
 *
 * @param separator sign between the cells
 * @param mark      decimal mark
 * @param firstRow  row of the file, from 1, with the first readings
 * @param titles    titles of the columns
 * @param units     units that titles or a row below them name; "" where they name none
 * @param sample    the first rows of readings as text
 * @param guess     how the file is probably meant
 */
public record LogHead(char separator, char mark, long firstRow, List<String> titles, List<String> units,
        List<List<String>> sample, LogMapping guess) {

    private static final int LINES = 60;
    private static final char[] SEPARATORS = {';', '\t', ',', '|'};
    private static final Pattern UNIT = Pattern.compile("(.*?)[\\s_]*[\\[(]([^\\])]*)[\\])]\\s*");
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?([eE][+-]?\\d+)?");
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final Pattern DOT = Pattern.compile("[+-]?\\d+\\.\\d+");

    public LogHead {
        titles = List.copyOf(titles);
        units = List.copyOf(units);
        sample = sample.stream().map(List::copyOf).toList();
    }

    /**
     * Looks at the beginning of a file.
     *
     * @throws UnreadableLogException when it is no log, in words
     */
    public static LogHead of(Path file) throws IOException, UnreadableLogException {
        refuseOthers(file);
        List<String> lines = new ArrayList<>();
        try (LogLines in = new LogLines(file)) {
            while (lines.size() < LINES && in.next()) {
                lines.add(in.text());
            }
        }
        char separator = separator(lines);
        List<List<String>> rows = lines.stream().map(l -> LogText.cells(l, separator)).toList();
        for (List<String> row : rows) {
            for (String cell : row) {
                if (cell.matches("\\d{1,2}/\\d{1,2}/\\d{2,4}( .*)?")) {
                    throw new UnreadableLogException(LogWords.say("head.day-order", file.getFileName(), cell));
                }
            }
        }
        int first = firstReadings(rows);
        if (first < 0) {
            throw new UnreadableLogException(LogWords.say("head.no-readings", file.getFileName()));
        }
        List<List<String>> readings = rows.subList(first, rows.size()).stream().filter(r -> r.size() > 1).toList();
        int columns = readings.get(0).size();
        List<String> titles = new ArrayList<>();
        List<String> units = new ArrayList<>();
        name(rows, first, columns, titles, units);
        return new LogHead(separator, mark(readings, separator), first + 1L, titles, units, readings,
                guess(titles, units, readings));
    }

    private static void refuseOthers(Path file) throws IOException, UnreadableLogException {
        byte[] start;
        try (var in = Files.newInputStream(file)) {
            start = in.readNBytes(4096);
        }
        if (start.length == 0) {
            throw new UnreadableLogException(LogWords.say("head.empty", file.getFileName()));
        }
        boolean zip = start.length > 1 && start[0] == 'P' && start[1] == 'K';
        boolean binary = false;
        for (byte b : start) {
            binary |= b == 0;
        }
        if (zip || binary) {
            throw new UnreadableLogException(LogWords.say("head.no-text", file.getFileName()));
        }
    }

    private static char separator(List<String> lines) {
        char best = ';';
        double bestScore = -1;
        for (char s : SEPARATORS) {
            List<Integer> widths = lines.stream().map(l -> LogText.cells(l, s).size()).sorted().toList();
            int usual = widths.isEmpty() ? 0 : widths.get(widths.size() / 2);
            double alike = widths.stream().filter(w -> w == usual).count();
            // a decimal comma splits cells too, but semicolons or tabs then split them more sensibly
            double score = usual < 2 ? 0 : alike / widths.size() * (s == ',' ? 0.9 : 1);
            if (score > bestScore) {
                best = s;
                bestScore = score;
            }
        }
        return best;
    }

    /** The first row that begins a run of readings: most of its cells are numbers or moments. */
    private static int firstReadings(List<List<String>> rows) {
        for (int i = 0; i < rows.size(); i++) {
            List<String> r = rows.get(i);
            long said = r.stream().filter(c -> NUMBER.matcher(c).matches() || LogTime.of(c) != null).count();
            if (r.size() > 1 && said >= 2 && said * 2 >= r.size() && LogTime.of(r.get(0)) != null
                    || r.size() > 1 && said * 4 >= r.size() * 3 && said >= 2) {
                return i;
            }
        }
        return -1;
    }

    private static void name(List<List<String>> rows, int first, int columns, List<String> titles, List<String> units) {
        List<String> above = first > 0 ? rows.get(first - 1) : List.of();
        boolean unitRow = first > 1 && !above.isEmpty()
                && above.stream().filter(c -> LogQuantity.isUnit(strip(c))).count() * 2 >= above.size();
        List<String> names = unitRow ? rows.get(first - 2) : above;
        for (int i = 0; i < columns; i++) {
            String title = i < names.size() && !names.get(i).isBlank() ? names.get(i) : LogWords.say("column", i + 1);
            Matcher m = UNIT.matcher(title);
            String unit = unitRow && i < above.size() ? strip(above.get(i)) : m.matches() ? m.group(2).strip() : "";
            titles.add(title);
            units.add(unit);
        }
    }

    private static String strip(String cell) {
        return cell.replaceAll("[\\[\\]()]", "").strip();
    }

    private static char mark(List<List<String>> rows, char separator) {
        long commas = rows.stream().flatMap(List::stream).filter(c -> COMMA.matcher(c).matches()).count();
        long dots = rows.stream().flatMap(List::stream).filter(c -> DOT.matcher(c).matches()).count();
        return separator != ',' && commas > dots ? ',' : '.';
    }

    private static LogMapping guess(List<String> titles, List<String> units, List<List<String>> sample) {
        int clock = 0;
        for (int i = titles.size() - 1; i >= 0; i--) {
            String cell = i < sample.get(0).size() ? sample.get(0).get(i) : "";
            LogTime t = LogTime.of(cell);
            String title = titles.get(i).toLowerCase(Locale.ROOT);
            boolean named = title.matches(".*(time|zeit|clock|elapsed|seconds).*") || title.matches("t([ _\\[(].*)?");
            if (t != null && t != LogTime.NUMBER || named && t != null) {
                clock = i;
            }
        }
        List<LogColumn> columns = new ArrayList<>();
        for (int i = 0; i < titles.size(); i++) {
            String unit = units.get(i);
            Optional<LogQuantity> q = i == clock ? Optional.empty() : guess(titles.get(i), unit);
            boolean taken = q.isPresent() && columns.stream().anyMatch(c -> c.quantity() == q.get());
            String used = q.isPresent() && q.get().from(unit).isEmpty() ? q.get().unit() : unit;
            columns.add(new LogColumn(i, titles.get(i), taken ? null : q.orElse(null), used));
        }
        return new LogMapping(titles, clock, second(units.get(clock)), columns);
    }

    /** Seconds in one unit of a clock that counts. */
    private static double second(String unit) {
        return switch (unit.toLowerCase(Locale.ROOT)) {
            case "ms" -> 1e-3;
            case "min" -> 60;
            case "h" -> 3600;
            default -> 1;
        };
    }

    private static final Object[][] NAMES = {
        {"u[ _-]?v|u12|uuv|l1[ _-]?l2|u_?l12", LogQuantity.VOLTS_UV}, {"v[ _-]?w|u23|uvw|l2[ _-]?l3|u_?l23", LogQuantity.VOLTS_VW},
        {"w[ _-]?u|u31|uwu|l3[ _-]?l1|u_?l31", LogQuantity.VOLTS_WU},
        {"speed|rpm|drehzahl|n", LogQuantity.SPEED}, {"freq.*|f", LogQuantity.FREQUENCY},
        {".*(non.?drive|nde|other end).*", LogQuantity.OTHER_END_CELSIUS}, {".*(drive end|\\bde\\b|drive.?end).*", LogQuantity.DRIVE_END_CELSIUS},
        {".*winding.*", LogQuantity.WINDING_CELSIUS}, {".*(ambient|air|coolant).*", LogQuantity.AIR_CELSIUS}};

    private static Optional<LogQuantity> guess(String title, String unit) {
        Matcher m = UNIT.matcher(title);
        String name = (m.matches() ? m.group(1) : title).strip().toLowerCase(Locale.ROOT);
        for (Object[] n : NAMES) {
            LogQuantity q = (LogQuantity) n[1];
            boolean whole = name.matches((String) n[0]) || name.matches("(line )?(volts|voltage|u)?[ _-]*(" + n[0] + ")");
            if (whole && (unit.isEmpty() || q.from(unit).isPresent())) {
                return Optional.of(q);
            }
        }
        boolean field = name.matches(".*(exciter|field|excitation).*");
        for (LogQuantity q : field ? List.of(LogQuantity.EXCITER_VOLTS, LogQuantity.EXCITER_AMPS)
                : List.of(LogQuantity.LINE_AMPS, LogQuantity.LOAD_WATTS, LogQuantity.LOAD_VARS)) {
            if (!unit.isEmpty() && q.from(unit).isPresent()) {
                return Optional.of(q);
            }
        }
        return Optional.empty();
    }
}
