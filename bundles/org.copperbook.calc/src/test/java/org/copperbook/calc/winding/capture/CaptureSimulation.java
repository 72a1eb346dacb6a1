package org.copperbook.calc.winding.capture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Predicate;
import org.copperbook.calc.winding.CircuitPlan;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;
import org.copperbook.calc.wire.WireSize;
import org.copperbook.calc.wire.WireSizes;
import org.copperbook.calc.wire.WireSystem;

/** Plants one slip into each of many captures and counts how the check ranks it. */
final class CaptureSimulation {
    /** What is planted. */
    enum Planted {
        TURN_MORE, TURN_FEWER, EVERY_COIL, SHORTED_TURN, STRANDS, CIRCUITS, GAUGE, HOT
    }

    /** Counts of one kind of slip. */
    static final class Tally {
        int captures;
        int questioned;
        int first;
        int firstThree;
        int large;
        int largeQuestioned;
        int largeFirst;
        int largeFirstThree;

        void add(int rank, boolean alarm, boolean isLarge) {
            captures++;
            questioned += alarm ? 1 : 0;
            first += rank == 1 ? 1 : 0;
            firstThree += rank >= 1 && rank <= 3 ? 1 : 0;
            if (isLarge) {
                large++;
                largeQuestioned += alarm ? 1 : 0;
                largeFirst += rank == 1 ? 1 : 0;
                largeFirstThree += rank >= 1 && rank <= 3 ? 1 : 0;
            }
        }

        void add(Tally other) {
            captures += other.captures;
            questioned += other.questioned;
            first += other.first;
            firstThree += other.firstThree;
            large += other.large;
            largeQuestioned += other.largeQuestioned;
            largeFirst += other.largeFirst;
            largeFirstThree += other.largeFirstThree;
        }
    }

    private static final int[][] CORES = {{24, 4, 5}, {36, 4, 7}, {36, 4, 8}, {48, 4, 10}, {48, 4, 11}, {54, 6, 8},
            {72, 8, 8},
        {72, 4, 15}, {36, 6, 5}, {30, 4, 6}, {54, 8, 6}, {24, 2, 10}, {60, 4, 12}};

    final Map<Planted, Tally> tallies = new EnumMap<>(Planted.class);
    int cleanCaptures;
    int falseAlarms;
    private final Random random;

    private final Predicate<CaptureReading> taken;

    /** A simulation in which only some readings are taken. */
    CaptureSimulation(long seed, Predicate<CaptureReading> taken) {
        random = new Random(seed);
        this.taken = taken;
        for (Planted planted : Planted.values()) {
            tallies.put(planted, new Tally());
        }
    }

    void runClean() {
        CapturedWinding captured = draw();
        CaptureReport report = CaptureCheck.check(captured, taken(new BenchWinding(captured, random)),
                CaptureUncertainty.usual());
        cleanCaptures++;
        falseAlarms += report.questioned() ? 1 : 0;
    }

    private List<CaptureReading> taken(BenchWinding bench) {
        return bench.read().stream().filter(taken).toList();
    }

    void runPlanted() {
        Planted planted = Planted.values()[random.nextInt(Planted.values().length)];
        CapturedWinding captured = draw();
        BenchWinding bench = new BenchWinding(captured, random);
        double effect = plant(planted, captured, bench);
        if (Double.isNaN(effect)) {
            return;
        }
        CaptureReport report = CaptureCheck.check(captured, taken(bench), CaptureUncertainty.usual());
        int rank = 0;
        for (int i = 0; i < report.explanations().size() && rank == 0; i++) {
            if (report.explanations().get(i).slips().stream()
                    .anyMatch(slip -> isTrue(slip, planted, captured, bench))) {
                rank = i + 1;
            }
        }
        tallies.get(planted).add(rank, report.questioned(), effect > 2 * expanded());
    }

    /**
     * Expanded uncertainty of one comparison with everything in it, from the limits of the uniform errors on the bench.
     */
    private static double expanded() {
        double variance = square(BenchWinding.MEAN_TURN_LIMIT) / 3 + square(BenchWinding.AREA_LIMIT) / 3
                + square(BenchWinding.KELVIN_LIMIT / 260) / 3 + square(BenchWinding.GAIN_LIMIT) / 3 + square(0.005)
                + square(0.002);
        return 2 * Math.sqrt(variance);
    }

    private static double square(double value) {
        return value * value;
    }

