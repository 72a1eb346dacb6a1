package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.insulation.DryingCurve;
import org.copperbook.calc.insulation.InsulationSystem;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.impregnation.Impregnation.DryingPoint;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Where a drying curve stands, from the points that are whole: time, winding temperature and insulation resistance.
 *
 * @param stage         how far it has come
 * @param points        the points at 40 degrees Celsius
 * @param changePerHour relative change per hour over the window, a fraction; empty while the window is not filled
 * @param windowHours   how long it must stay level, h
 * @param refused       why a figure cannot be used, in words; empty when none is refused
 */
public record DryingState(Stage stage, List<Point> points, Optional<Double> changePerHour, double windowHours,
        String refused) {

    /** How far a drying curve has come; DEPENDS when the two kinds of insulation would read it differently. */
    public enum Stage { TOO_FEW, FALLING, RISING, LEVELLED, DEPENDS }

    /**
     * One point of the curve.
     *
     * @param hours   since the start
     * @param ohms    as read, ohm
     * @param at40    brought to 40 degrees Celsius, ohm; by the class of the winding, else by the halving rule
     * @param celsius winding temperature
     */
    public record Point(double hours, double ohms, double at40, double celsius) {
    }

    private static final int FEWEST = 3;
    private static final double MINUTES = 60;

    /** The state of a job's drying curve; empty when none is recorded. */
    public static Optional<DryingState> of(Job job, Shop shop) {
        return job.part(PartKind.IMPREGNATION, Impregnation.class).filter(i -> !i.drying().isEmpty())
                .map(i -> of(i, job, new Machine(job, shop), new LimitBook(job, shop)));
    }

    private static DryingState of(Impregnation i, Job job, Machine machine, LimitBook limits) {
        DryingCurve.Criterion usual = DryingCurve.Criterion.DEFAULT;
        DryingCurve.Criterion by = new DryingCurve.Criterion(limits.find("drying.rise").lower()
                .orElse(usual.riseFraction()), limits.find("drying.window").lower().orElse(usual.windowHours()),
                limits.find("drying.change").upper().orElse(usual.changePerHour()));
        List<DryingCurve.Reading> readings = new ArrayList<>();
        for (DryingPoint p : i.drying()) {
            if (p.minutes() != null && p.windingCelsius() != null && p.insulationOhm() != null) {
                readings.add(new DryingCurve.Reading(p.minutes() / MINUTES, p.insulationOhm(), p.windingCelsius()));
            }
        }
        if (readings.size() < FEWEST) {
            return new DryingState(Stage.TOO_FEW, List.of(), Optional.empty(), by.windowHours(), "");
        }
        try {
            WindingRole role = i.dryingOf() == null ? machine.mainWinding() : i.dryingOf();
            List<InsulationSystem> systems = InsulationAt40.systems(machine.thermalClass(role,
                    job.windingAsWound(role).isPresent()));
            List<DryingCurve> curves = systems.stream().map(s -> DryingCurve.of(readings, s, by)).toList();
            return of(readings, curves, by.windowHours());
        } catch (OutOfRange e) {
            return new DryingState(Stage.TOO_FEW, List.of(), Optional.empty(), by.windowHours(), e.getMessage());
        }
    }

    private static DryingState of(List<DryingCurve.Reading> readings, List<DryingCurve> curves, double window) {
        DryingCurve shown = curves.get(0);
        List<Point> points = new ArrayList<>();
        for (int k = 0; k < readings.size(); k++) {
            points.add(new Point(readings.get(k).hours(), readings.get(k).ohms(), shown.at40().get(k),
                    readings.get(k).celsius()));
        }
        boolean agree = curves.stream().map(DryingState::stage).distinct().count() == 1;
        Optional<Double> change = Double.isNaN(shown.lastChangePerHour()) ? Optional.empty()
                : Optional.of(shown.lastChangePerHour());
        return new DryingState(agree ? stage(shown) : Stage.DEPENDS, List.copyOf(points), change, window, "");
    }

    private static Stage stage(DryingCurve c) {
        return c.levelled() ? Stage.LEVELLED : c.turned() ? Stage.RISING : Stage.FALLING;
    }

    /** The lowest value at 40 degrees Celsius, ohm; empty without points. */
    public Optional<Double> lowest() {
        return points.stream().map(Point::at40).min(Double::compare);
    }

    /** The last value at 40 degrees Celsius, ohm; empty without points. */
    public Optional<Double> last() {
        return points.isEmpty() ? Optional.empty() : Optional.of(points.get(points.size() - 1).at40());
    }
}
