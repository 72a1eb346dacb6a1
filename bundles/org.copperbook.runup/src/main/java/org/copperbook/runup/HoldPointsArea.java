package org.copperbook.runup;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.form.EnterMovesOn;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The hold points of the job: state, what blocks each, who still has to sign, and where to sign or open again. */
final class HoldPointsArea {

    private final Composite area;
    private final PageSite site;
    private final Words words;
    private final SignOffDesk desk;
    private List<HoldPointState> shown = List.of();
    private String shownFor = "";

    HoldPointsArea(Composite area, PageSite site, Words words, SignOffDesk desk) {
        this.area = area;
        this.site = site;
        this.words = words;
        this.desk = desk;
        GridLayoutFactory.fillDefaults().spacing(0, 8).applyTo(area);
    }

    void show(List<HoldPointState> states) {
        String who = site.who().orElse("");
        if (states.equals(shown) && who.equals(shownFor)) {
            return;
        }
        shown = List.copyOf(states);
        shownFor = who;
        for (Control c : area.getChildren()) {
            c.dispose();
        }
        states.stream().filter(HoldPointState::applies).forEach(this::point);
        area.requestLayout();
    }

    private void point(HoldPointState state) {
        Look look = Look.of(area);
        Composite box = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(8, 2).applyTo(box);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(box);
        Label name = look.as(Look.Role.STRONG, new Label(box, SWT.NONE));
        name.setText(words.text("signoffs.pointState", words.of(state.point()), words.of(state.state())));
        GridDataFactory.fillDefaults().span(4, 1).applyTo(name);
        List<String> lines = new ArrayList<>(state.blockers());
        if (!state.changed().isEmpty()) {
            lines.add(words.text("signoffs.changed", String.join(", ", state.changed())));
        }
        if (!state.toSign().isEmpty() && state.state() != HoldPointState.State.NOT_REACHED) {
            lines.add(words.text("signoffs.toSign", String.join(", ", state.toSign())));
        }
        for (String line : lines) {
            wrapped(box, look, "\u2022 " + line);
        }
        if (state.state() == HoldPointState.State.READY || state.state() == HoldPointState.State.REOPENED) {
            asking(box, look, state, "sign", words.text("signoffs.noteHint"), words.text("signoffs.sign", atTheScreen()),
                    desk::sign);
        } else if (state.state() == HoldPointState.State.SIGNED) {
            asking(box, look, state, "reopen", words.text("signoffs.reopenHint"), words.text("signoffs.reopen"),
                    desk::reopen);
        }
    }

    private String atTheScreen() {
        return site.who().map(w -> site.people().getOrDefault(w, w)).orElse(words.text("signoffs.nobody"));
    }

    /** What is done to a hold point in a role, with words; gives the reasons of a refusal, empty when done. */
    private interface Act {
        List<String> on(HoldPoint point, Role role, String words);
    }

    private void asking(Composite box, Look look, HoldPointState state, String id, String hint, String button, Act act) {
        List<Role> roles = List.copyOf(desk.roles().keySet());
        Combo role = look.as(Look.Role.TEXT, new Combo(box, SWT.READ_ONLY));
        desk.roles().values().forEach(role::add);
        role.select(0);
        role.setData(Desk.ID, id + ".role." + state.point().name());
        SpokenName.give(role, words.text("signoffs.ofPoint", words.of(state.point()), words.text("signoffs.roleName")));
        Text note = EnterMovesOn.from(look.as(Look.Role.TEXT, new Text(box, SWT.BORDER)));
        note.setMessage(hint);
        note.setData(Desk.ID, id + ".note." + state.point().name());
        SpokenName.give(note, words.text("signoffs.ofPoint", words.of(state.point()), hint));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(note);
        Button done = look.as(Look.Role.STRONG, new Button(box, SWT.PUSH));
        done.setText(button);
        done.setData(Desk.ID, id + "." + state.point().name());
        Label said = wrapped(box, look, "");
        said.setForeground(look.palette().problem());
        said.setData(Desk.ID, id + ".said." + state.point().name());
        done.addListener(SWT.Selection, e -> {
            List<String> refused = act.on(state.point(),
                    role.getSelectionIndex() < 0 ? null : roles.get(role.getSelectionIndex()),
                    note.getText().isBlank() ? null : note.getText().strip());
            if (!said.isDisposed()) {
                said.setText(String.join("\n", refused));
                said.requestLayout();
            }
        });
    }

    private static Label wrapped(Composite box, Look look, String text) {
        Label l = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        l.setText(text);
        GridDataFactory.fillDefaults().span(4, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(l);
        return l;
    }
}
