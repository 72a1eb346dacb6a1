package org.copperbook.office.handback;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.booking.Standing.How;
import org.copperbook.jobs.check.HandingBack;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Ends the job from the page where it is handed back: collected, handed back unrepaired, or scrapped. */
final class EndingArea {

    /** Where it is kept how the job ended, in the part that says where it stands. */
    static final String CLOSURE = "/closure";

    private static final PartKey STANDING = PartKey.of(PartKind.STANDING);
    private static final How[] WAYS = {How.COLLECTED, How.DECLINED, How.SCRAPPED};

    private final PageSite site;
    private final Words words;
    private final Map<How, Button> buttons = new EnumMap<>(How.class);
    private final Label said;
    private boolean saidEnded;

    EndingArea(Composite area, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        for (How how : WAYS) {
            Button b = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
            b.setText(words.text("ending." + how.name()));
            b.setData(Desk.ID, "ending." + how.name());
            b.addListener(SWT.Selection, e -> end(how));
            buttons.put(how, b);
        }
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "ending.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
    }

    void show() {
        Optional<Standing.Closure> closure = closure();
        boolean open = closure.isEmpty() && site.blocked().isEmpty();
        buttons.values().forEach(b -> b.setEnabled(open));
        Optional<Standing.Closure> ended = closure.filter(c -> c.how() != null);
        if (ended.isPresent()) {
            say(ended(ended.get().how(), ended.get().reason()));
        } else if (saidEnded) {
            say("");
        }
        saidEnded = ended.isPresent();
    }

    private String ended(How how, String reason) {
        return words.text(reason == null || reason.isBlank() ? "ending.ended" : "ending.endedBecause", words.of(how), reason);
    }

    /** Puts the cursor on the way that stands first, if one can still be chosen. */
    boolean focus() {
        return buttons.get(WAYS[0]).setFocus();
    }

    private Optional<Standing.Closure> closure() {
        return site.document().part(STANDING, Standing.class).map(Standing::closure);
    }

    private void end(How how) {
        HandingBack back = new HandingBack(site.document().job());
        Optional<String> refused = back.refused(how);
        if (refused.isPresent()) {
            say(refused.get());
            Grown.show(said);
            return;
        }
        ObjectNode closure = site.json().mapper().createObjectNode().put("how", how.name());
        Optional<String> because = how == How.COLLECTED ? back.unreleased() : Optional.empty();
        because.ifPresent(r -> closure.put("reason", words.text("ending.unreleased", r)));
        closure.put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
        site.who().ifPresent(w -> closure.put("by", w));
        site.document().changeFrom(site.key(), STANDING, CLOSURE, tree -> {
            if (!tree.has("schema")) {
                tree.put("schema", Standing.SCHEMA);
            }
            tree.set("closure", closure);
            return tree;
        }).ifPresent(this::say);
        show();
    }

    private void say(String text) {
        if (!text.equals(said.getText())) {
            said.setText(text);
            said.requestLayout();
        }
    }
}
