package org.copperbook.winding;

import java.util.List;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.winding.figures.LiveFigures;
import org.copperbook.winding.memory.PastWindingsSection;
import org.copperbook.winding.memory.ProposalSection;
import org.copperbook.winding.stock.StockSection;

/** One winding: its description, its coil groups with their resistances, two counts, and what follows from them. */
public final class WindingPage extends PartPage {

    private List<WindingSection> sections = List.of();
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
        sections = List.of(
                proposal,
                new DescriptionSection(),
                new WireSection(winding),
                new LayOutSection(winding),
                new PastWindingsSection(winding),
                readings,
                new CoilGroupsSection(winding, readings),
                new ReadingsSection(readings),
                new WeighedSection(),
                new LiveFigures(winding),
                new StockSection(winding),
                new CountsSection(winding),
                new PhotosSection(winding),
                new DimensionsSection());
        sections.forEach(s -> s.build(here));
    }

    @Override
    public boolean reveal(String pointer) {
        return pointer.equals("/proposedFrom") ? proposal.focus() : super.reveal(pointer);
    }

    @Override
    protected void changed() {
        sections.forEach(WindingSection::changed);
    }

    @Override
    protected void judged(List<Verdict> ofJob) {
        sections.forEach(s -> s.judged(ofJob));
    }
}
