package org.copperbook.runup.core;

import com.fasterxml.jackson.databind.node.DoubleNode;
import java.math.BigDecimal;
import java.math.MathContext;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.NumberEntry;

/** Figures computed on a page as text: four digits, in the unit and with the decimal mark of the fields beside them. */
public final class Shown {

    private static final MathContext DIGITS = new MathContext(4);

    private Shown() {
    }

    /** A figure kept in the unit of a field. */
    public static String of(double value, FieldUnit unit) {
        return new NumberEntry(unit).show(DoubleNode.valueOf(new BigDecimal(value).round(DIGITS).doubleValue()));
    }

    /** A plain number. */
    public static String number(double value) {
        return of(value, FieldUnit.NUMBER);
    }
}
