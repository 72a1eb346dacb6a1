package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Shop;

/**
 * The figures that follow from a captured winding, each with its usual range and where that comes from, or with what is
 * missing to compute it. They guide and block nothing, so they stand beside the verdicts of {@link JobChecks} and not
 * among them: "meets" says inside the usual range, "doubtful" that a second look pays. The same on every page, in every
 * workbook and on the command line.
 */
public final class WindingFigures {

    private WindingFigures() {
    }

    /** Figures of one winding: layout, flux, current, fill, resistance, mass. */
    public static List<Verdict> of(Job job, Shop shop, PartKey key) {
        Optional<WindingCase> c = WindingCase.of(job, shop, key);
        if (c.isEmpty()) {
            return List.of();
        }
        List<Verdict> out = new ArrayList<>();
        out.addAll(LayoutFigures.of(c.get()));
        out.addAll(FluxFigures.of(c.get()));
        out.addAll(CurrentFigures.of(c.get()));
        out.addAll(FillFigures.of(c.get()));
        out.addAll(MatchFigures.of(c.get()));
        return List.copyOf(out);
    }

    /** What the capture check says of one winding, computed or not; empty for a field, whose poles are compared alone. */
    public static Optional<Verdict> match(Job job, Shop shop, PartKey key) {
        return WindingCase.of(job, shop, key).filter(c -> !c.role().isField()).map(CaptureMatchCheck::match);
    }

    /** Figures of every winding of a job, in the order of its parts. */
    public static List<Verdict> of(Job job, Shop shop) {
        return job.keys(PartKind.WINDING).stream().flatMap(k -> of(job, shop, k).stream()).toList();
    }
}
