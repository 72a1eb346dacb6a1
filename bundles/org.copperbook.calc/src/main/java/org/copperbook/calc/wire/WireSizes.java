package org.copperbook.calc.wire;

import java.util.ArrayList;
import java.util.List;

/** The round sizes that a gauge may turn out to be. */
public final class WireSizes {
    private static final int THICKEST_AWG = 4;
    private static final int THINNEST_AWG = 38;

    private WireSizes() {
    }

    /** @return metric sizes of IEC 60317-0-1, 0.1 to 5 mm, rising */
    public static List<WireSize> metric() {
        return EnamelTable.standard().sizes();
    }

    /** @return whole AWG sizes that are wound, AWG 38 to AWG 4, rising in diameter */
    public static List<WireSize> awg() {
        List<WireSize> sizes = new ArrayList<>();
        for (int n = THINNEST_AWG; n >= THICKEST_AWG; n--) {
            sizes.add(WireSize.awg(n));
        }
        return sizes;
    }

    /** @return SWG sizes between 0.1 and 5 mm, rising in diameter */
    public static List<WireSize> swg() {
        List<WireSize> sizes = new ArrayList<>();
        for (int n : StandardWireGauge.numbers()) {
            WireSize size = WireSize.swg(n);
            if (size.bareDiameter() >= 0.1e-3 && size.bareDiameter() <= 5e-3) {
                sizes.add(0, size);
            }
        }
        return sizes;
    }

    /**
     * @param system a system of sizes
     * @return its sizes, rising in diameter
     */
    public static List<WireSize> of(WireSystem system) {
        return switch (system) {
            case AWG -> awg();
            case SWG -> swg();
            case METRIC -> metric();
        };
    }

    /**
     * The next size up or down in the same system.
     *
     * @param size a size
     * @param steps +1 for the next thicker, -1 for the next thinner
     * @return the neighbour, or the size itself at the end of its list
     */
    public static WireSize neighbour(WireSize size, int steps) {
        List<WireSize> sizes = of(size.system());
        int nearest = 0;
        for (int i = 0; i < sizes.size(); i++) {
            if (Math.abs(sizes.get(i).bareDiameter() - size.bareDiameter())
                    < Math.abs(sizes.get(nearest).bareDiameter() - size.bareDiameter())) {
                nearest = i;
            }
        }
        int wanted = nearest + steps;
        return wanted < 0 || wanted >= sizes.size() ? size : sizes.get(wanted);
    }
}
