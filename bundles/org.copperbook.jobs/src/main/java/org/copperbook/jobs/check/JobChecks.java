package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.BlindCounts;

/** All checks together: the verdicts of a job, the same for every page, workbook and command. */
public final class JobChecks {

    private static final List<Check> ALL = List.of(new CaptureCheck(), new CaptureMatchCheck(), new ProposalCheck(),
            new ResistanceCheck(), new CoilGroupCheck(),
            new LeftAgainstFoundCheck(), new InsulationCheck(), new FitCheck(), new FieldPlateCheck(), new ExcitationRunCheck(), new DiodeReadingCheck(),
            new RectifierSetCheck(), new FittedSetCheck(), new DiodeRatingCheck(), new SuppressorCheck(),
            new CoreCheck(), new PolaritySequenceCheck(), new PolarityTestCheck(), new SurgeCheck(), new DryingCheck(),
            new CureCheck(), new WithstandCheck(), new InsulationAfterCheck(), new RunUpCheck(), new CurveCheck(),
            new HeatRunCheck(), new FlashingCheck(), new MechanicalCheck(), new RequiredTestsCheck(),
            new InstrumentCheck());

    private JobChecks() {
    }

    /**
     * The verdicts of a job in the order of its life. A value so far out of range that a check refuses it becomes a
     * verdict that says so; the other checks go on. While two counts of a winding are blind to each other no verdict
     * rests on its turns, so that none can tell them.
     */
    public static List<Verdict> verdicts(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        Job covered = BlindCounts.covered(job);
        for (Check check : ALL) {
            try {
                out.addAll(check.judge(check instanceof CaptureCheck ? job : covered, shop));
            } catch (OutOfRange e) {
                String name = check.getClass().getSimpleName().replace("Check", "");
                out.add(VerdictDraft.of("refused." + name.toLowerCase(Locale.ROOT),
                        PartKey.of(PartKind.INSPECTION), Phrases.say("title.refused")).outcome(Outcome.NOT_MEASURED)
                        .reason(e.getMessage()).settle(Phrases.say("settle.repeat"))
                        .point(HoldPoint.RELEASE).done());
            }
        }
        return apart(out);
    }

    /** Two things recorded under one name (two positions "D1") still get verdicts that can be told apart. */
    private static List<Verdict> apart(List<Verdict> verdicts) {
        Map<String, Integer> seen = new HashMap<>();
        List<Verdict> out = new ArrayList<>();
        for (Verdict v : verdicts) {
            int n = seen.merge(v.id(), 1, Integer::sum);
            out.add(n == 1 ? v : v.withId(v.id() + ".again-" + n));
        }
        return List.copyOf(out);
    }
}
