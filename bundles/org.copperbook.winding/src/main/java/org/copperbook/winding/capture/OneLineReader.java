package org.copperbook.winding.capture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.wire.WireSize;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.winding.WindingData;

/**
 * Reads a winding said in one line. The pieces may stand in any order, with or without blanks between them; every word
 * may be shortened as the texts of the plug-in say.
 */
public final class OneLineReader {

    /** What became of a line. */
    public sealed interface Read {
        /** Understood. */
        record Said(OneLine line) implements Read {
        }

        /** Not understood; why, in words. */
        record Wrong(String why) implements Read {
        }
    }

    private record Piece(Pattern pattern, BiConsumer<Matcher, OneLine.Builder> take) {
    }

    private static final String PAIR = "\\d{1,4} *[-\u2013] *\\d{1,4}";
    private static final String LIST = "\\d{1,5}(?:/\\d{1,5})*";
    private static final String DECIMAL = "\\d{1,2}[.,]\\d{1,4}";
    private static final String GAUGE = "(?:awg|swg) *\\d{1,2}|\\d{1,2} *(?:awg|swg)\\b";
    private static final String STRIP = DECIMAL + " *[x\u00d7] *" + DECIMAL;
    private static final Pattern BETWEEN = Pattern.compile("[\\s;]+|, +");
    private static final List<String> NUMBERS = List.of("slots", "poles", "phases", "layers", "circuits", "leads",
            "groupsPerPhase");

    private final Words words;
    private final List<Piece> pieces = new ArrayList<>();

    /** @param words texts of the plug-in, with the words of the line */
    public OneLineReader(Words words) {
        this.words = words;
        String of = word("of");
        String strands = "(\\d{1,3}) *(?:" + of + "|\\*) *";
        piece(strands + "(" + GAUGE + "|" + STRIP + " *(?:mm)?|" + DECIMAL + " *(?:mm)?|\\d *mm)",
                (m, b) -> b.wires.add(new OneLine.Wire(Integer.parseInt(m.group(1)), size(m.group(2)))));
        piece("(" + GAUGE + "|" + STRIP + " *(?:mm)?|" + DECIMAL + " *(?:mm)?|\\d *mm)",
                (m, b) -> b.wires.add(new OneLine.Wire(1, size(m.group(1)))));
        piece("(?:" + word("sequence") + ") *(\\d{1,2}(?:-\\d{1,2})*)", (m, b) -> b.sequence = m.group(1));
        piece("(\\d{1,2}(?:-\\d{1,2}){2,})", (m, b) -> b.sequence = m.group(1));
        piece("(" + PAIR + "(?: *, *" + PAIR + ")*)", (m, b) -> b.span = span(m.group(1)));
        piece("[x\u00d7] *(" + LIST + ")", (m, b) -> turns(m.group(1), b));
        piece("(" + LIST + ") *(?:" + word("turns") + ")(?![a-z])", (m, b) -> turns(m.group(1), b));
        for (String field : NUMBERS) {
            piece("(\\d{1,4}) *(?:" + word(field) + ")(?![a-z])",
                    (m, b) -> b.numbers.put(field, Integer.parseInt(m.group(1))));
        }
        constants(WindingData.Connection.values(), (c, b) -> b.join = c);
        constants(WindingData.CoilType.values(), (c, b) -> b.coilType = c);
        piece("(?:" + word("star") + ")(?![a-z])", (m, b) -> b.join = WindingData.Connection.STAR);
        piece("(?:" + word("delta") + ")(?![a-z])", (m, b) -> b.join = WindingData.Connection.DELTA);
    }

    /** Reads a line. */
    public Read read(String line) {
        String text = line.strip().toLowerCase(Locale.ROOT);
        OneLine.Builder said = new OneLine.Builder();
        int at = 0;
        while (at < text.length()) {
            Matcher gap = BETWEEN.matcher(text).region(at, text.length());
            if (gap.lookingAt()) {
                at = gap.end();
                continue;
            }
            int next = take(text, at, said);
            if (next < 0) {
                return new Read.Wrong(words.text("line.wrong", line.strip().substring(at)));
            }
            at = next;
        }
        OneLine done = said.done();
        for (OneLine.Wire w : done.wires()) {
            if (!w.size().contains("\u00d7")) {
                try {
                    WireSize.parse(w.size());
                } catch (OutOfRange e) {
                    return new Read.Wrong(e.getMessage());
                }
            }
        }
        return at == 0 ? new Read.Wrong(words.text("line.empty")) : new Read.Said(done);
    }

    private int take(String text, int at, OneLine.Builder said) {
        for (Piece p : pieces) {
            Matcher m = p.pattern().matcher(text).region(at, text.length());
            if (m.lookingAt()) {
                p.take().accept(m, said);
                return m.end();
            }
        }
        return -1;
    }

    private void piece(String regex, BiConsumer<Matcher, OneLine.Builder> take) {
        pieces.add(new Piece(Pattern.compile(regex), take));
    }

    private String word(String key) {
        return Stream.of(words.text("line.word." + key).split(",")).map(String::strip)
                .sorted(Comparator.comparingInt(String::length).reversed()).map(Pattern::quote)
                .collect(Collectors.joining("|"));
    }

    private <E extends Enum<E>> void constants(E[] all, BiConsumer<E, OneLine.Builder> take) {
        Stream.of(all).sorted(Comparator.comparingInt((E e) -> words.of(e).length()).reversed())
                .forEach(e -> piece(Pattern.quote(words.of(e).toLowerCase(Locale.ROOT)) + "(?![a-z])",
                        (m, b) -> take.accept(e, b)));
    }

    private static void turns(String list, OneLine.Builder b) {
        b.turns.clear();
        Stream.of(list.split("/")).map(Integer::parseInt).forEach(b.turns::add);
    }

    private static String span(String pairs) {
        return pairs.replace(" ", "").replace('\u2013', '-').replace(",", ", ");
    }

    /** A size as the record writes it: "1.18 mm", "18 SWG", "AWG 16", "2.00 x 4.00 mm". */
    private static String size(String said) {
        String s = said.strip();
        Matcher gauge = Pattern.compile("(awg|swg)? *(\\d+) *(awg|swg)?").matcher(s);
        if ((s.contains("awg") || s.contains("swg")) && gauge.matches()) {
            String system = (gauge.group(1) == null ? gauge.group(3) : gauge.group(1)).toUpperCase(Locale.ROOT);
            return system.equals("AWG") ? "AWG " + gauge.group(2) : gauge.group(2) + " SWG";
        }
        String bare = s.replace("mm", "").strip().replace(',', '.');
        return bare.replaceAll(" *[x\u00d7] *", " \u00d7 ") + " mm";
    }
}
