package org.copperbook.calc.fit;

import java.util.List;
import java.util.Optional;
import org.copperbook.calc.Require;
import org.copperbook.calc.Tables;

/**
 * Tolerance zones of bearing seats. Source: ISO 286-2:2010, as printed in bearing makers' fit tables; sizes whose figures were
 * not found in print have none.
 */
public enum ToleranceZone {
    SHAFT_H5("h5"), SHAFT_H6("h6"), SHAFT_J5("j5"), SHAFT_J6("j6"), SHAFT_JS5("js5"), SHAFT_JS6("js6"), SHAFT_K5("k5"),
    SHAFT_K6("k6"), SHAFT_M5("m5"), SHAFT_M6("m6"), SHAFT_N5("n5"), SHAFT_N6("n6"), HOUSING_H6("H6"), HOUSING_H7("H7"),
    HOUSING_J6("J6"), HOUSING_J7("J7"), HOUSING_JS6("JS6"), HOUSING_JS7("JS7"), HOUSING_K6("K6"), HOUSING_K7("K7");

    private static final double MICRO = 1e-6;
    private static final double MILLI = 1e-3;
    private static final int FIRST_GRADE = 5;
    private static final int IT5 = 2;
    private static final List<String> HEADS =
            List.of("over", "up to", "IT5", "IT6", "IT7", "k", "m", "n", "j5", "j6", "J6", "J7", "K6", "K7");
    private static final List<List<String>> ROWS = Tables.rows(ToleranceZone.class, "zones.csv");

    private final String sign;

    ToleranceZone(String sign) {
        this.sign = sign;
    }

    /**
     * Limit deviations from the nominal size.
     *
     * @param lower m
     * @param upper m
     */
    public record Deviations(double lower, double upper) {
    }

    /** As the zone is written: small letters for shafts, capitals for housings. */
    public String sign() {
        return sign;
    }

    /** Whether it is the zone of a shaft; otherwise of a housing bore. */
    public boolean ofShaft() {
        return Character.isLowerCase(sign.charAt(0));
    }

    /** The zone behind its sign; capitals and small letters are told apart, blanks around it are not. */
    public static Optional<ToleranceZone> of(String sign) {
        for (ToleranceZone z : values()) {
            if (sign != null && z.sign.equals(sign.strip())) {
                return Optional.of(z);
            }
        }
        return Optional.empty();
    }

    /** The limit deviations at a nominal size in m, above 0 to 0.5; empty where their figures were not found in print. */
    public Optional<Deviations> at(double nominal) {
        Require.between("nominal size", nominal, Double.MIN_VALUE, 0.5, "m", "the table runs to 500 mm");
        double mm = nominal / MILLI;
        for (List<String> row : ROWS) {
            if (mm > Double.parseDouble(row.get(0)) && mm <= Double.parseDouble(row.get(1)) + 1e-9) {
                return in(row);
            }
        }
        return Optional.empty();
    }

    private Optional<Deviations> in(List<String> row) {
        double it = Double.parseDouble(row.get(IT5 + sign.charAt(sign.length() - 1) - '0' - FIRST_GRADE));
        String letters = sign.substring(0, sign.length() - 1);
        switch (letters) {
            case "h":
                return deviations(-it, 0);
            case "H":
                return deviations(0, it);
            case "js", "JS":
                return deviations(-it / 2, it / 2);
            default:
                break;
        }
        boolean byLower = letters.equals("k") || letters.equals("m") || letters.equals("n");
        String cell = row.get(HEADS.indexOf(byLower ? letters : sign));
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        if (byLower) {
            double lower = Double.parseDouble(cell);
            return deviations(lower, lower + it);
        }
        String[] both = cell.split(" ");
        return deviations(Double.parseDouble(both[0]), Double.parseDouble(both[1]));
    }

    private static Optional<Deviations> deviations(double lower, double upper) {
        return Optional.of(new Deviations(lower * MICRO, upper * MICRO));
    }
}
