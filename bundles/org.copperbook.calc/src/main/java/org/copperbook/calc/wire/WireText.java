package org.copperbook.calc.wire;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.calc.OutOfRange;

/** Reads wire sizes as people write them. */
final class WireText {
    private static final Pattern GAUGE_FIRST = Pattern.compile("(AWG|SWG)[ #.]*([0-9]+(?:/0|[.,]5)?)");
    private static final Pattern NUMBER_FIRST = Pattern.compile("#?([0-9]+(?:/0|[.,]5)?) *(AWG|SWG)");
    private static final Pattern DIAMETER = Pattern.compile("([0-9]*[.,]?[0-9]+) *(MM|IN|\"|MIL)");

    private static final String FORMS = "the forms 18SWG, AWG 16 and 1.25mm";

    private WireText() {
    }

    static WireSize read(String text) {
        if (text == null || text.isBlank()) {
            throw new OutOfRange("wire size", "(nothing)", FORMS, "nothing was written");
        }
        String tidy = text.trim().toUpperCase(Locale.ROOT);
        Matcher gauge = GAUGE_FIRST.matcher(tidy);
        if (gauge.matches()) {
            return gauge(gauge.group(1), gauge.group(2));
        }
        gauge = NUMBER_FIRST.matcher(tidy);
        if (gauge.matches()) {
            return gauge(gauge.group(2), gauge.group(1));
        }
        Matcher diameter = DIAMETER.matcher(tidy);
        if (diameter.matches()) {
            double value = Double.parseDouble(diameter.group(1).replace(',', '.'));
            return switch (diameter.group(2)) {
                case "MM" -> WireSize.metric(value);
                case "MIL" -> WireSize.metric(value * 0.0254);
                default -> WireSize.metric(value * 25.4);
            };
        }
        throw new OutOfRange("wire size", '"' + text.trim() + '"', FORMS,
                "a bare number may mean a gauge or a diameter, so the gauge or the unit must be written");
    }

    private static WireSize gauge(String system, String digits) {
        if (digits.indexOf('.') >= 0 || digits.indexOf(',') >= 0) {
            if (!system.equals("AWG")) {
                throw new OutOfRange("SWG number", digits, "the whole sizes", "the table has no half sizes");
            }
            return WireSize.awg(Double.parseDouble(digits.replace(',', '.')));
        }
        int number;
        if (digits.endsWith("/0")) {
            number = 1 - Integer.parseInt(digits.substring(0, digits.length() - 2));
        } else if (digits.length() > 1 && digits.chars().allMatch(c -> c == '0')) {
            number = 1 - digits.length();
        } else {
            number = Integer.parseInt(digits);
        }
        return system.equals("AWG") ? WireSize.awg(number) : WireSize.swg(number);
    }
}
