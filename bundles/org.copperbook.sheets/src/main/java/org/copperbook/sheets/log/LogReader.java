package org.copperbook.sheets.log;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.copperbook.jobs.runup.LogQuantity;

/**
 * Reads a log in one pass over its bytes. Every row is checked: a row with a fault is named and enters no point, and a
 * fault of the clock or of the columns ends the steady stretch it falls into.
 */
public final class LogReader {

    /** Told now and then how far reading has come. */
    @FunctionalInterface
    public interface Progress {

        /** @return false to stop */
        boolean at(long bytes, long of);
    }

    private static final int TELL_EVERY = 8192;
    private static final int LEARN = 50;
    private static final double GAP = 3;
    private static final double JUMP = 2;
    private static final double ALIKE = 0.1;

    private final Path file;
    private final LogHead head;
    private final LogMapping mapping;
    private final List<LogColumn> columns;
    private final LogProblems problems = new LogProblems();
    private final SteadyRuns steady;
    private final EvenMeans temperatures;
    private final Thinning thinning;
    private final LogTime clock;
    private final int width;
    private final int[] starts;
    private final int[] ends;
    private final double[] factors;
    private final double[] offsets;
    private final double[] values;
    private final double[] before;
    private final double[] learned = new double[LEARN];
    private int[] changedPair;
    private int learnedCount;
    private double usual = Double.NaN;
    private double lastMoment = Double.NaN;
    private double elapsed;
    private boolean beforeGood;
    private long rows;
    private long used;
    private String begins = "";

    private LogReader(Path file, LogHead head, LogMapping mapping, SteadyRule rule) throws UnreadableLogException {
        this.file = file;
        this.head = head;
        this.mapping = mapping;
        columns = mapping.columns().stream().filter(c -> c.quantity() != null && c.index() != mapping.clock()).toList();
        width = head.titles().size();
        checkMapping();
        clock = clockOf(head, mapping);
        List<LogQuantity> quantities = columns.stream().map(LogColumn::quantity).toList();
        steady = new SteadyRuns(quantities, rule);
        temperatures = new EvenMeans(quantities, rule.minutes());
        thinning = new Thinning(columns.size());
        starts = new int[width + 1];
        ends = new int[width + 1];
        factors = new double[columns.size()];
        offsets = new double[columns.size()];
        for (int i = 0; i < factors.length; i++) {
            double[] f = columns.get(i).quantity().from(columns.get(i).unit()).orElseThrow();
            factors[i] = f[0];
            offsets[i] = f[1];
        }
        values = new double[columns.size()];
        before = new double[columns.size()];
    }

    /**
     * Reads a log.
     *
     * @param head    what its first rows told
     * @param mapping what its columns carry
     * @throws UnreadableLogException when nothing can be taken from it, or reading was stopped; in words
     */
    public static LogReport read(Path file, LogHead head, LogMapping mapping, SteadyRule rule, Progress progress)
            throws IOException, UnreadableLogException {
        return new LogReader(file, head, mapping, rule).read(progress);
    }

    private void checkMapping() throws UnreadableLogException {
        if (columns.isEmpty()) {
            throw new UnreadableLogException(LogWords.say("head.nothing-mapped"));
        }
        Set<LogQuantity> seen = new HashSet<>();
        for (LogColumn c : columns) {
            if (c.quantity().from(c.unit()).isEmpty()) {
                throw new UnreadableLogException(LogWords.say("head.unit", c.unit(), c.title(), word(c.quantity())));
            }
            if (!seen.add(c.quantity())) {
                throw new UnreadableLogException(LogWords.say("head.twice", word(c.quantity())));
            }
        }
    }

