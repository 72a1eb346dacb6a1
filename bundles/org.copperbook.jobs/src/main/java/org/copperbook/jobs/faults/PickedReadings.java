package org.copperbook.jobs.faults;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.winding.WindingRole;

/**
 * What the record as found already answers. Only plain verdicts are taken: what is doubtful answers nothing.
 *
 * @param byTest outcome by test
 * @param notes  what was left out and why
 */
record PickedReadings(Map<String, Picked> byTest, List<String> notes) {

    /**
     * An answer that a reading gives.
     *
     * @param outcome outcome by name
     * @param from    where it comes from, in words
     */
    record Picked(String outcome, String from) {
    }

    static PickedReadings of(Job job, List<Verdict> verdicts) {
        Picking picking = new Picking(job, verdicts.stream().filter(Verdict::current).toList());
        picking.run();
        picking.resistance(WindingRole.MAIN_STATOR, "main-stator-resistance", "equal", "unequal", "unequal", "open");
        picking.resistance(WindingRole.EXCITER_ROTOR, "exciter-rotor-resistance", "equal", "unequal", "unequal", "open");
        picking.resistance(WindingRole.MAIN_ROTOR, "main-rotor-resistance", "agrees", "low", "high-or-open",
                "high-or-open");
        picking.resistance(WindingRole.EXCITER_STATOR, "exciter-stator-resistance", "agrees", "low", "high-or-open",
                "high-or-open");
        for (WindingRole role : List.of(WindingRole.MAIN_STATOR, WindingRole.MAIN_ROTOR, WindingRole.EXCITER_STATOR)) {
            picking.insulation(role);
        }
        picking.diodes();
        picking.suppressor();
        return new PickedReadings(picking.found, picking.notes);
    }

    private static final class Picking {

        private final Job job;
        private final List<Verdict> verdicts;
        private final Map<String, Picked> found = new LinkedHashMap<>();
        private final List<String> notes = new ArrayList<>();

        Picking(Job job, List<Verdict> verdicts) {
            this.job = job;
            this.verdicts = verdicts;
        }

        private Optional<Verdict> verdict(String pattern) {
            return verdicts.stream().filter(v -> v.id().matches(pattern)).reduce((first, second) -> second);
        }

        /** Output and balance together make the row; a run that is doubtful as a whole makes none. */
        void run() {
            Verdict whole = verdict("excitation-run\\.\\d+").orElse(null);
            Verdict output = verdict("excitation-run\\.\\d+\\.output").orElse(null);
            if (whole == null || output == null || whole.outcome() == Outcome.NOT_MEASURED) {
                return;
            }
            boolean high = output.outcome() == Outcome.FAILS && output.value() != null && output.value() > 1;
            if (!high && (whole.outcome() == Outcome.DOUBTFUL || whole.outcome() == Outcome.NO_LIMIT_SET)) {
                notes.add(FaultText.say("picked.run-doubtful"));
                return;
            }
            Outcome balance = verdict("excitation-run\\.\\d+\\.balance").map(Verdict::outcome).orElse(null);
            String row = high ? "high" : balance == null ? "none"
                    : (output.outcome() == Outcome.FAILS ? "low-" : "normal-")
                    + (balance == Outcome.FAILS ? "unbalanced" : "balanced");
            found.put("separate-excitation", new Picked(row, FaultText.say("picked.run")));
        }

        /** An open reading speaks for itself; otherwise the verdicts on the readings as found do. */
        void resistance(WindingRole role, String test, String agrees, String low, String high, String open) {
            String from = FaultText.say("picked.resistance");
            if (readings(role).stream().anyMatch(r -> r.observed().kind() == Observed.Kind.ABOVE_RANGE)) {
                found.put(test, new Picked(open, from));
                return;
            }
            List<Verdict> said = verdicts.stream().filter(v -> v.id().startsWith(role.word() + ".")
                    && (v.id().contains(".resistance") || v.id().contains(".unbalance"))
                    && v.id().contains("as-found")).toList();
            Optional<Verdict> failed = said.stream().filter(v -> v.outcome() == Outcome.FAILS).findFirst();
            if (failed.isPresent()) {
                Verdict f = failed.get();
                boolean below = f.bounds() != null && f.value() != null && f.bounds().lower() != null
                        && f.value() < f.bounds().lower();
                found.put(test, new Picked(below ? low : high, from));
            } else if (said.stream().anyMatch(v -> v.outcome() == Outcome.MEETS)
                    && said.stream().noneMatch(v -> v.outcome() == Outcome.DOUBTFUL)) {
                found.put(test, new Picked(agrees, from));
            }
        }

        private List<Reading> readings(WindingRole role) {
            Set<String> corrected = job.inspection().stream().flatMap(i -> i.readings().stream())
                    .map(Reading::supersedes).filter(Objects::nonNull).collect(Collectors.toSet());
            return job.inspection().map(i -> i.readings().stream().filter(r -> !corrected.contains(r.id()))
                    .filter(r -> r.quantity() == ReadingQuantity.RESISTANCE && r.observed() != null && r.place() != null
                            && r.place().winding() == role && r.place().kind() != Place.Kind.TO_EARTH).toList())
                    .orElse(List.of());
        }

        void insulation(WindingRole role) {
            List<Verdict> said = verdicts.stream().filter(v -> v.id().startsWith(role.word() + ".")
                    && v.id().contains("insulation") && v.id().contains("as-found")).toList();
            if (said.stream().anyMatch(v -> v.outcome() == Outcome.FAILS)) {
                found.put(role.word() + "-insulation", new Picked("low", FaultText.say("picked.insulation")));
            } else if (!said.isEmpty() && said.stream().allMatch(v -> v.outcome() == Outcome.MEETS)) {
                found.put(role.word() + "-insulation", new Picked("sound", FaultText.say("picked.insulation")));
            }
        }

        void diodes() {
            List<DiodePosition> all = job.rectifier().map(r -> r.positions()).orElse(List.of());
            int good = 0;
            for (int i = 0; i < all.size(); i++) {
                String path = "/positions/" + i + "/asFoundForward";
                Outcome o = verdicts.stream().filter(v -> path.equals(v.path()) && v.id().startsWith("diode."))
                        .map(Verdict::outcome).findFirst().orElse(null);
                if (o == Outcome.FAILS) {
                    found.put("diodes-isolated", new Picked(isOpen(all.get(i)) ? "one-open" : "one-shorted",
                            FaultText.say("picked.diodes")));
                    return;
                }
                good += o == Outcome.MEETS ? 1 : 0;
            }
            if (good > 0 && good == all.size()) {
                found.put("diodes-isolated", new Picked("all-good", FaultText.say("picked.diodes")));
            }
        }

        private static boolean isOpen(DiodePosition p) {
            Reading f = p.asFoundForward();
            Reading r = p.asFoundReverse();
            return f != null && r != null && isAbove(f) && isAbove(r);
        }

        private static boolean isAbove(Reading r) {
            return r.observed() != null && (r.observed().kind() == Observed.Kind.ABOVE_RANGE
                    || r.observed().isValue() && r.quantity() == ReadingQuantity.DIODE_OHMS
                    && r.observed().value() > 1e4);
        }

        void suppressor() {
            verdict("suppressor\\.as-found").ifPresent(v -> {
                if (v.outcome() == Outcome.FAILS) {
                    found.put("suppressor-lifted", new Picked("conducts", FaultText.say("picked.suppressor")));
                } else if (v.outcome() == Outcome.MEETS) {
                    found.put("suppressor-lifted", new Picked("open", FaultText.say("picked.suppressor")));
                }
            });
        }
    }
}
