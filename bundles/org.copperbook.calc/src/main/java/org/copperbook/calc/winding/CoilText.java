package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.calc.OutOfRange;

/** Reads coils as written on a card: "1-6x10, -7-12x10", a minus before a coil connected reversed. */
public final class CoilText {
    private static final Pattern COIL =
            Pattern.compile("(-)?([0-9]{1,4})-([0-9]{1,4})(?:\\s*[xX*]\\s*([0-9]{1,6}(?:[.,]5)?))?");

    private CoilText() {
    }

    /**
     * @param phases coils of each phase, separated by commas; a coil without turns has one. Neighbouring coils of one
     *     sense in consecutive slots form a group
     * @return coils
     * @throws OutOfRange when a coil cannot be read
     */
    public static List<Coil> read(List<String> phases) {
        List<Coil> coils = new ArrayList<>();
        int group = 0;
        for (int phase = 1; phase <= phases.size(); phase++) {
            Coil previous = null;
            for (String part : phases.get(phase - 1).split(",(?=\\s*-?[0-9]+-)")) {
                Coil coil = coil(part.trim(), phase, group + 1);
                boolean continues = previous != null && previous.sense() == coil.sense() && coil.goSlot()
                        == previous.goSlot() + 1;
                if (continues) {
                    coil = new Coil(phase, group, coil.goSlot(), coil.returnSlot(), coil.turns(), coil.sense());
                } else {
                    group++;
                }
                coils.add(coil);
                previous = coil;
            }
        }
        return coils;
    }

    private static Coil coil(String text, int phase, int group) {
        Matcher matcher = COIL.matcher(text);
        if (!matcher.matches()) {
            throw new OutOfRange("coil", '"' + text + '"', "the forms 1-6x10 and -7-12x10",
                    "slots are joined by a hyphen, turns follow an x");
        }
        double turns = matcher.group(4) == null ? 1 : Double.parseDouble(matcher.group(4).replace(',', '.'));
        return new Coil(phase, group, Integer.parseInt(matcher.group(2)), Integer.parseInt(matcher.group(3)), turns,
                matcher.group(1) == null ? 1 : -1);
    }
}
