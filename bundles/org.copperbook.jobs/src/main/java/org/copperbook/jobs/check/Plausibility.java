package org.copperbook.jobs.check;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.faults.FaultTables;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WireInHand;

/**
 * Finds figures that cannot be, whatever the machine: a negative resistance, a temperature below absolute zero, seven
 * poles. It judges nothing that could be a finding; that is the work of the checks. What a newer version added is
 * left alone.
 */
public final class Plausibility {

    /**
     * A figure that cannot be, or one that is missing where nothing can be computed without it.
     *
     * @param part    part it stands in
     * @param place   place in the part, e.g. "readings[2].observed.value"
     * @param problem what is wrong, e.g. "is -0.3, but a resistance is at least 0"
     * @param mend    what to do about it
     */
    public record Problem(PartKey part, String place, String problem, String mend) {

        /** Everything in one line, without the file. */
        @Override
        public String toString() {
            return part + " at " + place + ": " + problem + "; " + mend;
        }
    }

    private static final String CORRECT = "correct the figure or leave the field out";

    private final PartKey key;
    private final List<Problem> problems = new ArrayList<>();

    private Plausibility(PartKey key) {
        this.key = key;
    }

    /** Figures of a job that cannot be, in the order of its parts; empty when every figure is possible. */
    public static List<Problem> impossible(Job job) {
        List<Problem> all = new ArrayList<>();
        for (Map.Entry<PartKey, Part> e : job.parts().entrySet()) {
            all.addAll(impossible(e.getKey(), e.getValue()));
        }
        return all;
    }

    /** Figures of a part that cannot be. */
    public static List<Problem> impossible(PartKey key, Part part) {
        Plausibility p = new Plausibility(key);
        p.record("", part);
        if (part instanceof FaultTables t && t.isThere()) {
            t.problems().forEach(problem -> p.add("tables", problem.replaceFirst("\\.$", ""), "correct the table"));
        }
        return List.copyOf(p.problems);
    }

    /**
     * Resistance readings without a winding temperature. They are kept, for a reading is a finding; but nothing can
     * be compared with them.
     */
    public static List<Problem> missingTemperatures(Job job) {
        List<Problem> all = new ArrayList<>();
        for (Map.Entry<PartKey, Part> e : job.parts().entrySet()) {
            Plausibility p = new Plausibility(e.getKey());
            p.temperatures("", e.getValue());
            all.addAll(p.problems);
        }
        return all;
    }

    private void record(String place, Object holder) {
        if (holder instanceof Reading r) {
            reading(place, r);
        } else if (holder instanceof WindingData w) {
            winding(place, w);
        } else if (holder instanceof WireInHand w && w.bareMm() != null && w.coveredMm() != null
                && w.coveredMm() < w.bareMm()) {
            add(below(place, "coveredMm"), "is " + w.coveredMm() + " mm, less than the " + w.bareMm() + " mm bare",
                    "swap the two");
        }
        for (RecordComponent c : holder.getClass().getRecordComponents()) {
            value(below(place, c.getName()), c.getName(), component(holder, c));
        }
    }

