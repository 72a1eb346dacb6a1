package org.copperbook.office.registers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.copperbook.calc.faults.FaultKnowledge;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.faults.FaultTables;
import org.copperbook.jobs.faults.FaultTables.OutcomeRow;
import org.copperbook.jobs.faults.FaultTables.SuspectRow;
import org.copperbook.jobs.faults.FaultTables.TestRow;
import org.copperbook.sheets.registers.RegisterField;
import org.copperbook.sheets.registers.RegisterImport;
import org.copperbook.sheets.registers.RegisterRow;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.sheets.registers.RowRefusedException;

/** The likelihoods as a table: a row for each answer of each question, a column for each part, in percent; and their sums. */
final class FaultTablesRows {

    private static final BigDecimal ALL = BigDecimal.valueOf(100);
    private static final String TEST = "test";
    private static final String OUTCOME = "outcome";
    private static final String WORDS = "words";

    private final Words words;
    private final String title;

    FaultTablesRows(Words words, String title) {
        this.words = words;
        this.title = title;
    }

    /** What can be shown one at a time: the shares, then every question. */
    static String[] choices(FaultTables tables, Words words) {
        List<String> all = new ArrayList<>(List.of(words.text("faults.shares")));
        tables.tests().forEach(t -> all.add(String.valueOf(t.question())));
        return all.toArray(String[]::new);
    }

    /** A heading in two lines of about one length. */
    static String onTwoLines(String text) {
        int best = -1;
        for (int at = text.indexOf(' '); at >= 0; at = text.indexOf(' ', at + 1)) {
            if (best < 0 || Math.abs(at - text.length() / 2) < Math.abs(best - text.length() / 2)) {
                best = at;
            }
        }
        return best < 0 ? text : text.substring(0, best) + '\n' + text.substring(best + 1);
    }

    RegisterShape shape(FaultTables tables) {
        return shape(tables, List.of());
    }

    /** The same with what stands there only to be read. */
    RegisterShape shapeOut(FaultTables tables) {
        return shape(tables, List.of(RegisterField.text(WORDS, words.text("faults.inWords"), "")));
    }

    private RegisterShape shape(FaultTables tables, List<RegisterField> more) {
        List<RegisterField> fields = new ArrayList<>(List.of(
                RegisterField.text(TEST, words.text("faults.test"), words.text("faults.testTitles")).needed(),
                RegisterField.text(OUTCOME, words.text("faults.outcomeShort"), words.text("faults.outcomeTitles")).needed()));
        fields.addAll(more);
        tables.suspects().forEach(s -> fields.add(RegisterField.number(key(s.id()), s.inWords(), s.id(), BigDecimal.ZERO, ALL)));
        return new RegisterShape(title, fields, List.of(TEST, OUTCOME));
    }

    /** A part may be called as one of the other columns is. */
    private static String key(String suspect) {
        return "/" + suspect;
    }

    List<Map<String, Object>> rows(FaultTables tables) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (TestRow t : tables.tests()) {
            for (OutcomeRow o : t.outcomes()) {
                Map<String, Object> row = new LinkedHashMap<>();
                row.put(TEST, t.id());
                row.put(OUTCOME, o.id());
                row.put(WORDS, words.text("faults.both", t.question(), o.inWords()));
                tables.suspects().forEach(s -> row.put(key(s.id()), percent(o.likelihoods().get(s.id()))));
                rows.add(row);
            }
        }
        return rows;
    }

    private static BigDecimal percent(Double fraction) {
        return fraction == null ? null : BigDecimal.valueOf(fraction).movePointRight(2);
    }

    CopiedBlock block(FaultTables tables) {
        List<RegisterField> fields = shapeOut(tables).fields();
        List<List<String>> cells = new ArrayList<>();
        cells.add(fields.stream().map(RegisterField::label).toList());
        rows(tables).forEach(row -> cells.add(fields.stream().map(f -> text(row.get(f.key()))).toList()));
        return new CopiedBlock(cells);
    }

    private static String text(Object cell) {
        return cell instanceof BigDecimal n ? n.stripTrailingZeros().toPlainString() : Objects.toString(cell, "");
    }

    /** Lets rows through that name an answer there is; others are refused. */
    RegisterImport.Maker<RegisterRow> maker(FaultTables tables) {
        return row -> {
            String test = row.text(TEST).orElseThrow();
            String outcome = row.text(OUTCOME).orElseThrow();
            List<OutcomeRow> answers = tables.tests().stream().filter(t -> t.id().equals(test)).findFirst()
                    .orElseThrow(() -> new RowRefusedException(TEST, words.text("faults.unknownTest", test))).outcomes();
            if (answers.stream().noneMatch(o -> o.id().equals(outcome))) {
                throw new RowRefusedException(OUTCOME, words.text("faults.unknownOutcome", outcome,
                        answers.stream().map(OutcomeRow::id).collect(Collectors.joining(", "))));
            }
            return row;
        };
    }

    /** The tables with the likelihoods that rows state; what a row leaves empty stays. */
    static FaultTables with(FaultTables tables, List<RegisterRow> rows) {
        List<TestRow> tests = tables.tests().stream().map(t -> new TestRow(t.id(), t.minutes(), t.question(), t.several(),
                t.hazards(), t.cautions(), t.outcomes().stream().map(o -> rows.stream()
                        .filter(r -> r.text(TEST).orElseThrow().equals(t.id()) && r.text(OUTCOME).orElseThrow().equals(o.id()))
                        .reduce(o, FaultTablesRows::with, (a, b) -> b)).toList())).toList();
        return new FaultTables(tables.schema(), tables.name(), tables.origin(), tables.settledAt(), tables.suspects(), tests,
                tables.practice(), tables.more());
    }

    private static OutcomeRow with(OutcomeRow answer, RegisterRow row) {
        Map<String, Double> likelihoods = new LinkedHashMap<>(answer.likelihoods());
        likelihoods.keySet().forEach(s -> row.number(key(s)).ifPresent(p -> likelihoods.put(s, p.movePointLeft(2).doubleValue())));
        return new OutcomeRow(answer.id(), answer.inWords(), likelihoods);
    }

    /** Whether the shares of all parts add up, in words. */
    String sumOfShares(FaultTables tables) {
        double sum = tables.suspects().stream().map(SuspectRow::share).filter(Objects::nonNull).mapToDouble(s -> s).sum();
        return isOne(sum) ? words.text("faults.allOne") : words.text("faults.sharesOff", shown(sum));
    }

    /** For which parts the answers of a question do not add up, in words. */
    String sumsOf(FaultTables tables, int test) {
        if (test >= tables.tests().size()) {
            return "";
        }
        List<String> off = new ArrayList<>();
        for (SuspectRow s : tables.suspects()) {
            double sum = tables.tests().get(test).outcomes().stream().map(o -> o.likelihoods().get(s.id()))
                    .filter(Objects::nonNull).mapToDouble(p -> p).sum();
            if (!isOne(sum)) {
                off.add(words.text("faults.off", s.inWords(), shown(sum)));
            }
        }
        return off.isEmpty() ? words.text("faults.allOne") : String.join("\n", off);
    }

    private static boolean isOne(double sum) {
        return Math.abs(sum - 1) <= FaultKnowledge.ROUNDING;
    }

    private static String shown(double sum) {
        return BigDecimal.valueOf(sum).movePointRight(2).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
    }
}
