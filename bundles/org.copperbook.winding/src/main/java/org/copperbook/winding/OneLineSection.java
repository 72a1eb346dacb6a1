package org.copperbook.winding;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.winding.BlindCounts;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.winding.capture.OneLine;
import org.copperbook.winding.capture.OneLineReader;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A regular winding said in one line: Enter fills the fields, lays the coil list out and goes on to the readings. */
final class OneLineSection implements WindingSection {

    private static final int CHARS = 60;

    private final OpenWinding winding;
    private final WindingReadings readings;
    private final OneLineReader reader;
    private final CoilListFromDescription layout = new CoilListFromDescription();
    private Text line;
    private Label said;

    OneLineSection(OpenWinding winding, WindingReadings readings) {
        this.winding = winding;
        this.readings = readings;
        this.reader = new OneLineReader(winding.words());
    }

    @Override
    public void build(Form here) {
        Composite area = here.area("line.title");
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        Look look = Look.of(area);
        line = look.as(Look.Role.TEXT, new Text(area, SWT.BORDER));
        line.setData(Desk.ID, "winding.oneLine");
        line.setMessage(winding.words().text(field() ? "line.exampleField" : "line.example"));
        line.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = winding.words().text("line.title");
            }

            @Override
            public void getDescription(AccessibleEvent e) {
                e.result = said.getText();
            }
        });
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(CHARS), SWT.DEFAULT).applyTo(line);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(CHARS), SWT.DEFAULT).applyTo(said);
        say(winding.words().text("line.hint"), false);
        line.addListener(SWT.Traverse, this::traverse);
        line.addListener(SWT.Help, e -> say(winding.words().text(field() ? "line.helpField" : "line.help"), false));
    }

    /** Whether nothing is laid out yet, so that the page begins here. */
    boolean begins() {
        return winding.rows("/groups") == 0 && winding.site().blocked().isEmpty()
                && winding.data().filter(BlindCounts::covers).isEmpty();
    }

    /** Puts the cursor here; a page that has not been laid out yet gets it when it is. */
    boolean focus() {
        line.setFocus();
        if (!line.isFocusControl()) {
            line.getDisplay().asyncExec(() -> {
                if (!line.isDisposed() && line.isVisible()) {
                    line.setFocus();
                }
            });
        }
        return true;
    }

    @Override
    public void changed() {
        line.setEditable(winding.site().blocked().isEmpty());
    }

    private boolean field() {
        return "FIELD_POLE".equals(winding.document().tree(winding.key()).path("coilType").asText());
    }

    private void traverse(Event e) {
        if (e.detail == SWT.TRAVERSE_RETURN) {
            e.doit = false;
            if (line.getText().isBlank()) {
                line.traverse(SWT.TRAVERSE_TAB_NEXT);
            } else {
                take(line.getText());
            }
        } else if (e.detail == SWT.TRAVERSE_ESCAPE) {
            e.doit = false;
            line.setText("");
            say(winding.words().text("line.hint"), false);
        }
    }

    private void take(String text) {
        Optional<String> blocked = winding.site().blocked();
        OneLineReader.Read read = reader.read(text);
        if (blocked.isPresent()) {
            say(blocked.get(), true);
        } else if (read instanceof OneLineReader.Read.Wrong wrong) {
            say(wrong.why(), true);
        } else if (read instanceof OneLineReader.Read.Said understood) {
            layOut(understood.line());
        }
    }

    /** Fields and coil list come in one step, and go in one. What does not suffice for a coil list fills fields. */
    private void layOut(OneLine of) {
        ObjectNode filled = of.into(winding.document().tree(winding.key()));
        ObjectNode next = filled;
        String missing = null;
        try {
            WindingData data = (WindingData) winding.site().json().read(winding.key(), filled);
            next = layout.laidOut(filled, data, of.turns().isEmpty() && data.turnsPerCoil() != null
                    ? java.util.List.of(data.turnsPerCoil()) : of.turns());
        } catch (CoilListFromDescription.NotEnough e) {
            missing = e.getMessage();
        } catch (BadRecordException e) {
            say(e.problem(), true);
            return;
        }
        ObjectNode put = next;
        Optional<String> refused = winding.document().change(winding.key(), "/groups", tree -> put);
        if (refused.isPresent()) {
            say(refused.get(), true);
        } else if (missing != null) {
            say(winding.words().text("line.filledOnly", missing), true);
        } else {
            line.setText("");
            say(winding.words().text("winding.laidOut", put.path("groups").size(), put.path("coilCount").asInt()),
                    false);
            readings.focus();
        }
    }

    private void say(String text, boolean wrong) {
        Look look = Look.of(said);
        said.setText(text);
        said.setForeground(wrong ? look.palette().problem() : look.palette().muted());
        said.requestLayout();
    }
}
