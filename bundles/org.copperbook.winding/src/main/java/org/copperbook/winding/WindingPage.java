package org.copperbook.winding;

import java.util.List;
import org.copperbook.desk.form.Block;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.winding.BlindCounts;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.winding.count.CountsSection;
import org.copperbook.winding.design.FirstWindingSection;
import org.copperbook.winding.drawing.DrawingSection;
import org.copperbook.winding.figures.LiveFigures;
import org.copperbook.winding.left.FoundLeftSection;
import org.copperbook.winding.memory.PastWindingsSection;
import org.copperbook.winding.memory.ProposalSection;
import org.copperbook.winding.stock.StockSection;

/** One winding: its description, its coil groups with their resistances, two counts, and what follows from them. */
public final class WindingPage extends PartPage {

    /** A section with its place on the form. */
    /** What {@link #reveal} takes for the search for past windings. */
    public static final String PAST = "#past";

    private record Placed(WindingSection section, Block block) {
    }

    private List<Placed> sections = List.of();
    private OneLineSection oneLine;
    private PastWindingsSection past;
    private ProposalSection proposal;

    @Override
    protected Words words() {
        return Words.of(WindingPage.class);
    }

    @Override
    protected void build(Form here) {
        OpenWinding winding = new OpenWinding(site(), words());
        WindingReadings readings = new WindingReadings(winding);
        proposal = new ProposalSection(winding);
        oneLine = new OneLineSection(winding, readings);
        past = new PastWindingsSection(winding);
        CoilGroupsSection groups = new CoilGroupsSection(winding, readings);
        List<WindingSection> inOrder = List.of(
                proposal,
                oneLine,
                new CoverSection(),
                new DescriptionSection(),
                new WireSection(winding),
                new CoveredWireSection(winding),
                new LayOutSection(winding),
                readings,
                groups,
                new DrawingSection(winding, groups::grid),
                new CoveredGroupsSection(readings),
                new ReadingsSection(readings),
                new WeighedSection(),
                new LiveFigures(winding),
                new FoundLeftSection(winding),
                new StockSection(winding),
                new CountsSection(winding),
                new PhotosSection(),
                new DimensionsSection(),
                past,
                new FirstWindingSection(winding));
        sections = inOrder.stream().map(s -> new Placed(s, here.block(() -> s.build(here)))).toList();
    }

    @Override
    public boolean reveal(String pointer) {
        if (pointer.equals(PAST)) {
            return past.focus();
        }
        return pointer.equals("/proposedFrom") ? proposal.focus() : super.reveal(pointer);
    }

    @Override
    protected void changed() {
        boolean covered = document().part(key(), WindingData.class).map(BlindCounts::covers).orElse(false);
        for (Placed p : sections) {
            p.block().show(p.section().shown(covered));
            p.section().changed();
        }
    }

    @Override
    protected void judged(List<Verdict> ofJob) {
        sections.forEach(p -> p.section().judged(ofJob));
    }

    /** A new winding begins with the one line; one that is laid out begins with its fields. */
    @Override
    public boolean focusFirst() {
        return oneLine.begins() ? oneLine.focus() : super.focusFirst();
    }
}
