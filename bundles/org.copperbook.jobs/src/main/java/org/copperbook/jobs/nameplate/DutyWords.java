package org.copperbook.jobs.nameplate;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the duty on a plate: a type S1 to S10 of IEC 60034-1 with whatever follows it ("S3 40 %"), or the words, times and
 * codes that older plates and those of generating sets (ISO 8528-1) put in its place. Types, words and codes are from memory.
 */
final class DutyWords {

    private static final int LAST_TYPE = 10;
    private static final Pattern TYPE = Pattern.compile("(?<![\\p{L}\\d])S[ .-]?(\\d+)");
    private static final Pattern WORDS = Pattern.compile("CONT|KONT|DAUER|PERMANENT|SHORT|INTERM|PERIOD|STAND|PRIME|BASE|EMERG"
            + "|LIMITED|\\b(CMR|MCR|COP|PRP|LTP|ESP|DCP)\\b|\\d ?(%|MIN|H\\b|HR|HOUR)");

    private DutyWords() {
    }

    /** Whether the words name a duty. Words of another script cannot be judged here and pass. */
    static boolean nameADuty(String stated) {
        String words = stated.toUpperCase(Locale.ROOT);
        Matcher type = TYPE.matcher(words);
        if (!type.find()) {
            return WORDS.matcher(words).find() || words.codePoints().anyMatch(c -> Character.isLetter(c)
                    && Character.UnicodeScript.of(c) != Character.UnicodeScript.LATIN);
        }
        do {
            if (!isType(type.group(1))) {
                return false;
            }
        } while (type.find());
        return true;
    }

    private static boolean isType(String digits) {
        return digits.length() <= 2 && !digits.startsWith("0") && Integer.parseInt(digits) <= LAST_TYPE;
    }
}
