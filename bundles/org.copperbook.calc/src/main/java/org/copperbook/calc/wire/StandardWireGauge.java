package org.copperbook.calc.wire;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.Tables;

/** The table of British standard wire gauge, BS 3737, whose diameters are defined in inches. */
final class StandardWireGauge {
    private static final double INCH = 0.0254;
    private static final Map<Integer, Double> DIAMETERS = load();

    private StandardWireGauge() {
    }

    private static Map<Integer, Double> load() {
        Map<Integer, Double> byNumber = new HashMap<>();
        for (List<String> row : Tables.rows(StandardWireGauge.class, "standard-wire-gauge.csv")) {
            byNumber.put(Integer.valueOf(row.get(0)), Double.parseDouble(row.get(1)) * INCH);
        }
        return Map.copyOf(byNumber);
    }

    static double diameter(int number) {
        Double diameter = DIAMETERS.get(number);
        if (diameter == null) {
            throw new OutOfRange("SWG number", Integer.toString(number), "-6 (7/0) to 50", "BS 3737 lists these sizes");
        }
        return diameter;
    }

    static List<Integer> numbers() {
        return List.copyOf(new TreeMap<>(DIAMETERS).keySet());
    }
}
