package org.copperbook.calc.quantity;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.copperbook.calc.OutOfRange;

/**
 * The units that text may name. Factors are exact by definition where they are definitions (inch, pound, horsepower by
 * the avoirdupois pound and standard gravity); source: ISO 80000, SI brochure, NIST SP 811 appendix B.
 */
public final class UnitTable {

    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237;
    private static final double GRAVITY = 9.80665;

    /** SI prefixes that readings use; "meg" is how many meters print mega. */
    private static final Map<String, Double> PREFIXES = prefixes();

    private static final Map<Dimension, List<Entry>> TABLE = table();

    private record Entry(Unit unit, List<String> names, boolean prefixed) {
    }

    private UnitTable() {
    }

    /** The unit by the name given, or empty. Prefixes apply where the trade uses them. */
    public static Optional<Unit> find(Dimension dimension, String name) {
        for (Entry e : TABLE.get(dimension)) {
            if (e.names.contains(name)) {
                return Optional.of(e.unit);
            }
        }
        Optional<Unit> prefixed = prefixed(dimension, name, false);
        if (prefixed.isPresent()) {
            return prefixed;
        }
        if (name.length() > 1 || !PREFIXES.containsKey(name)) {
            // capitals and small letters may be mixed up, but never in a prefix, where they change the value
            for (Entry e : TABLE.get(dimension)) {
                if (e.names.stream().anyMatch(n -> n.equalsIgnoreCase(name))) {
                    return Optional.of(e.unit);
                }
            }
            return prefixed(dimension, name, true);
        }
        return Optional.empty();
    }

    /** The unit by its name, refused when unknown; for units named by the program itself. */
    public static Unit unit(Dimension dimension, String name) {
        return find(dimension, name).orElseThrow(() -> new OutOfRange("unit", name, String.join(", ", names(dimension)),
                "it does not measure this quantity"));
    }

    /** The names of a dimension's units without prefixes, the SI unit first. */
    public static List<String> names(Dimension dimension) {
        return TABLE.get(dimension).stream().map(e -> e.unit.symbol()).toList();
    }

    /** A bare prefix, as in "1.2k" for 1.2 kΩ; empty when the dimension's unit takes none. */
    static Optional<Unit> barePrefix(Dimension dimension, String prefix) {
        Entry base = TABLE.get(dimension).get(0);
        Double factor = PREFIXES.get(prefix);
        if (factor == null || !base.prefixed) {
            return Optional.empty();
        }
        return Optional.of(new Unit(shown(prefix) + base.unit.symbol(), dimension, factor, 0));
    }

    /** Whether any dimension knows the name. */
    static Optional<Dimension> dimensionOf(String name) {
        for (Dimension d : Dimension.values()) {
            if (find(d, name).isPresent()) {
                return Optional.of(d);
            }
        }
        return Optional.empty();
    }

    private static Optional<Unit> prefixed(Dimension dimension, String name, boolean anyCase) {
        for (Entry e : TABLE.get(dimension)) {
            if (!e.prefixed) {
                continue;
            }
            for (Map.Entry<String, Double> p : PREFIXES.entrySet()) {
                if (!name.startsWith(p.getKey())) {
                    continue;
                }
                String rest = name.substring(p.getKey().length());
                if (e.names.contains(rest) || anyCase && e.names.stream().anyMatch(n -> n.equalsIgnoreCase(rest))) {
                    return Optional.of(new Unit(shown(p.getKey()) + e.unit.symbol(), dimension,
                            p.getValue() * e.unit.factor(), 0));
                }
            }
        }
        return Optional.empty();
    }

    private static String shown(String prefix) {
        return switch (prefix) {
            case "u", "\u03bc", "micro" -> "\u00b5";
            case "milli" -> "m";
            case "K", "kilo" -> "k";
            case "meg", "Meg", "MEG", "mega" -> "M";
            case "giga" -> "G";
            default -> prefix;
        };
    }

    private static Map<String, Double> prefixes() {
        Map<String, Double> p = new LinkedHashMap<>();
        p.put("micro", 1e-6);
        p.put("milli", 1e-3);
        p.put("kilo", 1e3);
        p.put("mega", 1e6);
        p.put("giga", 1e9);
        p.put("meg", 1e6);
        p.put("Meg", 1e6);
        p.put("MEG", 1e6);
        p.put("p", 1e-12);
        p.put("n", 1e-9);
        p.put("u", 1e-6);
        p.put("\u00b5", 1e-6);
        p.put("\u03bc", 1e-6);
        p.put("m", 1e-3);
        p.put("k", 1e3);
        p.put("K", 1e3);
        p.put("M", 1e6);
        p.put("G", 1e9);
        p.put("T", 1e12);
        return p;
    }