    private static String word(LogQuantity q) {
        return q.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    private static LogTime clockOf(LogHead head, LogMapping mapping) throws UnreadableLogException {
        LogTime found = null;
        for (List<String> row : head.sample()) {
            String cell = mapping.clock() < row.size() ? row.get(mapping.clock()) : "";
            found = found == null ? LogTime.of(cell) : found;
        }
        if (found == null) {
            String title = mapping.clock() < head.titles().size() ? head.titles().get(mapping.clock()) : "?";
            throw new UnreadableLogException(LogWords.say("head.no-clock", title));
        }
        return found;
    }

    private LogReport read(Progress progress) throws IOException, UnreadableLogException {
        long size = Files.size(file);
        try (LogLines lines = new LogLines(file)) {
            long row = 0;
            while (lines.next()) {
                row++;
                if (row % TELL_EVERY == 0 && !progress.at(lines.passed(), size)) {
                    throw new UnreadableLogException(LogWords.say("stopped"));
                }
                if (row >= head.firstRow() && lines.end() > lines.start()) {
                    rows++;
                    row(lines, row);
                }
            }
            steady.close();
            temperatures.close();
            Map<LogQuantity, double[]> lows = new EnumMap<>(LogQuantity.class);
            Map<LogQuantity, double[]> highs = new EnumMap<>(LogQuantity.class);
            for (int i = 0; i < columns.size(); i++) {
                lows.put(columns.get(i).quantity(), thinning.lows(i));
                highs.put(columns.get(i).quantity(), thinning.highs(i));
            }
            return new LogReport(lines.hash(), lines.passed(), rows, used, begins, elapsed, problems.all(), steady.found(),
                    temperatures.found(), lows, highs);
        }
    }

    private void row(LogLines lines, long row) {
        byte[] b = lines.bytes();
        int cells = split(b, lines.start(), lines.end());
        if (cells != width) {
            problems.add(LogProblem.Kind.COLUMNS, row, LogWords.say("detail.columns", cells, width));
            broken();
            return;
        }
        double moment = clock.seconds(b, starts[mapping.clock()], ends[mapping.clock()], head.mark())
                * (clock == LogTime.NUMBER ? mapping.second() : 1);
        if (Double.isNaN(moment)) {
            problems.add(LogProblem.Kind.NO_MOMENT, row, "");
            broken();
            return;
        }
        boolean good = numbers(b, row);
        if (!time(b, moment, row)) {
            return;
        }
        boolean changed = changedPlaces(row, good && beforeGood);
        System.arraycopy(values, 0, before, 0, values.length);
        beforeGood = good;
        if (!changed) {
            good &= possible(row);
            thinning.row(values);
        }
        if (good && !changed) {
            used++;
            steady.row(elapsed, row, values);
            temperatures.row(elapsed, row, values);
        } else {
            steady.close();
        }
    }

    private void broken() {
        steady.close();
        beforeGood = false;
    }

    private int split(byte[] b, int from, int to) {
        int cell = 0;
        int start = from;
        boolean quoted = false;
        for (int i = from; i <= to; i++) {
            if (i < to && b[i] == '"') {
                quoted = !quoted;
            } else if (i == to || b[i] == head.separator() && !quoted) {
                if (cell <= width) {
                    trim(b, start, i, Math.min(cell, width));
                }
                cell++;
                start = i + 1;
            }
        }
        return cell;
    }

    private void trim(byte[] b, int from, int to, int cell) {
        int s = from;
        int e = to;
        while (s < e && (b[s] == ' ' || b[s] == '"')) {
            s++;
        }
        while (e > s && (b[e - 1] == ' ' || b[e - 1] == '"')) {
            e--;
        }
        starts[cell] = s;
        ends[cell] = e;
    }

    /** Reads the cells; false when one of them cannot enter a point. */
    private boolean numbers(byte[] b, long row) {
        boolean good = true;
        for (int i = 0; i < values.length; i++) {
            LogColumn c = columns.get(i);
            int from = starts[c.index()];
            int to = ends[c.index()];
            double v = LogText.number(b, from, to, head.mark()) * factors[i] + offsets[i];
            if (Double.isNaN(v)) {
                v = odd(b, from, to, c, row);
                good = false;
            }
            values[i] = v;
        }
        return good;
    }

    /** Whether every value is one that a machine can have; those that are not are named and left out. */
    private boolean possible(long row) {
        boolean all = true;
        for (int i = 0; i < values.length; i++) {
            LogColumn c = columns.get(i);
            if (!Double.isNaN(values[i]) && !c.quantity().possible(values[i])) {
                problems.add(LogProblem.Kind.IMPOSSIBLE, row, LogWords.say("detail.in", c.title()));
                values[i] = Double.NaN;
                all = false;
            }
        }
        return all;
    }

    /** A cell that is no plain number: empty, with a unit of its own, or a word such as NaN. */
    private double odd(byte[] b, int from, int to, LogColumn c, long row) {
        String cell = text(b, from, to);
        if (cell.isEmpty()) {
            problems.add(LogProblem.Kind.EMPTY, row, LogWords.say("detail.column", c.title(), "\u2014"));
            return Double.NaN;
        }
        int end = 0;
        while (end < cell.length() && "+-0123456789.,".indexOf(cell.charAt(end)) >= 0) {
            end++;
        }
        String unit = cell.substring(end).strip();
        byte[] digits = cell.substring(0, end).getBytes(StandardCharsets.ISO_8859_1);
        double n = LogText.number(digits, 0, digits.length, head.mark());
        Optional<double[]> f = c.quantity().from(unit);
        if (!Double.isNaN(n) && !unit.isEmpty() && f.isPresent()) {
            problems.add(LogProblem.Kind.OTHER_UNIT, row, LogWords.say("detail.converted", c.title(), unit,
                    c.unit().isEmpty() ? "\u2014" : c.unit()));
            return n * f.get()[0] + f.get()[1];
        }
        problems.add(LogProblem.Kind.NO_NUMBER, row, LogWords.say("detail.column", c.title(),
                cell.length() > 20 ? cell.substring(0, 20) + "\u2026" : cell));
        return Double.NaN;
    }

    private static String text(byte[] b, int from, int to) {
        return new String(b, from, to - from, StandardCharsets.ISO_8859_1);
    }

    /** Brings the clock forward; false when the row is left aside because of it. */
    private boolean time(byte[] b, double moment, long row) {
        if (Double.isNaN(lastMoment)) {
            lastMoment = moment;
            begins = text(b, starts[mapping.clock()], ends[mapping.clock()]);
            return true;
        }
        double step = moment - lastMoment;
        if (clock == LogTime.TIME_OF_DAY && step < -LogTime.DAY / 2) {
            step += LogTime.DAY;
        }
        if (step == 0) {
            boolean same = Arrays.equals(values, before);
            problems.add(same ? LogProblem.Kind.DUPLICATE : LogProblem.Kind.SAME_MOMENT, row, "");
            if (!same) {
                broken();
            }
            return false;
        }
        lastMoment = moment;
        if (step < 0) {
            problems.add(LogProblem.Kind.CLOCK_BACK, row, LogWords.say("detail.back", number(-step)));
            broken();
            elapsed += Double.isNaN(usual) ? 0 : usual;
            return true;
        }
        if (!Double.isNaN(usual) && step > GAP * usual) {
            problems.add(LogProblem.Kind.GAP, row, LogWords.say("detail.seconds", number(step)));
            broken();
        } else if (learnedCount < LEARN) {
            learned[learnedCount++] = step;
            if (learnedCount >= 5) {
                double[] sorted = Arrays.copyOf(learned, learnedCount);
                Arrays.sort(sorted);
                usual = sorted[learnedCount / 2];
            }
        }
        elapsed += step;
        return true;
    }

    private static String number(double v) {
        return String.format(java.util.Locale.ROOT, v < 10 ? "%.3g" : "%.0f", v);
    }

    /**
     * Whether two columns carry now what the other one carried before. Such rows are named and stay aside until the larger
     * of the two stands in its own column again.
     */
    private boolean changedPlaces(long row, boolean comparable) {
        if (changedPair == null && comparable) {
            for (int i = 0; i < values.length && changedPair == null; i++) {
                for (int k = i + 1; jumped(i) && k < values.length; k++) {
                    if (jumped(k) && alike(values[i], before[k]) && alike(values[k], before[i])) {
                        changedPair = before[i] > before[k] ? new int[] {i, k} : new int[] {k, i};
                    }
                }
            }
        }
        if (changedPair != null && values[changedPair[0]] > values[changedPair[1]]) {
            changedPair = null;
        }
        if (changedPair == null) {
            return false;
        }
        problems.add(LogProblem.Kind.SWAPPED, row, LogWords.say("detail.pair", columns.get(changedPair[0]).title(),
                columns.get(changedPair[1]).title()));
        return true;
    }

    private boolean jumped(int i) {
        double a = Math.abs(before[i]);
        double b = Math.abs(values[i]);
        return Math.max(a, b) > JUMP * Math.min(a, b) && Math.max(a, b) > 1;
    }

    private static boolean alike(double a, double b) {
        return Math.abs(a - b) <= ALIKE * Math.max(Math.abs(a), Math.abs(b));
    }
}
