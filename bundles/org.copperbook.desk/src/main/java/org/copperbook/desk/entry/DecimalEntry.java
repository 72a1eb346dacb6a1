package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import java.math.BigDecimal;
import java.util.List;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.Dimension;
import org.copperbook.calc.quantity.Parsed;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.desk.text.DeskWords;

/** An exact decimal number without a unit (money, hours, percent of a quote), kept to the digit as typed. */
public final class DecimalEntry implements Entry {

    private final DecimalMark mark;
    private final boolean belowZero;

    public DecimalEntry() {
        this(Marks.ofLocale(), true);
    }

    DecimalEntry(DecimalMark mark, boolean belowZero) {
        this.mark = mark;
        this.belowZero = belowZero;
    }

    /** A price or a limit, which is never below zero. */
    public static DecimalEntry price() {
        return new DecimalEntry(Marks.ofLocale(), false);
    }

    @Override
    public String show(JsonNode value) {
        return value.isNumber() ? show(value.decimalValue()) : "";
    }

    @Override
    public Typed read(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return new Typed.Blank();
        }
        Parsed parsed = QuantityText.parse(t, Dimension.MONEY, "", mark);
        if (parsed instanceof Parsed.Value v) {
            Typed.Understood read = understood(v);
            return belowZero || read.node().decimalValue().signum() >= 0 ? read
                    : new Typed.Wrong(DeskWords.text("entry.belowZero", t));
        }
        if (parsed instanceof Parsed.Ambiguous a) {
            List<Typed.Understood> answers = a.readings().stream().map(this::understood).toList();
            return new Typed.Ambiguous(DeskWords.text("entry.ambiguous", t), answers);
        }
        Parsed.Wrong w = (Parsed.Wrong) parsed;
        return new Typed.Wrong(w.problem() == Parsed.Problem.UNKNOWN_UNIT
                || w.problem() == Parsed.Problem.OTHER_QUANTITY ? DeskWords.text("entry.noUnit", w.detail())
                        : DeskWords.text("entry." + w.problem().name(), w.detail()));
    }

    @Override
    public boolean isNumeric() {
        return true;
    }

    /** The digits are taken from the normalised text and not from the double beside it. */
    private Typed.Understood understood(Parsed.Value v) {
        BigDecimal exact = new BigDecimal(v.normalised().replace(mark.sign(), '.'));
        return new Typed.Understood(DecimalNode.valueOf(exact), show(exact));
    }

    private String show(BigDecimal n) {
        return n.toPlainString().replace('.', mark.sign());
    }
}