    private static Map<Dimension, List<Entry>> table() {
        Map<Dimension, List<Entry>> t = new EnumMap<>(Dimension.class);
        for (Dimension d : Dimension.values()) {
            t.put(d, new ArrayList<>());
        }
        for (Dimension d : List.of(Dimension.RESISTANCE, Dimension.REACTANCE)) {
            scaled(t, d, 1, "Ω", "\u2126", "ohm", "ohms", "R");
        }
        plain(t, Dimension.TEMPERATURE, 1, "°C", "C", "degC", "celsius");
        t.get(Dimension.TEMPERATURE).add(entry(new Unit("°F", Dimension.TEMPERATURE, 5.0 / 9, -160.0 / 9), false,
                "°F", "F", "degF", "fahrenheit"));
        plain(t, Dimension.TEMPERATURE_RISE, 1, "K", "kelvin", "°C", "C");
        plain(t, Dimension.TEMPERATURE_RISE, 5.0 / 9, "°F", "F");
        plain(t, Dimension.TEMPERATURE_COEFFICIENT, 1, "1/K", "/K", "1/°C", "/°C");
        scaled(t, Dimension.VOLTAGE, 1, "V", "volt", "volts", "Vdc", "Vac");
        scaled(t, Dimension.CURRENT, 1, "A", "amp", "amps", "ampere", "amperes");
        scaled(t, Dimension.LENGTH, 1, "m", "metre", "metres", "meter", "meters");
        plain(t, Dimension.LENGTH, 0.01, "cm");
        plain(t, Dimension.LENGTH, INCH, "in", "inch", "inches", "\"");
        plain(t, Dimension.LENGTH, INCH / 1000, "mil", "mils", "thou");
        plain(t, Dimension.LENGTH, 12 * INCH, "ft", "foot", "feet");
        plain(t, Dimension.AREA, 1, "m²", "m2");
        plain(t, Dimension.AREA, 1e-4, "cm²", "cm2");
        plain(t, Dimension.AREA, 1e-6, "mm²", "mm2");
        plain(t, Dimension.AREA, INCH * INCH, "in²", "in2");
        plain(t, Dimension.AREA, Math.PI / 4 * INCH * INCH * 1e-6, "cmil", "CM");
        plain(t, Dimension.VOLUME, 1, "m³", "m3");
        plain(t, Dimension.VOLUME, 1e-6, "cm³", "cm3");
        plain(t, Dimension.VOLUME, 1e-3, "l", "L", "litre");
        plain(t, Dimension.MASS, 1, "kg");
        plain(t, Dimension.MASS, 1e-3, "g");
        plain(t, Dimension.MASS, 1000, "t", "tonne");
        plain(t, Dimension.MASS, POUND, "lb", "lbs", "pound", "pounds");
        plain(t, Dimension.MASS, POUND / 16, "oz");
        scaled(t, Dimension.POWER, 1, "W", "watt", "watts");
        plain(t, Dimension.POWER, 550 * POUND * GRAVITY * 12 * INCH, "hp");
        scaled(t, Dimension.APPARENT_POWER, 1, "VA");
        scaled(t, Dimension.REACTIVE_POWER, 1, "var", "VAr");
        scaled(t, Dimension.ENERGY, 1, "J");
        plain(t, Dimension.ENERGY, 3.6e6, "kWh");
        scaled(t, Dimension.FREQUENCY, 1, "Hz", "c/s");
        plain(t, Dimension.ROTATIONAL_SPEED, 1, "1/s", "r/s", "rps");
        plain(t, Dimension.ROTATIONAL_SPEED, 1.0 / 60, "r/min", "rpm", "1/min", "/min", "min-1", "rev/min");
        scaled(t, Dimension.MAGNETIC_FLUX, 1, "Wb");
        plain(t, Dimension.MAGNETIC_FLUX, 1e-8, "line", "lines", "maxwell", "Mx");
        scaled(t, Dimension.FLUX_DENSITY, 1, "T", "tesla");
        plain(t, Dimension.FLUX_DENSITY, 1e-4, "G", "gauss");
        plain(t, Dimension.FLUX_DENSITY, 1e-8 / (INCH * INCH), "line/in²", "line/in2", "lines/in2");
        plain(t, Dimension.FLUX_DENSITY, 1e-5 / (INCH * INCH), "kline/in²", "kline/in2", "klines/in2", "kl/in2");
        plain(t, Dimension.FIELD_STRENGTH, 1, "A/m");
        plain(t, Dimension.FIELD_STRENGTH, 1000, "kA/m");
        plain(t, Dimension.FIELD_STRENGTH, 100, "A/cm");
        scaled(t, Dimension.MAGNETOMOTIVE_FORCE, 1, "A", "At");
        plain(t, Dimension.CURRENT_DENSITY, 1, "A/m²", "A/m2");
        plain(t, Dimension.CURRENT_DENSITY, 1e6, "A/mm²", "A/mm2");
        scaled(t, Dimension.DURATION, 1, "s", "sec", "second", "seconds");
        plain(t, Dimension.DURATION, 60, "min", "minute", "minutes");
        plain(t, Dimension.DURATION, 3600, "h", "hour", "hours");
        plain(t, Dimension.DURATION, 86_400, "d", "day", "days");
        plain(t, Dimension.DURATION, 31_557_600, "a", "y", "yr", "year", "years");
        plain(t, Dimension.VELOCITY, 1, "m/s");
        plain(t, Dimension.VELOCITY, 1e-3, "mm/s");
        plain(t, Dimension.VELOCITY, INCH, "in/s");
        plain(t, Dimension.ACCELERATION, 1, "m/s²", "m/s2");
        plain(t, Dimension.ACCELERATION, GRAVITY, "g");
        plain(t, Dimension.TORQUE, 1, "N·m", "Nm", "N.m", "N m");
        plain(t, Dimension.TORQUE, POUND * GRAVITY * INCH, "lbf·in", "lbf.in", "lbf in", "lb.in", "in.lb", "in-lb");
        plain(t, Dimension.TORQUE, POUND * GRAVITY * INCH * 12, "lbf·ft", "lbf.ft", "lbf ft", "lb.ft", "ft-lb");
        plain(t, Dimension.TORQUE, GRAVITY, "kgf·m", "kgf.m", "kgf m");
        plain(t, Dimension.RESIDUAL_UNBALANCE, 1, "kg·m", "kg.m");
        plain(t, Dimension.RESIDUAL_UNBALANCE, 1e-6, "g·mm", "g.mm", "gmm");
        plain(t, Dimension.RESIDUAL_UNBALANCE, POUND / 16 * INCH, "oz·in", "oz.in", "oz-in");
        plain(t, Dimension.RESISTIVITY, 1, "Ω·m", "ohm.m", "ohm·m");
        plain(t, Dimension.RESISTIVITY, 1e-6, "Ω·mm²/m", "ohm.mm2/m");
        plain(t, Dimension.RESISTIVITY, Math.PI / 4 * INCH * INCH * 1e-6 / (12 * INCH), "Ω·cmil/ft", "ohm.cmil/ft");
        plain(t, Dimension.CONDUCTIVITY, 1, "S/m");
        plain(t, Dimension.CONDUCTIVITY, 1e6, "MS/m", "m/(ohm.mm2)");
        plain(t, Dimension.MASS_RESISTIVITY, 1, "Ω·kg/m²", "ohm.kg/m2");
        plain(t, Dimension.MASS_RESISTIVITY, 1e-3, "Ω·g/m²", "ohm.g/m2");
        plain(t, Dimension.RESISTANCE_PER_LENGTH, 1, "Ω/m", "ohm/m");
        plain(t, Dimension.RESISTANCE_PER_LENGTH, 1e-3, "Ω/km", "ohm/km");
        plain(t, Dimension.RESISTANCE_PER_LENGTH, 1 / (12000 * INCH), "Ω/1000ft", "ohm/1000ft", "ohm/kft");
        plain(t, Dimension.MASS_PER_LENGTH, 1, "kg/m");
        plain(t, Dimension.MASS_PER_LENGTH, 1e-3, "kg/km", "g/m");
        plain(t, Dimension.MASS_PER_LENGTH, POUND / (12000 * INCH), "lb/1000ft", "lb/kft");
        plain(t, Dimension.DENSITY, 1, "kg/m³", "kg/m3");
        plain(t, Dimension.DENSITY, 1000, "g/cm³", "g/cm3", "kg/dm3");
        plain(t, Dimension.SPECIFIC_LOSS, 1, "W/kg");
        plain(t, Dimension.SPECIFIC_LOSS, 1 / POUND, "W/lb");
        scaled(t, Dimension.CAPACITANCE, 1, "F");
        scaled(t, Dimension.INDUCTANCE, 1, "H");
        plain(t, Dimension.ANGLE, 1, "rad");
        plain(t, Dimension.ANGLE, Math.PI / 180, "°", "deg");
        plain(t, Dimension.FREQUENCY_PER_POWER, 1, "Hz/W");
        plain(t, Dimension.FREQUENCY_PER_POWER, 1e-3, "Hz/kW");
        plain(t, Dimension.RATIO, 1, "", "pu");
        plain(t, Dimension.RATIO, 0.01, "%", "percent", "pct");
        plain(t, Dimension.MONEY, 1, "");
        return t;
    }

    private static void plain(Map<Dimension, List<Entry>> t, Dimension d, double factor, String symbol,
            String... names) {
        t.get(d).add(entry(new Unit(symbol, d, factor, 0), false, symbol, names));
    }

    private static void scaled(Map<Dimension, List<Entry>> t, Dimension d, double factor, String symbol,
            String... names) {
        t.get(d).add(entry(new Unit(symbol, d, factor, 0), true, symbol, names));
    }

    private static Entry entry(Unit unit, boolean prefixed, String symbol, String... names) {
        List<String> all = new ArrayList<>();
        all.add(symbol);
        all.addAll(List.of(names));
        return new Entry(unit, List.copyOf(all), prefixed);
    }
}