    /** What a newer version added sits in a map, which is not looked into. */
    private void value(String place, String field, Object value) {
        if (value instanceof Observed o) {
            observed(place, o);
        } else if (value instanceof BigDecimal d && (Math.abs((long) d.scale()) > 20 || d.precision() > 20)) {
            // Adding 1e-999999999 to a price would need a thousand million digits.
            add(place, "has more digits than an amount of money has", CORRECT);
        } else if (value instanceof Number n) {
            number(place, field, n.doubleValue());
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                value(place + "[" + i + "]", field, list.get(i));
            }
        } else if (value instanceof Record r) {
            record(place, r);
        }
    }

    private void number(String place, String field, double value) {
        if (!Double.isFinite(value) || Math.abs(value) > Possible.ANYTHING) {
            add(place, "is " + value + ", which no workshop can have measured", CORRECT);
            return;
        }
        if (field.equals("poles")) {
            if (value < 2 || value % 2 != 0 || value > 1000) {
                add(place, "is " + (long) value + ", but poles come in pairs: 2, 4, 6 ...", CORRECT);
            }
            return;
        }
        Possible possible = Possible.ofField(field);
        if (possible != null && !possible.holds(value)) {
            add(place, possible.refusal(value), CORRECT);
        }
    }

    /** A voltage of a set of three is an effective value; a reading's own value is checked with its quantity. */
    private void observed(String place, Observed o) {
        if (o.value() == null) {
            return;
        }
        if (place.matches(".*[vV]olts\\.[abc]") && (o.value() < 0 || o.value() > 1e6)) {
            add(place + ".value", Possible.from(0, 1e6, "a voltage").refusal(o.value()), CORRECT);
        } else if (Math.abs(o.value()) > Possible.ANYTHING) {
            add(place + ".value", "is " + o.value() + ", which no meter shows", "record it as ABOVE_RANGE");
        }
    }

    private void reading(String place, Reading r) {
        if (r.observed() == null || r.observed().value() == null || r.quantity() == null) {
            return;
        }
        double v = r.observed().value();
        Possible possible = switch (r.quantity()) {
            case RESISTANCE, DIODE_OHMS -> Possible.from(0, 1e12, "a resistance");
            case INSULATION_RESISTANCE -> Possible.from(0, Possible.ANYTHING, "an insulation resistance");
            case VOLTAGE -> Possible.from(-1e6, 1e6, "a voltage");
            case DIODE_VOLTS -> Possible.from(-1000, 1000, "the drop of a diode");
        };
        if (!possible.holds(v) && Math.abs(v) <= Possible.ANYTHING) {
            add(below(place, "observed.value"), possible.refusal(v), v < 0
                    ? "correct the sign, or record it as NOT_POSSIBLE" : "record it as ABOVE_RANGE");
        }
    }

    private void winding(String place, WindingData w) {
        if (w.slots() == null) {
            return;
        }
        for (int g = 0; g < w.groups().size(); g++) {
            List<CapturedCoil> coils = w.groups().get(g).coils();
            for (int c = 0; c < coils.size(); c++) {
                String coil = below(place, "groups[" + g + "].coils[" + c + "]");
                slot(coil + ".goSlot", coils.get(c).goSlot(), w.slots());
                slot(coil + ".returnSlot", coils.get(c).returnSlot(), w.slots());
                if (coils.get(c).goSlot() != null && coils.get(c).goSlot().equals(coils.get(c).returnSlot())) {
                    add(coil, "goes and returns in the same slot " + coils.get(c).goSlot(), "correct one of the two slots");
                }
            }
        }
    }

    private void slot(String place, Integer slot, int slots) {
        if (slot != null && slot > slots) {
            add(place, "is slot " + slot + " of a core with " + slots + " slots", "correct the slot or the number of slots");
        }
    }

    private void temperatures(String place, Object holder) {
        if (holder instanceof Reading r && r.quantity() == ReadingQuantity.RESISTANCE && r.windingCelsius() == null
                && r.place() != null && r.place().winding() != null && r.observed() != null && r.observed().isValue()) {
            add(below(place, "windingCelsius"), "is missing, so the reading cannot be brought to another temperature",
                    "add the winding's temperature");
        }
        if (holder instanceof Record r) {
            for (RecordComponent c : r.getClass().getRecordComponents()) {
                temperatures(below(place, c.getName()), component(r, c));
            }
        } else if (holder instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                temperatures(place + "[" + i + "]", list.get(i));
            }
        }
    }

    private void add(String place, String problem, String mend) {
        problems.add(new Problem(key, place, problem, mend));
    }

    private static String below(String place, String name) {
        return place.isEmpty() ? name : place + "." + name;
    }

    private static Object component(Object holder, RecordComponent c) {
        try {
            return c.getAccessor().invoke(holder);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the field " + c.getName() + " of a record cannot be read", e);
        }
    }
}
