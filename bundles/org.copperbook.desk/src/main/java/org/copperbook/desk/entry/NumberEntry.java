package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.Parsed;
import org.copperbook.calc.quantity.Quantity;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.calc.quantity.Unit;
import org.copperbook.calc.quantity.UnitTable;
import org.copperbook.desk.text.DeskWords;

/** A number with a unit, typed with either decimal mark and any unit of its quantity, echoed back normalised. */
public final class NumberEntry implements Entry {

    /** Digits shown: as many as the finest meter of the trade resolves, so that 75 hp is no row of nine; the record keeps all. */
    private static final int DIGITS = 7;

    private final FieldUnit unit;
    private final Unit kept;
    private final DecimalMark mark;

    public NumberEntry(FieldUnit unit) {
        this(unit, Marks.ofLocale());
    }

    NumberEntry(FieldUnit unit, DecimalMark mark) {
        this.unit = unit;
        this.kept = UnitTable.unit(unit.dimension(), unit.kept());
        this.mark = mark;
    }

    @Override
    public String show(JsonNode value) {
        return value.isNumber() ? show(Quantity.of(unit.dimension(), kept.toSi(value.doubleValue()))) : "";
    }

    @Override
    public Typed read(String text) {
        if (text.isBlank()) {
            return new Typed.Blank();
        }
        Parsed parsed = QuantityText.parse(text, unit.dimension(), unit.implied(), mark);
        if (parsed instanceof Parsed.Value v) {
            return understood(v);
        }
        if (parsed instanceof Parsed.Ambiguous a) {
            List<Typed.Understood> answers = a.readings().stream().map(this::understood).toList();
            return new Typed.Ambiguous(DeskWords.text("entry.ambiguous", text.strip()), answers);
        }
        return wrong((Parsed.Wrong) parsed);
    }

    @Override
    public boolean isNumeric() {
        return true;
    }

    private Typed.Understood understood(Parsed.Value v) {
        double number = clean(kept.fromSi(v.quantity().si()));
        return new Typed.Understood(DoubleNode.valueOf(number), show(v.quantity()));
    }

    private Typed.Wrong wrong(Parsed.Wrong w) {
        String known = known();
        return new Typed.Wrong(switch (w.problem()) {
            case UNKNOWN_UNIT, OTHER_QUANTITY -> known.isEmpty()
                    ? DeskWords.text("entry.noUnit", w.detail())
                    : DeskWords.text("entry." + w.problem().name(), w.detail(), known);
            default -> DeskWords.text("entry." + w.problem().name(), w.detail());
        });
    }

    /** The units that fit, first the one that a number without a unit is read in: kVA before VA. */
    private String known() {
        Set<String> names = new LinkedHashSet<>();
        if (!unit.implied().isEmpty()) {
            names.add(unit.implied());
        }
        names.addAll(UnitTable.names(unit.dimension()));
        return String.join(", ", names);
    }

    private String show(Quantity q) {
        return unit.shown() == null ? QuantityText.format(q, DIGITS, mark)
                : QuantityText.formatIn(q, unit.shown(), DIGITS, mark);
    }

    /** Takes off what converting to SI and back leaves in the last binary digits: 1500 r/min stays 1500. */
    private static double clean(double number) {
        if (number == 0 || !Double.isFinite(number)) {
            return number;
        }
        return new java.math.BigDecimal(number).round(new java.math.MathContext(14)).doubleValue();
    }
}
