package org.copperbook.office.quote;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.copperbook.desk.form.Actions;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.SentQuoteGuard;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.seal.QuoteSeal;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.office.registers.HistoryWindow;
import org.eclipse.swt.widgets.Composite;

/** An offer goes out as it stands; from then on it is revised and not changed, and every revision stays to be looked at. */
final class Sending {

    private static final String ANSWER = "/approval";

    private final PageSite site;
    private final Words words;
    private final QuoteSums sums;
    private Composite area;

    Sending(PageSite site, Words words, QuoteSums sums) {
        this.site = site;
        this.words = words;
        this.sums = sums;
    }

    void put(Form here) {
        here.section("quote.sending").computed("quote.sentSaid", "quote.sentSaid", this::said);
        area = here.area();
        new Actions(area, site, "sending/said")
                .button("quote.send", words.text("quote.send"), this::send)
                .button("quote.revise", words.text("quote.revise"), this::revise)
                .button("quote.revisions", words.text("quote.revisions"), this::revisions);
    }

    /** Why the offer may not be changed now; the customer's answer may. */
    Optional<String> closed() {
        return sent().isPresent() ? Optional.of(words.text("quote.isSent"))
                : quote().filter(SentQuoteGuard::isClosed).map(q -> words.text("quote.isAgreed"));
    }

    /** Whether a place may be typed into. */
    boolean isOpen(String pointer) {
        return closed().isEmpty() || pointer.startsWith(ANSWER);
    }

    private Optional<Quote> quote() {
        return site.document().part(site.key(), Quote.class);
    }

    private Optional<Quote.Sent> sent() {
        return quote().map(Quote::sent);
    }

    private String said() {
        Quote quote = quote().orElse(null);
        if (quote == null || quote.sent() == null) {
            return words.text(closed().isEmpty() ? "quote.notSent" : "quote.isAgreed");
        }
        String when = quote.sent().at() == null ? "" : Days.ofLocale().moment(quote.sent().at());
        String now = QuoteSeal.of(site.document().number(), quote);
        return words.text(now.equals(quote.sent().fingerprint()) ? "quote.sentAt" : "quote.sentAndChanged", when,
                site.shop().nameOf(quote.sent().by()), Seal.shown(now));
    }

    private String send() {
        if (sent().isPresent()) {
            return words.text("quote.isSent");
        }
        if (site.who().isEmpty()) {
            return words.text("quote.whoSends");
        }
        if (quote().isEmpty() || site.document().number().isEmpty()) {
            return words.text("quote.nothingToSend");
        }
        Optional<String> problem = sums.problem();
        if (problem.isPresent()) {
            return words.text("quote.notPriced", sentence(problem.get()));
        }
        String fingerprint = QuoteSeal.of(site.document().number(), quote().get());
        return site.document().change(site.key(), "/sent", tree -> {
            ObjectNode sent = tree.putObject("sent");
            sent.put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString()).put("by", site.who().get())
                    .put("fingerprint", fingerprint);
            return tree;
        }).orElseGet(() -> words.text("quote.sentNow"));
    }

    private static String sentence(String text) {
        return text.endsWith(".") || text.endsWith("?") ? text : text + ".";
    }

    private String revise() {
        if (quote().isEmpty()) {
            return words.text("quote.nothingToSend");
        }
        int next = quote().orElseThrow().revision() + 1;
        return site.document().change(site.key(), "/revision", tree -> {
            tree.remove("sent");
            tree.remove("approval");
            tree.put("revision", next).put("date", LocalDate.now().toString());
            return tree;
        }).orElseGet(() -> words.text("quote.revised", next));
    }

    private String revisions() {
        new HistoryWindow(area.getShell(), DeskSession.ofWorkbench(), words, words.text("quote.label", site.key().name()),
                site.document().id(), site.key(), part -> {
                    if (closed().isEmpty() && site.blocked().isEmpty()) {
                        site.document().put(site.key(), asItMayBeTyped((Quote) part));
                    }
                }).open();
        return "";
    }

    /** What went out, or was agreed to, keeps its number to itself: what is taken back of it goes on under the one of the draft. */
    private Quote asItMayBeTyped(Quote taken) {
        return quote().map(draft -> taken.asDraft(draft.revision())).orElse(taken);
    }
}
