package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.wire.ConductorMaterial;
import org.copperbook.calc.wire.Conductor;
import org.copperbook.calc.wire.Strip;
import org.copperbook.calc.wire.WireSize;

/** Reads strands in hand as written on a card: "6 x AWG 15", "2x1.0mm + 1x0.9mm", "1 x strip 6.83x4.14mm". */
public final class BundleText {
    private static final Pattern PART = Pattern.compile("(?:([0-9]+)\\s*[xX*\u00d7]\\s*)?(.+)");
    private static final Pattern STRIP = Pattern.compile(
            "STRIP\\s*([0-9]*[.,]?[0-9]+)\\s*(?:MM)?\\s*[X*\u00d7]\\s*([0-9]*[.,]?[0-9]+)\\s*MM"
                    + "(?:\\s*R\\s*([0-9]*[.,]?[0-9]+)\\s*MM)?");

    private BundleText() {
    }

    /**
     * @param text strands by size, joined by +; a part without a number is one strand; a strip is written with its two
     *     sides and may have a corner radius, "strip 6.8x4.1mm r0.5mm"
     * @param material of all strands
     * @return the bundle
     * @throws OutOfRange when a part cannot be read
     */
    public static ConductorBundle read(String text, ConductorMaterial material) {
        List<ConductorBundle.Strands> strands = new ArrayList<>();
        for (String part : text.split("\\+")) {
            Matcher matcher = PART.matcher(part.trim());
            if (!matcher.matches()) {
                throw new OutOfRange("strands in hand", '"' + text + '"', "the forms 6 x AWG 15 and 2x1.0mm + 1x0.9mm",
                        "a part between plus signs is empty");
            }
            int count = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
            strands.add(new ConductorBundle.Strands(count, conductor(matcher.group(2))));
        }
        return new ConductorBundle(strands, material);
    }

    private static Conductor conductor(String text) {
        Matcher strip = STRIP.matcher(text.trim().toUpperCase(Locale.ROOT));
        if (!strip.matches()) {
            return WireSize.parse(text);
        }
        double one = millimetres(strip.group(1));
        double other = millimetres(strip.group(2));
        double radius = strip.group(3) == null ? 0 : millimetres(strip.group(3));
        return new Strip(Math.max(one, other), Math.min(one, other), radius);
    }

    private static double millimetres(String digits) {
        return Double.parseDouble(digits.replace(',', '.')) * 1e-3;
    }
}
