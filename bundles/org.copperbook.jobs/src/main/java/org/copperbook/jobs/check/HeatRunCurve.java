package org.copperbook.jobs.check;

import java.util.List;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.CoolingCurve;
import org.copperbook.calc.resistance.CoolingDelay;
import org.copperbook.calc.resistance.TemperatureByResistance;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.runup.HeatRun;
import org.copperbook.jobs.shop.Shop;

/**
 * A heat run brought to the moment of shutdown and to the time limit of IEC 60034-1, 8.6.2.3.3.
 *
 * @param atShutdown   winding temperature at shutdown by the fitted curve, degrees Celsius
 * @param atLimit      at the time limit for the rating, degrees Celsius; null when no rating says the limit
 * @param firstRead    by the first reading as it stands, degrees Celsius
 * @param firstSeconds when that was taken, s after shutdown
 * @param used         the temperature that decides, and why
 * @param rise         its rise over the coolant, K
 * @param uRise        standard uncertainty of the rise by the scatter of the fit, K; 0 for a reading as it stands
 * @param timeConstant time constant of the curve, s; null when none could be fitted
 * @param curve        fitted curve, {seconds, degrees Celsius}; empty when none could be fitted
 */
public record HeatRunCurve(Double atShutdown, Double atLimit, double firstRead, double firstSeconds, Used used, double rise,
        double uRise, Double timeConstant, List<double[]> curve) {

    /** Which temperature decides. */
    public enum Used {
        /** The first reading came in time and stands as read. */
        AS_READ,
        /** The first reading was late: the curve at the time limit. */
        AT_LIMIT,
        /** Later than twice the limit: the curve at the limit, by agreement only. */
        BY_AGREEMENT,
        /** No rating says the limit: the curve at shutdown. */
        AT_SHUTDOWN
    }

    public HeatRunCurve {
        curve = List.copyOf(curve);
    }

    /**
     * Computes a heat run; empty while readings are missing.
     *
     * @throws OutOfRange when the readings cannot be those of a cooling winding
     */
    public static Optional<HeatRunCurve> of(HeatRun run, Job job, Shop shop) {
        List<HeatRun.Cooling> read = run.cooling().stream().filter(c -> c.seconds() != null && c.ohm() != null)
                .sorted(java.util.Comparator.comparingDouble(HeatRun.Cooling::seconds)).toList();
        if (read.isEmpty() || run.coldOhm() == null || run.coldCelsius() == null || run.coolantCelsius() == null) {
            return Optional.empty();
        }
        Machine machine = new Machine(job, shop);
        double k = machine.conductor().inferredZero();
        double end = run.coldOhm() * (k + run.coolantCelsius()) / (k + run.coldCelsius());
        double first = celsius(run, read.get(0).ohm(), k);
        Optional<CoolingDelay> delay = machine.ratedPower().flatMap(p -> RunUpCurves.attempt(() -> CoolingDelay.forRating(p)));
        if (read.size() < 3) {
            boolean inTime = delay.map(d -> d.use(read.get(0).seconds()) == CoolingDelay.Use.AS_READ).orElse(false);
            return !inTime ? Optional.empty() : Optional.of(new HeatRunCurve(null, null, first, read.get(0).seconds(),
                    Used.AS_READ, first - run.coolantCelsius(), 0, null, List.of()));
        }
        CoolingCurve fit = CoolingCurve.fit(read.stream().mapToDouble(HeatRun.Cooling::seconds).toArray(),
                read.stream().mapToDouble(HeatRun.Cooling::ohm).toArray(), end);
        double shutdown = celsius(run, fit.ohmsAt(0).value(), k);
        Double limit = delay.map(d -> celsius(run, fit.ohmsAt(d.limitSeconds()).value(), k)).orElse(null);
        Used used = delay.map(d -> switch (d.use(read.get(0).seconds())) {
            case AS_READ -> Used.AS_READ;
            case EXTRAPOLATE_TO_LIMIT -> Used.AT_LIMIT;
            case BY_AGREEMENT -> Used.BY_AGREEMENT;
        }).orElse(Used.AT_SHUTDOWN);
        double decides = used == Used.AS_READ ? first : used == Used.AT_SHUTDOWN ? shutdown : limit;
        double at = used == Used.AT_SHUTDOWN ? 0 : delay.map(CoolingDelay::limitSeconds).orElse(0.0);
        double u = used == Used.AS_READ ? 0 : fit.ohmsAt(at).u() * (k + run.coldCelsius()) / run.coldOhm();
        double last = read.get(read.size() - 1).seconds();
        List<double[]> curve = new java.util.ArrayList<>();
        for (int i = 0; i <= 60; i++) {
            double s = last * i / 60;
            curve.add(new double[] {s, celsius(run, fit.ohmsAt(s).value(), k)});
        }
        return Optional.of(new HeatRunCurve(shutdown, limit, first, read.get(0).seconds(), used,
                decides - run.coolantCelsius(), u, fit.timeConstant(), curve));
    }

    /** Temperature behind a resistance of the run, degrees Celsius. */
    public static double celsius(HeatRun run, double ohm, double inferredZero) {
        return TemperatureByResistance.celsius(run.coldOhm(), run.coldCelsius(), ohm, inferredZero);
    }

    /** The readings as temperatures: {seconds, degrees Celsius}; empty while the cold reading is missing. */
    public static List<double[]> readings(HeatRun run, Job job, Shop shop) {
        if (run.coldOhm() == null || run.coldCelsius() == null) {
            return List.of();
        }
        double k = new Machine(job, shop).conductor().inferredZero();
        return run.cooling().stream().filter(c -> c.seconds() != null && c.ohm() != null && c.ohm() > 0)
                .flatMap(c -> RunUpCurves.attempt(() -> new double[] {c.seconds(), celsius(run, c.ohm(), k)}).stream())
                .toList();
    }
}
