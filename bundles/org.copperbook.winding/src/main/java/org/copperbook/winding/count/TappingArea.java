package org.copperbook.winding.count;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.winding.OpenWinding;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Where turns are tapped in coil by coil: digits and Enter, arrows to go back; the place to count stands above. */
final class TappingArea {

    private static final int MOST_TURNS = 100_000;
    private static final int MOST_STRANDS = 999;
    private static final int NUMBER_CHARS = 12;
    private static final int WIDE_CHARS = 60;

    private final OpenWinding winding;
    private final Words words;
    private final Composite box;
    private final Label place;
    private final Text turns;
    private final Label group;
    private final Text strands;
    private final Text whole;
    private final Label said;
    private final Button handIn;
    private int at;
    private int showing = -1;

    TappingArea(Composite parent, OpenWinding winding) {
        this.winding = winding;
        this.words = winding.words();
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(10, 6).applyTo(box);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(box);
        box.setVisible(false);
        place = look.as(Look.Role.HEADING, new Label(box, SWT.WRAP));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(WIDE_CHARS), SWT.DEFAULT)
                .applyTo(place);
        turns = field(look, "count.tap", "count.turnsOfCoil", Look.Role.HEADING);
        group = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(WIDE_CHARS), SWT.DEFAULT)
                .applyTo(group);
        strands = field(look, "count.tapStrands", "count.strands", Look.Role.HEADING);
        whole = field(look, "count.whole", "count.wholeLine", Look.Role.TEXT);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(whole);
        said = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        said.setData(Desk.ID, "count.said");
        said.setForeground(look.palette().problem());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(WIDE_CHARS), SWT.DEFAULT)
                .applyTo(said);
        handIn = look.as(Look.Role.STRONG, new Button(box, SWT.PUSH));
        handIn.setText(words.text("count.handIn"));
        handIn.setData(Desk.ID, "count.handIn");
        handIn.addListener(SWT.Selection, e -> handIn());
        Button giveUp = look.as(Look.Role.TEXT, new Button(box, SWT.PUSH));
        giveUp.setText(words.text("count.giveUp"));
        giveUp.setData(Desk.ID, "count.giveUp");
        giveUp.addListener(SWT.Selection, e -> OpenCount.own(winding).ifPresent(OpenCount::giveUp));
        GridDataFactory.swtDefaults().applyTo(giveUp);
        turns.addListener(SWT.Traverse, e -> onReturn(e, this::tapped));
        turns.addListener(SWT.KeyDown, this::arrows);
        strands.addListener(SWT.Traverse, e -> onReturn(e, this::strandsTapped));
        whole.addListener(SWT.Traverse, e -> onReturn(e, this::wholeTyped));
    }

    /** Shows the open count of whoever sits at the screen; hides and forgets everything when there is none. */
    void refresh() {
        Optional<OpenCount> own = OpenCount.own(winding).filter(c -> winding.site().blocked().isEmpty());
        boolean shown = own.isPresent();
        int count = own.map(OpenCount::ordinal).orElse(-1);
        if (count != showing) {
            showing = count;
            at = own.map(OpenCount::firstUncounted).orElse(0);
            strands.setText(own.flatMap(OpenCount::strands).map(String::valueOf).orElse(""));
            turns.setText("");
            whole.setText("");
            said.setText("");
            group.setText("");
            place.setText("");
        }
        if (shown != box.getVisible()) {
            box.setVisible(shown);
            ((GridData) box.getLayoutData()).exclude = !shown;
            box.requestLayout();
        }
        own.ifPresent(this::show);
    }

    /** Puts the cursor where the next coil is tapped. */
    void focus() {
        turns.setFocus();
    }

    private void show(OpenCount count) {
        List<CountPlace> places = count.places();
        boolean coils = !places.isEmpty();
        turns.setEnabled(coils);
        at = Math.min(at, places.size());
        if (!coils) {
            place.setText(words.text(count.ordinal() > 2 ? "count.strandsOnly" : "count.noCoils"));
        } else if (at == places.size()) {
            place.setText(words.text("count.allTapped"));
            group.setText("");
        } else {
            CountPlace p = places.get(at);
            String slots = p.goSlot() == null ? "" : words.text("count.slots", p.goSlot() + "-" + p.returnSlot());
            place.setText(words.text("count.place", Integer.toString(p.group()), p.phase() == null ? "" : p.phase(),
                    p.coil(), p.coils(), slots).replace("  ", " "));
            group.setText(words.text("count.soFar", count.turnsOf(p.group()).orElse(List.of()).stream()
                    .map(String::valueOf).collect(Collectors.joining(" "))));
        }
        strands.setEnabled(count.wantsStrands());
        handIn.setEnabled(count.isComplete());
        place.requestLayout();
        group.requestLayout();
    }

    private void tapped() {
        OpenCount count = OpenCount.own(winding).orElseThrow();
        List<CountPlace> places = count.places();
        if (at >= places.size()) {
            strands.setFocus();
            return;
        }
        CountPlace p = places.get(at);
        Integer number = number(turns.getText(), MOST_TURNS);
        if (number == null) {
            say(turns.getText().isBlank() ? words.text("count.needsTurns")
                    : words.text("count.noTurns", turns.getText().strip(), MOST_TURNS));
            turns.selectAll();
        } else if (!count.put(p.group(), p.coil(), number)) {
            say(words.text("count.inOrder"));
        } else {
            say("");
            go(at + 1);
            if (at == places.size()) {
                (strands.isEnabled() ? strands : handIn).setFocus();
            }
        }
    }

    private void strandsTapped() {
        Integer number = number(strands.getText(), MOST_STRANDS);
        if (number == null) {
            say(words.text("count.noStrands", strands.getText().strip(), MOST_STRANDS));
            strands.selectAll();
            return;
        }
        say("");
        OpenCount count = OpenCount.own(winding).orElseThrow();
        count.putStrands(number);
        if (handIn.isEnabled()) {
            handIn.setFocus();
        } else {
            go(count.firstUncounted());
            turns.setFocus();
        }
    }

    /** A count noted on paper comes in one line. */
    private void wholeTyped() {
        Typed typed = new CountedTurnsEntry().read(whole.getText());
        if (typed instanceof Typed.Understood u) {
            say("");
            OpenCount count = OpenCount.own(winding).orElseThrow();
            count.putAll(u.node());
            whole.setText(u.echo());
            go(count.firstUncounted());
            (count.firstUncounted() < count.places().size() || !strands.isEnabled() ? turns : strands).setFocus();
        } else if (typed instanceof Typed.Wrong w) {
            say(w.why());
        } else {
            whole.traverse(SWT.TRAVERSE_TAB_NEXT);
        }
    }

    private void handIn() {
        OpenCount.own(winding).filter(OpenCount::isComplete).ifPresent(OpenCount::handIn);
    }

    private void arrows(Event e) {
        if (e.keyCode == SWT.ARROW_UP || e.keyCode == SWT.ARROW_DOWN) {
            e.doit = false;
            go(at + (e.keyCode == SWT.ARROW_UP ? -1 : 1));
        }
    }

    /** Goes to a coil; what was tapped there stands marked, so that digits replace it. */
    private void go(int next) {
        OpenCount.own(winding).ifPresent(count -> {
            List<CountPlace> places = count.places();
            at = Math.max(0, Math.min(next, places.size()));
            turns.setText(at == places.size() ? "" : count.turns(places.get(at).group(), places.get(at).coil())
                    .map(String::valueOf).orElse(""));
            turns.selectAll();
            show(count);
        });
    }

    private static Integer number(String text, int most) {
        String digits = text.strip();
        if (!digits.matches("\\d{1,6}")) {
            return null;
        }
        int number = Integer.parseInt(digits);
        return number >= 1 && number <= most ? number : null;
    }

    private void say(String text) {
        said.setText(text);
        said.requestLayout();
    }

    private static void onReturn(Event e, Runnable action) {
        if (e.detail == SWT.TRAVERSE_RETURN) {
            e.doit = false;
            action.run();
        }
    }

    private Text field(Look look, String id, String key, Look.Role role) {
        Label label = look.as(Look.Role.TEXT, new Label(box, SWT.NONE));
        label.setText(words.text(key));
        GridDataFactory.swtDefaults().applyTo(label);
        Text text = look.as(role, new Text(box, SWT.BORDER));
        text.setData(Desk.ID, id);
        text.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = words.text(key);
            }

            @Override
            public void getDescription(AccessibleEvent e) {
                e.result = place.getText();
            }
        });
        text.addListener(SWT.FocusIn, e -> text.selectAll());
        GridDataFactory.swtDefaults().hint(look.chars(NUMBER_CHARS), SWT.DEFAULT).applyTo(text);
        return text;
    }
}
