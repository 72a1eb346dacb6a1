package org.copperbook.desk.entry;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.copperbook.calc.quantity.DecimalMark;

/** The decimal mark of the locale. */
public final class Marks {

    private Marks() {
    }

    /** The mark that the locale uses. */
    public static DecimalMark ofLocale() {
        return DecimalFormatSymbols.getInstance(Locale.getDefault(Locale.Category.FORMAT)).getDecimalSeparator() == ','
                ? DecimalMark.COMMA : DecimalMark.DOT;
    }
}
