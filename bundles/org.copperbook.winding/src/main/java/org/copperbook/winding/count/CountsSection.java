package org.copperbook.winding.count;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.MomentEntry;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.check.CountRule;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.winding.BlindCounts;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.CountComparison;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.winding.OpenWinding;
import org.copperbook.winding.WindingSection;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Two counts of the old turns by two people, blind to each other until both are in. */
public final class CountsSection implements WindingSection {

    private static final int WIDE_CHARS = 60;

    private final OpenWinding winding;
    private final Words words;
    private Composite area;
    private Label standing;
    private Button begin;
    private Button fromCoilList;
    private Button takeAgreed;
    private TappingArea tapping;
    private DifferencesTable differences;

    public CountsSection(OpenWinding winding) {
        this.winding = winding;
        this.words = winding.words();
    }

    @Override
    public void build(Form here) {
        area = here.area("winding.counts");
        GridLayoutFactory.fillDefaults().spacing(0, 6).extendedMargins(0, 0, 0, 10).applyTo(area);
        Look look = Look.of(area);
        standing = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        standing.setData(Desk.ID, "count.standing");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(WIDE_CHARS), SWT.DEFAULT).applyTo(standing);
        Composite row = new Composite(area, SWT.NONE);
        RowLayout buttons = new RowLayout(SWT.HORIZONTAL);
        buttons.marginLeft = 0;
        buttons.spacing = 10;
        row.setLayout(buttons);
        begin = button(row, look, "count.begin", this::begin);
        fromCoilList = button(row, look, "count.fromCoilList", this::handInCoilList);
        takeAgreed = button(row, look, "count.takeAgreed", this::takeAgreed);
        tapping = new TappingArea(area, winding);
        differences = new DifferencesTable(area, words);
    }

    @Override
    public boolean shown(boolean covered) {
        return true;
    }

    @Override
    public void changed() {
        Optional<WindingData> data = winding.data();
        CountComparison compared = CountComparison.of(data.map(WindingData::counts).orElse(List.of()));
        boolean old = !data.map(WindingData::asWound).orElse(winding.key().name().endsWith("as-wound"));
        boolean mayEdit = winding.site().blocked().isEmpty();
        boolean ownOpen = OpenCount.own(winding).isPresent();
        boolean next = old && mayEdit && !ownOpen && data.map(CountRule::wanted).orElse(true);
        standing.setText(standing(data, compared, old));
        begin.setText(words.text("count.begin." + Math.min(3, data.map(CountRule::next).orElse(1))));
        show(begin, next);
        boolean first = data.map(d -> d.counts().isEmpty()).orElse(true);
        show(fromCoilList, next && first && data.map(CountsSection::hasTurns).orElse(false));
        show(takeAgreed, mayEdit && compared.stands() && data.map(d -> differs(d, compared)).orElse(false));
        tapping.refresh();
        if (data.isPresent() && compared.standing() != CountComparison.Standing.WAITING
                && !BlindCounts.covers(data.get())) {
            differences.show(data.get(), compared, this::name);
        } else {
            differences.hide();
        }
        Grown.tell(area);
    }

    /** Where the counts stand, without any figure of them. */
    private String standing(Optional<WindingData> data, CountComparison compared, boolean old) {
        if (!old) {
            return words.text("count.onlyOld");
        }
        StringBuilder text = new StringBuilder();
        for (TurnCount c : data.map(WindingData::counts).orElse(List.of())) {
            text.append(words.text(c.handedIn() ? "count.in" : "count.begun", c.ordinal(), name(c.by()),
                    c.at() == null ? ""
                    : new MomentEntry().show(TextNode.valueOf(c.at().toString()))))
                    .append('\n');
        }
        return text.append(words.text("count.is." + compared.standing().name(), compared.open().size())).toString();
    }

    private void begin() {
        Optional<String> refused = refused();
        if (refused.isPresent()) {
            say(refused.get());
            return;
        }
        OpenCount.begin(winding);
        tapping.focus();
    }

    /** Whoever entered the coil list counted it: it is handed in as that person's count. */
    private void handInCoilList() {
        Optional<String> refused = refused();
        if (refused.isPresent()) {
            say(refused.get());
            return;
        }
        WindingData data = winding.data().orElseThrow();
        OpenCount.begin(winding);
        OpenCount count = OpenCount.own(winding).orElseThrow();
        ArrayNode groups = winding.site().json().mapper().createArrayNode();
        for (CoilGroup g : data.groups()) {
            ArrayNode turns = groups.addObject().put("group", g.number()).putArray("turns");
            g.coils().forEach(c -> turns.add(c.turns()));
        }
        count.putAll(groups);
        int strands = data.wire().stream().mapToInt(w -> w.strands()).sum();
        if (strands > 0) {
            count.putStrands(strands);
            count.handIn();
        } else {
            tapping.focus();
        }
    }

    private void takeAgreed() {
        WindingData data = winding.data().orElseThrow();
        Map<Integer, List<Integer>> agreed = CountComparison.of(data).agreed();
        winding.document().change(winding.key(), "/groups", tree -> {
            tree.path("groups").forEach(g -> {
                List<Integer> turns = agreed.get(g.path("number").asInt());
                for (int i = 0; turns != null && i < Math.min(turns.size(), g.path("coils").size()); i++) {
                    ((ObjectNode) g.path("coils").get(i)).put("turns", turns.get(i));
                }
            });
            return tree;
        });
    }

    private Optional<String> refused() {
        String who = winding.site().who().orElse(null);
        if (who == null || winding.data().isEmpty()) {
            return who == null ? Optional.of(words.text("count.who")) : Optional.empty();
        }
        return CountRule.refuses(winding.data().get(), who, winding.site().shop(), Instant.now(),
                ZoneId.systemDefault());
    }

    private static boolean hasTurns(WindingData data) {
        return !data.groups().isEmpty() && data.groups().stream().allMatch(g -> !g.coils().isEmpty()
                && g.coils().stream().map(CapturedCoil::turns).allMatch(t -> t != null));
    }

    private static boolean differs(WindingData data, CountComparison compared) {
        return data.groups().stream().anyMatch(g -> compared.agreed().containsKey(g.number())
                && !compared.agreed().get(g.number()).equals(g.coils().stream().map(CapturedCoil::turns).toList()));
    }

    private String name(String key) {
        Person p = key == null ? null : winding.site().shop().people().get(key);
        return p == null ? words.text("count.nobody") : p.name();
    }

    private void say(String text) {
        standing.setText(text);
        area.requestLayout();
    }

    private static void show(Button b, boolean now) {
        b.setVisible(now);
        if (b.getLayoutData() instanceof RowData data) {
            data.exclude = !now;
        }
    }

    private Button button(Composite row, Look look, String key, Runnable action) {
        Button b = look.as(Look.Role.TEXT, new Button(row, SWT.PUSH));
        b.setText(words.text(key));
        b.setData(Desk.ID, key);
        b.setLayoutData(new RowData());
        b.addListener(SWT.Selection, e -> action.run());
        return b;
    }
}
