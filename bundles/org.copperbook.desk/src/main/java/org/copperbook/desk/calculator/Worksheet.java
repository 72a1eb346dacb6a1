package org.copperbook.desk.calculator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.Catalogue;
import org.copperbook.calc.catalogue.Evaluation;
import org.copperbook.calc.catalogue.Input;
import org.copperbook.calc.catalogue.InputProblem;
import org.copperbook.calc.catalogue.Output;
import org.copperbook.calc.quantity.DecimalMark;

/** One calculation with what has been filled in, and what comes of it. */
public final class Worksheet {

    private static final int DIGITS = 6;

    private final Catalogue catalogue;
    private final Calculation calculation;
    private final DecimalMark mark;
    private final Map<String, String> filled = new LinkedHashMap<>();

    public Worksheet(Catalogue catalogue, Calculation calculation, DecimalMark mark) {
        this.catalogue = catalogue;
        this.calculation = calculation;
        this.mark = mark;
    }

    /** One line of an answer: what it is, and its value with the unit. */
    public record Line(String what, String value) {
    }

    /**
     * What came of the inputs.
     *
     * @param lines    results; empty when there are none yet
     * @param warnings what to know before relying on them
     * @param problem  why there are no results, or empty
     * @param input    the input the problem is about, or empty
     */
    public record Answer(List<Line> lines, List<String> warnings, String problem, String input) {
        public Answer {
            lines = List.copyOf(lines);
            warnings = List.copyOf(warnings);
        }
    }

    public Calculation calculation() {
        return calculation;
    }

    /** Fills in one input; blank takes it out again. */
    public void fill(String input, String text) {
        if (text.isBlank()) {
            filled.remove(input);
        } else {
            filled.put(input, text.strip());
        }
    }

    /** Inputs that have to be filled and are not. */
    public List<Input> missing() {
        return calculation.inputs().stream()
                .filter(i -> i.required() && i.defaultText() == null && !filled.containsKey(i.name())).toList();
    }

    /** Computes from what is filled in. */
    public Answer answer() {
        if (!missing().isEmpty()) {
            return new Answer(List.of(), List.of(), "", "");
        }
        try {
            Evaluation e = catalogue.evaluate(calculation.name(), filled, mark);
            List<Line> lines = new ArrayList<>();
            for (String name : e.values().keySet()) {
                lines.add(new Line(calculation.output(name).map(Output::doc).orElse(name), e.text(name, DIGITS, mark)));
            }
            return new Answer(lines, e.warnings(), "", "");
        } catch (InputProblem p) {
            return new Answer(List.of(), List.of(), p.getMessage(), p.input());
        } catch (OutOfRange refused) {
            return new Answer(List.of(), List.of(), refused.getMessage(), "");
        }
    }

    /** The whole sheet as text with tabs, for pasting into a spreadsheet or a letter. */
    public String copied() {
        StringBuilder text = new StringBuilder(calculation.title()).append('\n');
        filled.forEach((k, v) -> text.append(k).append('\t').append(v).append('\n'));
        Answer answer = answer();
        answer.lines().forEach(l -> text.append(l.what()).append('\t').append(l.value()).append('\n'));
        answer.warnings().forEach(w -> text.append(w).append('\n'));
        return text.append(calculation.formula()).append('\n').append(calculation.source()).append('\n').toString();
    }
}
