package org.copperbook.runup;

import java.util.List;
import java.util.stream.Stream;
import org.copperbook.desk.entry.MomentEntry;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.Cautions;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.check.Verdict;

/** The record of who signed, conceded and judged what, and the place where it is done. */
public final class SignOffsPage extends PartPage {

    private final MomentEntry moment = new MomentEntry();
    private HoldPointsArea holdPoints;
    private OpenVerdictsArea open;

    @Override
    protected Words words() {
        return Words.of(SignOffsPage.class);
    }

    @Override
    protected void build(Form here) {
        SignOffDesk desk = new SignOffDesk(site(), words());
        holdPoints = new HoldPointsArea(here.area("signoffs.points"), site(), words(), desk);
        open = new OpenVerdictsArea(here.area("signoffs.open"), site(), words(), desk);
        here.grid("signoffs.signatures", "/signatures", columns -> columns
                .computed("point", "signoffs.point", row -> words().text("HoldPoint." + row.path("point").asText()))
                .computed("by", "signoffs.by", row -> person(row.path("by").asText()))
                .computed("role", "signoffs.role", row -> words().text("Role." + row.path("role").asText()))
                .computed("at", "signoffs.at", row -> moment.show(row.path("at")))
                .computed("note", "signoffs.note", row -> row.path("note").asText("")));
        here.grid("signoffs.concessions", "/concessions", columns -> columns
                .computed("verdict", "signoffs.verdict", row -> title(row.path("verdict").asText()))
                .computed("reason", "signoffs.reason", row -> row.path("reason").asText())
                .computed("by", "signoffs.by", row -> person(row.path("by").asText()))
                .computed("at", "signoffs.at", row -> moment.show(row.path("at"))));
        here.grid("signoffs.judgements", "/judgements", columns -> columns
                .computed("verdict", "signoffs.verdict", row -> title(row.path("verdict").asText()))
                .computed("acceptable", "signoffs.acceptable", row -> words().text(
                        row.path("acceptable").asBoolean() ? "signoffs.yes" : "signoffs.no"))
                .computed("reason", "signoffs.reason", row -> row.path("reason").asText())
                .computed("by", "signoffs.by", row -> person(row.path("by").asText()))
                .computed("at", "signoffs.at", row -> moment.show(row.path("at"))));
        here.grid("signoffs.reopenings", "/reopenings", columns -> columns
                .computed("point", "signoffs.point", row -> words().text("HoldPoint." + row.path("point").asText()))
                .computed("because", "signoffs.because", row -> row.path("because").asText())
                .computed("at", "signoffs.at", row -> moment.show(row.path("at"))));
        here.grid("signoffs.cautions", "/cautions", columns -> columns
                .computed("step", "signoffs.step", row -> step(row.path("step").asText()))
                .computed("by", "signoffs.by", row -> person(row.path("by").asText()))
                .computed("at", "signoffs.at", row -> moment.show(row.path("at"))));
    }

    /** Title of a verdict; its id where the checks no longer give it. */
    private String title(String id) {
        return site().verdicts().stream().filter(v -> v.id().equals(id)).map(Verdict::title).findFirst().orElse(id);
    }

    private static String step(String word) {
        return Stream.of(Hazardous.values()).filter(h -> h.word().equals(word)).map(Cautions::title).findFirst()
                .orElse(word);
    }

    private String person(String key) {
        return site().people().getOrDefault(key, key);
    }

    @Override
    protected void judged(List<Verdict> ofJob) {
        holdPoints.show(site().holdPoints());
        open.show(ofJob);
        form().refresh();
    }
}
