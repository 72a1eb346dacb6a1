package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/**
 * The resistance of one phase or coil group as found beside the newest since, both at the reference temperature of the
 * workshop.
 *
 * @param label   as people call it ("phase U", "coil group 3")
 * @param group   whether it is a coil group or pole, and not a phase or a line
 * @param found   as found, or null when it was not read
 * @param left    in process or as left, whichever came last, or null when it was not read
 * @param state   state of {@code left}; null with it
 * @param verdict what the check of one against the other says; null while one is missing
 */
public record FoundAndLeft(String label, boolean group, At found, At left, Reading.State state, Verdict verdict) {

    /**
     * A resistance at the reference temperature.
     *
     * @param ohms      ohm
     * @param expandedU expanded uncertainty (k = 2), ohm; null when that of the meter is not known
     */
    public record At(double ohms, Double expandedU) {
    }

    /** The band in which the resistance as left may lie, ohm; null while nothing limits it. */
    public Bounds band() {
        if (found == null || verdict == null || verdict.bounds() == null || verdict.bounds().isEmpty()) {
            return null;
        }
        Bounds share = verdict.bounds();
        return new Bounds(share.lower() == null ? null : found.ohms() * (1 + share.lower()),
                share.upper() == null ? null : found.ohms() * (1 + share.upper()));
    }

    /**
     * The comparison of one winding, phases first; empty when nothing of it has been read.
     *
     * @throws org.copperbook.calc.OutOfRange when a reading cannot be brought to the reference temperature
     */
    public static List<FoundAndLeft> of(Job job, Shop shop, WindingRole role) {
        Map<String, PhaseOhms> found = read(job, shop, role, Reading.State.AS_FOUND);
        Map<String, PhaseOhms> process = read(job, shop, role, Reading.State.IN_PROCESS);
        Map<String, PhaseOhms> left = read(job, shop, role, Reading.State.AS_LEFT);
        Map<String, Reading.State> keys = new LinkedHashMap<>();
        found.keySet().forEach(k -> keys.put(k, null));
        process.keySet().forEach(k -> keys.put(k, Reading.State.IN_PROCESS));
        left.keySet().forEach(k -> keys.put(k, Reading.State.AS_LEFT));
        List<Verdict> verdicts = new LeftAgainstFoundCheck().judge(job, shop);
        List<FoundAndLeft> out = new ArrayList<>();
        for (boolean groups : new boolean[] {false, true}) {
            keys.forEach((key, state) -> {
                PhaseOhms is = state == Reading.State.AS_LEFT ? left.get(key) : process.get(key);
                PhaseOhms was = found.get(key);
                PhaseOhms any = was == null ? is : was;
                if ((any.like() == Like.GROUP) == groups) {
                    String id = state == null ? "" : role.word() + ".deviation." + Points.word(state) + "." + key;
                    Verdict v = verdicts.stream().filter(x -> x.id().equals(id)).findFirst().orElse(null);
                    out.add(new FoundAndLeft(any.label(), groups, at(was), at(is), state, v));
                }
            });
        }
        return List.copyOf(out);
    }

    private static At at(PhaseOhms p) {
        return p == null ? null : new At(p.atReference().value(),
                MeterUse.allKnown(p.meters()) ? 2 * p.atReference().u() : null);
    }

    private static Map<String, PhaseOhms> read(Job job, Shop shop, WindingRole role, Reading.State state) {
        Machine machine = new Machine(job, shop);
        ResistanceSet set = ResistanceSet.of(role, state, new ReadingLog(job), machine, new LimitBook(job, shop), shop);
        Map<String, PhaseOhms> map = new LinkedHashMap<>();
        WindingOhms ohms = WindingOhms.of(set, machine);
        (ohms.phases().isEmpty() ? ohms.lines() : ohms.phases()).forEach(p -> map.put(p.key(), p));
        WindingOhms.groups(set, machine).forEach(p -> map.put(p.key(), p));
        return map;
    }
}
