package org.copperbook.jobs.lot;

import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Lot and date codes as people write them: one code, or several in one field ("2618 K / 2621 A"). */
public final class LotText {

    private static final Pattern BETWEEN = Pattern.compile("[,;/+&\\s]+");

    private LotText() {
    }

    /**
     * Whether a field names a lot: the whole field, or one of the codes in it, letter case and outer blanks apart. Part
     * of a code is not enough, for "18" is another lot than "2026-18".
     */
    public static boolean names(String field, String lot) {
        if (field == null || lot == null || lot.isBlank()) {
            return false;
        }
        String wanted = plain(lot);
        return plain(field).equals(wanted) || Stream.of(BETWEEN.split(plain(field))).anyMatch(wanted::equals);
    }

    private static String plain(String text) {
        return text.strip().toUpperCase(Locale.ROOT);
    }
}
