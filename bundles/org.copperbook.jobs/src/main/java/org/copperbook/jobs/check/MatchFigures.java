package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.calc.winding.capture.CaptureReading;
import org.copperbook.calc.winding.capture.CaptureReport;
import org.copperbook.calc.winding.capture.CaptureUncertainty;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingModel;

/**
 * Resistance that turns, mean turn and wire imply, beside what was read, group by group and phase by phase; and the copper
 * likewise. The band is the expanded uncertainty of the difference ({@link CaptureUncertainty}); it is no limit.
 */
final class MatchFigures {

    private static final double MASS = 0.015;

    private MatchFigures() {
    }

    static List<Verdict> of(WindingCase c) {
        try {
            return c.role().isField() ? poles(c) : distributed(c);
        } catch (OutOfRange e) {
            return List.of(c.refused("resistance", e.getMessage()));
        }
    }

    private static List<Verdict> distributed(WindingCase c) {
        CaptureAgainstReadings match = CaptureAgainstReadings.of(c);
        List<Verdict> out = new ArrayList<>();
        if (match.report() == null) {
            out.add(c.missing("resistance", match.missing()));
            out.add(mass(c));
            return out;
        }
        boolean weighed = false;
        for (int i = 0; i < match.places().size(); i++) {
            CaptureReport.Comparison compared = match.report().comparisons().get(i);
            PhaseOhms at = match.places().get(i);
            weighed |= at == null;
            out.add(at == null ? massAgainst(c, compared.predicted(), compared.reading().value(), compared.expanded())
                    : resistance(c, at, compared.reading().value(), compared.predicted(), compared.expanded()));
        }
        if (match.report().comparisons().stream().allMatch(x -> x.reading() instanceof CaptureReading.OfMass)) {
            out.add(0, c.missing("resistance", List.of(Phrases.say("figure.needs.readings"))));
        }
        if (!weighed) {
            out.add(mass(c));
        }
        return out;
    }

    private static Verdict resistance(WindingCase c, PhaseOhms at, double read, double predicted, double expanded) {
        boolean inside = Math.abs(read / predicted - 1) <= expanded;
        Double u = MeterUse.allKnown(at.meters()) ? 2 * at.byMeterOnly().u() * read / at.byMeterOnly().value() : null;
        return c.figure("resistance." + at.key(), Phrases.say("title.figure.resistance-of", Phrases.word("role", c.role()),
                at.label())).value(read, u, "ohm").path(at.part().equals(c.key()) ? at.path() : "")
                .bounds(Bounds.between(predicted * (1 - expanded), predicted * (1 + expanded)))
                .limitText(Phrases.say("figure.predicted", Figures.show(predicted, "ohm"), Figures.show(expanded, "1")))
                .source(Phrases.say("figure.source.match")).takenAt(at.at())
                .outcome(inside ? Outcome.MEETS : Outcome.DOUBTFUL)
                .reason(Phrases.say(inside ? "figure.resistance-fits" : "figure.resistance-off", Figures.show(read, "ohm"),
                        Figures.show(predicted, "ohm"), signed(read / predicted - 1)))
                .settle(inside ? "" : Phrases.say("settle.figure.resistance")).done();
    }

    private static String signed(double share) {
        return (share > 0 ? "+" : "") + Figures.show(share, "1");
    }

    /** Poles of a field, each by itself: the ranking of slips needs a coil list in slots. */
    private static List<Verdict> poles(WindingCase c) {
        List<Verdict> out = new ArrayList<>();
        WindingModel model = new WindingModel(c.data());
        List<String> missing = WindingCase.lacking(c.data().meanTurnM(), "capture.mean-turn", model.conductor(),
                "capture.wire");
        if (c.data().groups().stream().noneMatch(g -> WindingModel.turns(g) > 0)) {
            missing.add(Phrases.say("figure.needs.pole-turns"));
        }
        List<PhaseOhms> read = WindingOhms.groups(ResistanceSet.of(c.role(), state(c), new ReadingLog(c.job()),
                c.machine(), new LimitBook(c.job(), c.shop()), c.shop()), c.machine());
        if (read.isEmpty()) {
            missing.add(Phrases.say("figure.needs.readings"));
        }
        if (!missing.isEmpty()) {
            out.add(c.missing("resistance", missing));
        } else {
            for (PhaseOhms p : read) {
                Optional<CoilGroup> group = c.data().groups().stream()
                        .filter(g -> p.key().equals("group-" + g.number())).findFirst();
                group.flatMap(g -> model.predictedOhms(g, c.machine().reference())).ifPresent(predicted -> {
                    Uncertain at = p.atReference().uncertain();
                    out.add(resistance(c, p, at.value(), predicted, expanded(at.u() / at.value())));
                });
            }
        }
        out.add(mass(c));
        return out;
    }

    private static Reading.State state(WindingCase c) {
        return c.data().asWound() ? Reading.State.IN_PROCESS : Reading.State.AS_FOUND;
    }

    /** Expanded uncertainty of a measured over a predicted resistance, relative. */
    private static double expanded(double reading) {
        CaptureUncertainty usual = CaptureUncertainty.usual();
        return 2 * Math.sqrt(usual.meanTurn() * usual.meanTurn() + usual.area() * usual.area() + reading * reading);
    }

    private static Verdict mass(WindingCase c) {
        Optional<Double> kg = new WindingModel(c.data()).copperKg();
        if (kg.isEmpty()) {
            List<String> missing = WindingCase.lacking(c.data().meanTurnM(), "capture.mean-turn");
            if (c.data().wire().isEmpty()) {
                missing.add(Phrases.say("capture.wire"));
            }
            if (c.data().groups().isEmpty() || c.data().groups().stream().anyMatch(g -> WindingModel.turns(g) == 0)) {
                missing.add(Phrases.say("figure.needs.all-turns"));
            }
            return c.missing("copper", missing);
        }
        if (c.data().copperRemovedKg() != null && c.data().copperRemovedKg() > 0) {
            return massAgainst(c, kg.get(), c.data().copperRemovedKg(), expanded(MASS));
        }
        return c.figure("copper").value(kg.get(), null, "kg").outcome(Outcome.NO_LIMIT_SET)
                .limitText(Phrases.say("limit.none")).source(Phrases.say("figure.source.copper"))
                .reason(Phrases.say(c.data().asWound() ? "figure.copper-new" : "figure.copper-not-weighed",
                        Figures.show(kg.get(), "kg"))).done();
    }

    private static Verdict massAgainst(WindingCase c, double predicted, double weighed, double expanded) {
        boolean inside = Math.abs(weighed / predicted - 1) <= expanded;
        return c.figure("copper").value(weighed, 2 * MASS * weighed, "kg").path("/copperRemovedKg")
                .bounds(Bounds.between(predicted * (1 - expanded), predicted * (1 + expanded)))
                .limitText(Phrases.say("figure.predicted", Figures.show(predicted, "kg"), Figures.show(expanded, "1")))
                .source(Phrases.say("figure.source.match")).outcome(inside ? Outcome.MEETS : Outcome.DOUBTFUL)
                .reason(Phrases.say(inside ? "figure.copper-fits" : "figure.copper-off", Figures.show(weighed, "kg"),
                        Figures.show(predicted, "kg"), signed(weighed / predicted - 1)))
                .settle(inside ? "" : Phrases.say("settle.figure.copper")).done();
    }
}
