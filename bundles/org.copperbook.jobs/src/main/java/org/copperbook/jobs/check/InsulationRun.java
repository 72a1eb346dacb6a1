package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.copperbook.calc.insulation.InsulationSystem;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Insulation resistance against the time since the voltage was applied: one run on one place.
 *
 * @param role   winding
 * @param state  as found, in process or as left
 * @param place  the place as verdicts name it; empty for the winding as a whole to earth
 * @param number which run on this place, from 1
 * @param runs   how many runs there are on this place
 * @param points the readings in the order of their times
 * @param rule   by which rule they were brought to 40 degrees Celsius, or why they were not, in words
 * @param says   the two indices, what they are good for here and what is missing for them, in words
 */
public record InsulationRun(WindingRole role, Reading.State state, String place, int number, int runs, List<Point> points,
        String rule, String says) {

    static final double HALF_MINUTE = 30;
    static final double ONE_MINUTE = 60;
    static final double TEN_MINUTES = 600;
    /** Share by which a reading may be early or late and still count for its time. */
    private static final double ON_TIME = 0.1;
    /** A run in which the winding warms or cools by more has no one temperature, kelvin; common practice, no source. */
    private static final double SAME_TEMPERATURE = 5;

    /**
     * One reading of a run.
     *
     * @param seconds since the voltage was applied
     * @param ohms    as read
     * @param at40    brought to 40 degrees Celsius, the lower value where two rules apply; null when that cannot be done
     * @param part    part that holds it
     * @param path    where it stands in that part
     */
    public record Point(double seconds, double ohms, Double at40, PartKey part, String path) {
    }

    public InsulationRun {
        points = List.copyOf(points);
    }

    /** The runs of a job that have two readings or more at different times. */
    public static List<InsulationRun> of(Job job, Shop shop, List<Verdict> verdicts) {
        Machine machine = new Machine(job, shop);
        ReadingLog log = new ReadingLog(job);
        List<InsulationRun> out = new ArrayList<>();
        for (WindingRole role : WindingRole.values()) {
            for (Reading.State state : Reading.State.values()) {
                byPlace(log.of(role, ReadingQuantity.INSULATION_RESISTANCE, state)).forEach((place, readings) -> {
                    List<List<LoggedReading>> runs = split(readings);
                    for (int i = 0; i < runs.size(); i++) {
                        if (runs.get(i).size() > 1) {
                            out.add(of(role, state, place, i, runs, machine, shop, verdicts));
                        }
                    }
                });
            }
        }
        return out;
    }

    private static InsulationRun of(WindingRole role, Reading.State state, String place, int index,
            List<List<LoggedReading>> runs, Machine machine, Shop shop, List<Verdict> verdicts) {
        List<LoggedReading> run = runs.get(index);
        Optional<String> thermalClass = machine.thermalClass(role, state != Reading.State.AS_FOUND);
        List<Point> points = new ArrayList<>();
        String trouble = "";
        for (LoggedReading l : run) {
            InsulationAt40 hot = InsulationAt40.of(OhmsToEarth.of(l, machine.kelvinU(l.reading().temperatureU()), shop),
                    thermalClass);
            trouble = trouble.isEmpty() ? hot.trouble() : trouble;
            points.add(new Point(l.reading().afterSeconds(), l.reading().observed().value(),
                    hot.isEmpty() ? null : hot.lowest(), l.part(), l.path()));
        }
        String rule = points.stream().allMatch(p -> p.at40() == null) ? Phrases.say("insulation-run.not-at-40", trouble)
                : Phrases.say("insulation-run." + rule(thermalClass), thermalClass.orElse(""));
        boolean newest = index == runs.size() - 1;
        String id = "." + Points.word(state) + (place.isEmpty() ? "" : "." + place);
        String says = said("insulation-run.pi", ratio(run, TEN_MINUTES, ONE_MINUTE), newest,
                role.word() + ".polarisation-index" + id, verdicts) + " "
                + said("insulation-run.dar", ratio(run, ONE_MINUTE, HALF_MINUTE), newest,
                        "", verdicts);
        return new InsulationRun(role, state, place, index + 1, runs.size(), points, rule, says);
    }

    private static String rule(Optional<String> thermalClass) {
        List<InsulationSystem> systems = InsulationAt40.systems(thermalClass);
        return systems.size() > 1 ? "both-rules" : systems.get(0) == InsulationSystem.THERMOSETTING ? "thermosetting" : "halving";
    }

    private static String said(String key, OptionalDouble ratio, boolean newest, String id, List<Verdict> verdicts) {
        if (ratio.isEmpty()) {
            return Phrases.say(key + "-missing");
        }
        String reason = verdicts.stream().filter(v -> newest && v.id().equals(id)).map(Verdict::reason).findFirst().orElse("");
        return Phrases.say(key, Figures.number(ratio.getAsDouble(), 3), reason).strip();
    }

    private static OptionalDouble ratio(List<LoggedReading> run, double late, double early) {
        Optional<LoggedReading> a = run.stream().filter(l -> near(l, late)).findFirst();
        Optional<LoggedReading> b = run.stream().filter(l -> near(l, early)).findFirst();
        return a.isEmpty() || b.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(a.get().reading().observed().value() / b.get().reading().observed().value());
    }

    /** Readings of each place; the winding as a whole comes under an empty word. */
    static Map<String, List<LoggedReading>> byPlace(List<LoggedReading> readings) {
        Map<String, List<LoggedReading>> map = new LinkedHashMap<>();
        for (LoggedReading l : readings) {
            if (l.reading().observed() != null) {
                Place p = l.reading().place();
                String mark = p.mark().strip().toLowerCase(Locale.ROOT).replace(' ', '-');
                String key = p.kind() == Place.Kind.BETWEEN_PHASES ? mark.isEmpty() ? "between-phases" : mark : mark;
                map.computeIfAbsent(key, k -> new ArrayList<>()).add(l);
            }
        }
        return map;
    }

    /**
     * The runs among the readings of one place, each in the order of its times. A reading for a time that the run already
     * has begins the next one; readings without a time or without a value belong to none.
     */
    static List<List<LoggedReading>> split(List<LoggedReading> ofPlace) {
        List<List<LoggedReading>> runs = new ArrayList<>();
        for (LoggedReading l : ofPlace) {
            Double seconds = l.reading().afterSeconds();
            if (seconds == null || !(seconds > 0) || !l.reading().observed().isValue()
                    || !(l.reading().observed().value() > 0)) {
                continue;
            }
            if (runs.isEmpty() || runs.get(runs.size() - 1).stream().anyMatch(other -> near(other, seconds))) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(l);
        }
        runs.forEach(run -> run.sort(Comparator.comparing((LoggedReading l) -> l.reading().afterSeconds())));
        return runs;
    }

    static boolean near(LoggedReading l, double seconds) {
        Double s = l.reading().afterSeconds();
        return s != null && Math.abs(s - seconds) <= ON_TIME * seconds;
    }

    /** Says so when the winding was not at one temperature while an index was taken; empty otherwise. */
    static String moved(LoggedReading late, LoggedReading early) {
        Double a = late.reading().windingCelsius();
        Double b = early.reading().windingCelsius();
        return a == null || b == null || Math.abs(a - b) <= SAME_TEMPERATURE ? ""
                : Phrases.say("index.moved", Figures.show(Math.abs(a - b), "K"));
    }
}