    private CapturedWinding draw() {
        int[] core = CORES[random.nextInt(CORES.length)];
        int turns = (int) Math.round(Math.exp(Math.log(3) + random.nextDouble() * Math.log(13)));
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(core[0], core[1], 3, core[2], turns));
        List<Integer> possible = CircuitPlan.possible(winding, 1);
        CircuitPlan plan = CircuitPlan.equal(winding, possible.get(random.nextInt(possible.size())));
        ConductorBundle bundle = ConductorBundle.copper(1 + random.nextInt(10), wire());
        return new CapturedWinding(winding, plan, bundle, 0.35 + 1.05 * random.nextDouble(),
                15 + 20 * random.nextDouble());
    }

    private WireSize wire() {
        WireSystem system = WireSystem.values()[random.nextInt(3)];
        List<WireSize> sizes = WireSizes.of(system).stream()
                .filter(s -> s.bareDiameter() >= 0.5e-3 && s.bareDiameter() <= 1.7e-3).toList();
        return sizes.get(random.nextInt(sizes.size()));
    }

    /**
     * Plants a slip and returns the relative change of the reading it moves most; not a number when it cannot be
     * planted here.
     */
    private double plant(Planted planted, CapturedWinding captured, BenchWinding bench) {
        List<Coil> coils = captured.winding().coils();
        switch (planted) {
            case TURN_MORE, TURN_FEWER, SHORTED_TURN -> {
                bench.coilOfSlip = random.nextInt(coils.size());
                bench.turnsChange = planted == Planted.TURN_MORE ? 1 : planted == Planted.TURN_FEWER ? -1 : 0;
                bench.shorted = planted == Planted.SHORTED_TURN;
                int group = coils.get(bench.coilOfSlip).group();
                return 1 / coils.stream().filter(c -> c.group() == group).mapToDouble(Coil::turns).sum();
            }
            case EVERY_COIL -> {
                bench.everyCoil = random.nextBoolean() ? 1 : -1;
                return 1 / coils.get(0).turns();
            }
            case STRANDS -> {
                int change = bench.strands == 1 || random.nextBoolean() ? 1 : -1;
                int before = bench.strands;
                bench.strands += change;
                return Math.abs((double) before / bench.strands - 1);
            }
            case CIRCUITS -> {
                List<Integer> others = new ArrayList<>(CircuitPlan.possible(captured.winding(), 1));
                others.remove(Integer.valueOf(bench.circuits));
                if (others.isEmpty()) {
                    return Double.NaN;
                }
                int before = bench.circuits;
                bench.circuits = others.get(random.nextInt(others.size()));
                return Math.abs(square((double) before / bench.circuits) - 1);
            }
            case GAUGE -> {
                double before = bench.size.bareDiameter();
                bench.size = WireSizes.neighbour(bench.size, random.nextBoolean() ? 1 : -1);
                return Math.abs(square(before / bench.size.bareDiameter()) - 1);
            }
            default -> {
                bench.kelvin = 15 + 45 * random.nextDouble();
                return bench.kelvin / (235 + captured.celsius());
            }
        }
    }

    private static boolean isTrue(Slip slip, Planted planted, CapturedWinding captured, BenchWinding bench) {
        int group = bench.coilOfSlip < 0 ? 0 : captured.winding().coils().get(bench.coilOfSlip).group();
        return switch (planted) {
            case TURN_MORE -> slip.equals(new Slip.Turn(group, 1));
            case TURN_FEWER -> slip.equals(new Slip.Turn(group, -1));
            case EVERY_COIL -> slip.equals(new Slip.TurnInEveryCoil(bench.everyCoil));
            case SHORTED_TURN -> slip.equals(new Slip.ShortedTurn(group));
            case STRANDS -> slip instanceof Slip.Strands strands && strands.actual() == bench.strands;
            case CIRCUITS -> slip.equals(new Slip.Circuits(bench.circuits));
            case GAUGE -> slip instanceof Slip.Gauge gauge && gauge.actual().equals(bench.size);
            case HOT -> slip instanceof Slip.HotReading;
        };
    }

    Tally total() {
        Tally total = new Tally();
        tallies.values().forEach(total::add);
        return total;
    }

    /** The table for people. */
    String table() {
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT,
                "%-14s %8s %10s %7s %7s | %8s %10s %7s %7s%n", "slip", "captures", "questioned", "first", "first 3",
                "> 2 U", "questioned",
                "first", "first 3"));
        tallies.forEach((planted, tally) -> text.append(line(planted.name(), tally)));
        text.append(line("ALL", total()));
        text.append(String.format(Locale.ROOT,
                "clean captures %d, false alarms %d (%.2f %%); U = %.1f %% of one comparison%n",
                cleanCaptures, falseAlarms, 100.0 * falseAlarms / cleanCaptures, 100 * expanded()));
        return text.toString();
    }

    private static String line(String name, Tally t) {
        return String.format(Locale.ROOT, "%-14s %8d %9.1f%% %6.1f%% %6.1f%% | %8d %9.1f%% %6.1f%% %6.1f%%%n", name,
                t.captures,
                share(t.questioned, t.captures), share(t.first, t.captures), share(t.firstThree, t.captures), t.large,
                share(t.largeQuestioned, t.large), share(t.largeFirst, t.large), share(t.largeFirstThree, t.large));
    }

    private static double share(int part, int whole) {
        return whole == 0 ? Double.NaN : 100.0 * part / whole;
    }
}
