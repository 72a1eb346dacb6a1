package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.Conductor;
import org.copperbook.calc.resistance.TemperatureCorrection;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Rated field volts over rated field amps against the field as measured. At rated excitation a field is warmer than cold and
 * no hotter than its thermal class, so their quotient lies between the resistance at 20 degrees Celsius and that at the class
 * temperature (IEC 60085). A contradiction is shown as a doubt: plate or reading may be wrong, and neither is refused.
 */
final class FieldPlateCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.NAMEPLATE);
    private static final double COLD = 20;
    /** Class temperatures of IEC 60085, degrees Celsius. */
    private static final Map<String, Integer> CLASSES = Map.of("A", 105, "E", 120, "B", 130, "F", 155, "H", 180);
    private static final int HIGHEST_CLASS = 180;

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.nameplate().ifPresent(p -> {
            judge(WindingRole.EXCITER_STATOR, p.excitationV(), p.excitationA(), "/excitationV", job, shop).ifPresent(out::add);
            judge(WindingRole.MAIN_ROTOR, p.mainFieldV(), p.mainFieldA(), "/mainFieldV", job, shop).ifPresent(out::add);
        });
        return out;
    }

    private static Optional<Verdict> judge(WindingRole role, Double volts, Double amps, String path, Job job, Shop shop) {
        if (volts == null || amps == null || !(volts > 0) || !(amps > 0)) {
            return Optional.empty();
        }
        Machine machine = new Machine(job, shop);
        LimitBook limits = new LimitBook(job, shop);
        Optional<OhmReading> read = field(role, job, machine, limits, shop);
        if (read.isEmpty()) {
            return Optional.empty();
        }
        double plate = volts / amps;
        LimitBook.Applied limit = limits.find("plate.field-share");
        VerdictDraft d = VerdictDraft.of("plate.field." + role.word(), PART, Phrases.say("title.plate-field",
                Phrases.word("role", role))).path(path).takenAt(read.get().logged().reading().at());
        if (limit.upper().isEmpty()) {
            return Optional.of(d.limit(limit).value(plate, null, "ohm").outcome(Outcome.NO_LIMIT_SET)
                    .reason(Phrases.say("limit.missing", limit.id())).done());
        }
        return Optional.of(against(d, read.get(), plate, role, limit, machine));
    }

    private static Verdict against(VerdictDraft d, OhmReading read, double plate, WindingRole role, LimitBook.Applied limit,
            Machine machine) {
        Conductor copper = machine.conductor();
        Optional<String> named = machine.thermalClass(role, false).map(FieldPlateCheck::letter).filter(CLASSES::containsKey);
        int hottest = named.map(CLASSES::get).orElse(HIGHEST_CLASS);
        Uncertain cold = TemperatureCorrection.correct(read.meter().value(), read.celsius(), COLD, copper);
        double share = limit.upper().orElseThrow();
        double least = cold.value() * (1 - share);
        double most = cold.value() * TemperatureCorrection.factor(copper, COLD, hottest) * (1 + share);
        Ruling ruling = Ruling.on(new Uncertain(plate, plate * cold.relative()), Bounds.between(least, most),
                List.of(read.meter()));
        String shown = Figures.show(plate, "ohm");
        String measured = Figures.show(cold.value(), 2 * cold.u(), "ohm");
        double implied = plate / cold.value() * (copper.inferredZero() + COLD) - copper.inferredZero();
        boolean contradicts = ruling.plain() == Outcome.FAILS;
        String key = contradicts ? plate < least ? "plate-field.too-low" : "plate-field.too-high"
                : ruling.plain() == Outcome.MEETS ? "plate-field.plausible" : "plate-field.doubtful";
        return d.limit(limit, Bounds.between(least, most)).value(plate, 2 * plate * cold.relative(), "ohm")
                .limitText(Figures.bounds(Bounds.between(least, most), "ohm"))
                .outcome(contradicts ? Outcome.DOUBTFUL : ruling.outcome())
                .reason(Phrases.say(key, shown, measured, Figures.show(Math.rint(implied), "degC"),
                        Figures.show(hottest, "degC")))
                .addReason(named.isEmpty() ? Phrases.say("plate-field.no-class") : "").addReason(ruling.objection())
                .settle(contradicts ? Phrases.say("settle.plate-field") : ruling.settle(Phrases.say("settle.bridge"))).done();
    }

    private static String letter(String thermalClass) {
        return thermalClass.replaceAll("[^A-Z]", "");
    }

    /** The field as a whole as found, else as left, with a value and a temperature. */
    private static Optional<OhmReading> field(WindingRole role, Job job, Machine machine, LimitBook limits, Shop shop) {
        for (Reading.State state : List.of(Reading.State.AS_FOUND, Reading.State.AS_LEFT)) {
            try {
                Optional<OhmReading> whole = ResistanceSet.of(role, state, new ReadingLog(job), machine, limits, shop)
                        .sections().values().stream().filter(r -> r.usable() && r.meter().value().value() > 0).findFirst();
                if (whole.isPresent()) {
                    return whole;
                }
            } catch (OutOfRange e) {
                // The resistance check says which reading is out of range; there is nothing to compare the plate with.
                continue;
            }
        }
        return Optional.empty();
    }
}
