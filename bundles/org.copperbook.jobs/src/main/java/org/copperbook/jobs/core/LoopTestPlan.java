package org.copperbook.jobs.core;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.core.EmfConstant;
import org.copperbook.calc.core.LoopCore;
import org.copperbook.calc.core.LoopPlan;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.winding.WindingData;

/**
 * The loop test worked out before it is made. Dimensions come of the core record where they are stated there, else of
 * the winding record of the same core; what nobody stated is missing, never assumed.
 *
 * @param core     the back iron; empty while dimensions are missing or cannot be
 * @param massKg   mass of the back iron without teeth, kg; empty without core or density
 * @param plan     turns, current, supply and cable; empty while anything is missing
 * @param missing  what is missing for the core, and then for the plan
 * @param refused  why a figure cannot be used, in words; empty when none is refused
 */
public record LoopTestPlan(Optional<LoopCore> core, Optional<Double> massKg, Optional<LoopPlan> plan,
        List<Missing> missing, String refused) {

    /** What a plan needs. */
    public enum Missing { OUTSIDE, YOKE_DEPTH, LENGTH, STACKING, DENSITY, FLUX, FREQUENCY, SUPPLY, FIELD_STRENGTH, CABLE }

    private static final double SQUARE_MM = 1e6;

    /** The plan of a job's core test; everything is missing while no core part is begun. */
    public static LoopTestPlan of(Job job) {
        CoreTest test = job.part(PartKind.CORE, CoreTest.class).orElse(null);
        Optional<WindingData> winding = test == null || test.winding() == null ? Optional.empty()
                : job.windingAsFound(test.winding()).or(() -> job.windingAsWound(test.winding()));
        return of(Optional.ofNullable(test).map(CoreTest::setUp), winding);
    }

    /** The plan from the set-up and the winding record of the same core. */
    public static LoopTestPlan of(Optional<CoreTest.LoopSetUp> setUp, Optional<WindingData> winding) {
        Figures f = new Figures(setUp, winding);
        List<Missing> missing = new ArrayList<>();
        Optional<LoopCore> core = Optional.empty();
        Optional<Double> mass = Optional.empty();
        Optional<LoopPlan> plan = Optional.empty();
        String refused = "";
        try {
            core = core(f, missing);
            Optional<Double> density = f.stated(CoreTest.LoopSetUp::ironKgPerM3, Missing.DENSITY, missing);
            mass = core.flatMap(c -> density.map(c::mass));
            plan = plan(f, core, missing);
        } catch (OutOfRange e) {
            refused = e.getMessage();
        }
        return new LoopTestPlan(core, mass, plan, List.copyOf(missing), refused);
    }

    private static Optional<LoopCore> core(Figures f, List<Missing> missing) {
        Optional<Double> outside = f.of(CoreTest.LoopSetUp::outsideM, WindingData::outsideM, Missing.OUTSIDE, missing);
        Optional<Double> yoke = f.yoke(outside);
        if (yoke.isEmpty()) {
            missing.add(Missing.YOKE_DEPTH);
        }
        Optional<Double> length = f.of(CoreTest.LoopSetUp::lengthM, WindingData::coreLengthM, Missing.LENGTH, missing);
        Optional<Double> stacking = f.stated(CoreTest.LoopSetUp::stacking, Missing.STACKING, missing);
        if (outside.isEmpty() || yoke.isEmpty() || length.isEmpty() || stacking.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LoopCore(outside.get(), yoke.get(), length.get() - f.vents(), stacking.get()));
    }

    private static Optional<LoopPlan> plan(Figures f, Optional<LoopCore> core, List<Missing> missing) {
        Optional<Double> flux = f.stated(CoreTest.LoopSetUp::targetT, Missing.FLUX, missing);
        Optional<Double> hertz = f.stated(CoreTest.LoopSetUp::frequencyHz, Missing.FREQUENCY, missing);
        Optional<Double> supply = f.stated(CoreTest.LoopSetUp::supplyV, Missing.SUPPLY, missing);
        Optional<Double> field = f.stated(CoreTest.LoopSetUp::fieldStrengthApm, Missing.FIELD_STRENGTH, missing);
        Optional<Double> cable = f.stated(CoreTest.LoopSetUp::cableAPerMm2, Missing.CABLE, missing);
        if (core.isEmpty() || flux.isEmpty() || hertz.isEmpty() || supply.isEmpty() || field.isEmpty()
                || cable.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(LoopPlan.of(core.get(), new LoopPlan.Target(flux.get(), hertz.get(), supply.get(),
                field.get(), cable.get() * SQUARE_MM), EmfConstant.EXACT));
    }

    /** Peak flux density of a run, T: as recorded, else of its volts per turn and the iron area. */
    public Optional<Double> fluxDensity(CoreTest.LoopRun run) {
        if (run.fluxDensityT() != null) {
            return Optional.of(run.fluxDensityT());
        }
        boolean known = core.isPresent() && positive(run.volts()) && run.turns() != null && run.turns() > 0
                && positive(run.frequencyHz());
        return known ? Optional.of(LoopPlan.density(run.volts() / run.turns(), run.frequencyHz(), core.get().area(),
                EmfConstant.EXACT)) : Optional.empty();
    }

    /** Mass behind a run's watts, kg: as recorded with the run, else of the dimensions. */
    public Optional<Double> massOf(CoreTest.LoopRun run) {
        return positive(run.yokeMassKg()) ? Optional.of(run.yokeMassKg()) : massKg;
    }

    /** Specific loss of a run, W/kg. */
    public Optional<Double> specificLoss(CoreTest.LoopRun run) {
        return positive(run.watts()) ? massOf(run).map(m -> run.watts() / m) : Optional.empty();
    }

    private static boolean positive(Double d) {
        return d != null && d > 0;
    }

    private record Figures(Optional<CoreTest.LoopSetUp> setUp, Optional<WindingData> winding) {

        Optional<Double> stated(Function<CoreTest.LoopSetUp, Double> figure, Missing what, List<Missing> missing) {
            Optional<Double> d = setUp.map(figure);
            if (d.isEmpty()) {
                missing.add(what);
            }
            return d;
        }

        Optional<Double> of(Function<CoreTest.LoopSetUp, Double> own, Function<WindingData, Double> wound, Missing what,
                List<Missing> missing) {
            Optional<Double> d = setUp.map(own).or(() -> winding.map(wound));
            if (d.isEmpty()) {
                missing.add(what);
            }
            return d;
        }

        /** The yoke as measured, else what bore and slots leave of the radius; figures of one source go together. */
        Optional<Double> yoke(Optional<Double> outside) {
            Optional<Double> bore = setUp.map(CoreTest.LoopSetUp::boreM);
            Optional<Double> slot = setUp.map(CoreTest.LoopSetUp::slotDepthM);
            Optional<Double> ofSetUp = setUp.map(CoreTest.LoopSetUp::yokeDepthM).or(() -> left(outside, bore, slot));
            return ofSetUp.or(() -> winding.map(WindingData::yokeDepthM)).or(() -> left(outside,
                    winding.map(WindingData::boreM), winding.map(WindingData::slotDepthM)));
        }

        private static Optional<Double> left(Optional<Double> outside, Optional<Double> bore, Optional<Double> slot) {
            return outside.flatMap(o -> bore.flatMap(b -> slot.map(s -> (o - b) / 2 - s)));
        }

        double vents() {
            Integer count = setUp.map(CoreTest.LoopSetUp::ventCount).or(() -> winding.map(WindingData::ventCount))
                    .orElse(0);
            Double width = setUp.map(CoreTest.LoopSetUp::ventWidthM).or(() -> winding.map(WindingData::ventWidthM))
                    .orElse(0.0);
            return count * width;
        }
    }
}
