package org.copperbook.office;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.office.handback.SetAsideArea;

/** What a job waits for, and how it ended. */
public final class StandingPage extends PartPage {

    private ClosingArea closing;
    private SetAsideArea aside;
    private MergedJobs merged;
    private WaitingOffers offers;

    @Override
    protected Words words() {
        return Words.of(StandingPage.class);
    }

    @Override
    protected void build(Form here) {
        here.section("standing.waiting")
                .choiceFilling("/waiting/since", StandingPage::now, "/waiting/waitingFor", "standing.for",
                        Standing.WaitingFor.class)
                .moment("/waiting/since", "standing.since")
                .text("/waiting/reason", "standing.reason");
        offers = new WaitingOffers(here.area(), site(), words());
        here.words("standing.closingHint");
        closing = new ClosingArea(here.area("standing.closing"), site(), words());
        aside = new SetAsideArea(here.area("handback.aside"), site(), words());
        merged = new MergedJobs(here.area(), site(), words());
    }

    private static JsonNode now() {
        return TextNode.valueOf(Instant.now().truncatedTo(ChronoUnit.MINUTES).toString());
    }

    @Override
    protected void changed() {
        if (closing != null) {
            closing.show();
            aside.show();
            merged.follow();
            offers.show();
        }
    }

    @Override
    protected void judged(java.util.List<Verdict> ofJob) {
        closing.show();
    }
}
