package org.copperbook.office;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.check.HandingBack;
import org.copperbook.jobs.check.HandingBack.Open;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Offers what is out or has not come as the reason for which the job waits; one press writes it down. */
final class WaitingOffers {

    private final Composite area;
    private final PageSite site;
    private final Words words;
    private List<Open> shown = List.of();

    WaitingOffers(Composite area, PageSite site, Words words) {
        this.area = area;
        this.site = site;
        this.words = words;
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).extendedMargins(0, 0, 0, 10).applyTo(area);
    }

    void show() {
        boolean free = site.blocked().isEmpty();
        List<Open> open = free ? new HandingBack(site.document().job()).open() : List.of();
        if (open.equals(shown)) {
            return;
        }
        shown = open;
        for (Control c : area.getChildren()) {
            c.dispose();
        }
        Look look = Look.of(area);
        for (int i = 0; i < open.size(); i++) {
            Open offer = open.get(i);
            Label said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
            said.setText(words.text("waiting.offer", words.of(offer.waitingFor()), offer.words()));
            GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER)
                    .hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
            Button take = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
            take.setText(words.text("waiting.take"));
            take.setData(Desk.ID, "waiting.take." + i);
            take.addListener(SWT.Selection, e -> take(offer));
        }
        Reach.ensure(area);
        area.requestLayout();
    }

    private void take(Open offer) {
        ObjectNode waiting = site.json().mapper().createObjectNode().put("waitingFor", offer.waitingFor().name())
                .put("since", Instant.now().truncatedTo(ChronoUnit.MINUTES).toString()).put("reason", offer.words());
        site.document().change(site.key(), "/waiting", tree -> {
            tree.set("waiting", waiting);
            return tree;
        });
    }
}
