package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.winding.Windings;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Two people count the old turns in one window; neither sees the other's figures until both counts are in. */
class BlindCountsTest {

    private static final PartKey STATOR = PartKey.windingAsFound(WindingRole.MAIN_STATOR);
    /** A number of turns and of strands that stands nowhere else in the window. */
    private static final String TURNS = "8641";
    private static final String STRANDS = "753";

    private final Desktop desktop = new Desktop();
    private final CountedKeys keys = new CountedKeys(desktop);
    private JobEditor editor;
    private String first;
    private String second;
    private String third;

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void theSecondCounterSeesNothingOfTheFirstCountUntilBothAreIn() throws Exception {
        open();
        tapFirstCount();
        be(second);
        assertCovered("the second person, before beginning");
        assertTrue(((Label) desktop.field("count.standing")).getText().contains("Count 1"), "who counted is said");
        desktop.press("count.begin");
        assertCovered("the second person, counting");
        tap(TURNS, "8642", "8642", "8642");
        assertEquals(List.of(8641, 8642), counts().get(1).groups().get(0).turns());
        be(first);
        assertHidden("8642", "the first person sees nothing of the open second count");
        assertHidden(TURNS, "nor, switching back, of the first");
        be(second);
        typeInto("count.tapStrands", STRANDS);
        desktop.press("count.handIn");
        desktop.settle(editor);
        differencesAreListed();
    }

    private void differencesAreListed() throws Exception {
        assertEquals(Outcome.FAILS, verdict("main-stator.capture.counts").outcome());
        Table differences = (Table) desktop.field("count.differences");
        List<String> places = new ArrayList<>();
        for (TableItem item : differences.getItems()) {
            places.add(item.getText(0) + " " + item.getText(1) + "/" + item.getText(2));
        }
        assertEquals(List.of("Group 1, coil 2 8641/8642", "Group 2, coil 1 8641/8642", "Group 2, coil 2 8641/8642"),
                places);
        assertNotEquals(List.of(), capture().blockers());
        assertTrue(capture().blockers().stream().anyMatch(b -> b.contains("group 1 coil 2")),
                capture().blockers().toString());
        thirdCountSettles();
    }

    private void thirdCountSettles() {
        be(third);
        desktop.press("count.begin");
        tap(TURNS, TURNS, "8642", TURNS);
        desktop.press("count.handIn");
        desktop.settle(editor);
        assertEquals(3, counts().size());
        assertEquals(Outcome.MEETS, verdict("main-stator.capture.counts").outcome());
        assertFalse(capture().blockers().stream().anyMatch(b -> b.contains("two counts")), capture().blockers().toString());
        assertEquals(Outcome.FAILS, verdict("main-stator.capture.coil-list").outcome(), "the list has another turn");
        desktop.press("count.takeAgreed");
        desktop.settle(editor);
        assertEquals(Outcome.MEETS, verdict("main-stator.capture.coil-list").outcome());
        assertEquals(List.of(8642, 8641), winding().groups().get(1).coils().stream().map(c -> c.turns()).toList());
    }

    @Test
    void theSamePersonMayNotCountTwice() throws Exception {
        open();
        tapFirstCount();
        desktop.press("count.begin");
        assertEquals(1, counts().size());
        assertTrue(((Label) desktop.field("count.standing")).getText().contains("Another person"));
    }

    @Test
    void countsSavedAtTheSameTimeAreBothKeptAndNeitherIsShown() throws Exception {
        open();
        editor.document().set(PartKey.of(PartKind.BOOKING), "/customer", TextNode.valueOf("Orrin Mills"));
        desktop.page().saveEditor(editor, false);
        desktop.until("the winding is saved", () -> !editor.isDirty());
        int before = editor.document().baseRevision(STATOR);
        tapFirstCount();
        WindingData saved = winding();
        ObjectNode elsewhere = desktop.session().json().tree(saved);
        ((ObjectNode) elsewhere.path("counts").path(0)).put("by", second).put("strands", 754);
        desktop.session().store().save(editor.document().id(), STATOR,
                (WindingData) desktop.session().json().read(STATOR, elsewhere), before, second, "");
        desktop.page().saveEditor(editor, false);
        desktop.until("both counts are saved", () -> counts().size() == 2 && !editor.isDirty());
        assertEquals(List.of(), editor.document().conflicts(), "nobody has to choose");
        assertEquals(List.of(second, first), counts().stream().map(TurnCount::by).toList());
        assertEquals(List.of(754, Integer.valueOf(STRANDS)), counts().stream().map(TurnCount::strands).toList());
        assertEquals(winding(), desktop.session().store().current(editor.document().id(), STATOR).orElseThrow().part());
    }

    @Test
    void aWrongTurnIsSaidBesideTheFieldAndArrowsGoBackToCorrectOne() throws Exception {
        open();
        be(first);
        desktop.press("count.begin");
        tap(TURNS);
        keys.type("zero");
        keys.press(SWT.CR);
        assertTrue(((Label) desktop.field("count.said")).getText().contains("zero"));
        assertEquals(List.of(8641), counts().get(0).groups().get(0).turns());
        keys.press(SWT.ARROW_UP);
        assertEquals(TURNS, ((Text) desktop.field("count.tap")).getText());
        tap("17", "18");
        assertEquals(List.of(17, 18), counts().get(0).groups().get(0).turns());
    }

    /** A two-group winding, all coils of 8641 turns and 753 wires in hand, as the first person entered it. */
    private void open() throws Exception {
        List<String> people = new ArrayList<>();
        desktop.session().shop().people().forEach((k, p) -> {
            if (p.active() && !p.roles().isEmpty()) {
                people.add(k);
            }
        });
        first = people.get(0);
        second = people.get(1);
        third = people.get(2);
        desktop.session().who(first);
        desktop.command("org.copperbook.desk.command.newJob");
        editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        var tree = new Windings().beginning(STATOR, editor.document().job(), desktop.session().json());
        tree.put("slots", 4).put("poles", 2).put("phases", 1).put("layers", 2).put("span", "1-3")
                .put("turnsPerCoil", Integer.parseInt(TURNS));
        tree.putArray("wire").addObject().put("size", "0.50 mm").put("strands", Integer.parseInt(STRANDS));
        var groups = tree.putArray("groups");
        for (int g = 1; g <= 2; g++) {
            var coils = groups.addObject().put("number", g).put("phase", "U").putArray("coils");
            for (int c = 1; c <= 2; c++) {
                coils.addObject().put("goSlot", 2 * g - 2 + c).put("returnSlot", (2 * g + c - 1) % 4 + 1)
                        .put("turns", Integer.parseInt(TURNS));
            }
        }
        editor.document().put(STATOR, desktop.session().json().read(STATOR, tree));
        editor.begin(STATOR);
        desktop.settle(editor);
        be(first);
        assertTrue(shown().stream().anyMatch(t -> t.contains(TURNS)), "the coil list is on the screen before any count");
    }

    private void tapFirstCount() {
        desktop.press("count.begin");
        assertHidden(TURNS, "the coil list is covered as soon as a count begins, for the first person too");
        desktop.until("the cursor stands where turns are tapped", () -> has("count.tap"));
        tap(TURNS, TURNS, TURNS, TURNS);
        desktop.until("after the last coil come the strands", () -> has("count.tapStrands"));
        keys.type(STRANDS);
        keys.press(SWT.CR);
        desktop.until("then the count can be handed in", () -> has("count.handIn"));
        desktop.press("count.handIn");
        desktop.settle(editor);
        assertEquals(1, counts().stream().filter(TurnCount::handedIn).count());
        assertEquals(first, counts().get(0).by());
        assertCovered("the first person, after handing in");
    }

    private void tap(String... turns) {
        desktop.until("turns can be tapped", () -> has("count.tap") || desktop.field("count.tap").forceFocus());
        for (String t : turns) {
            keys.type(t);
            keys.press(SWT.CR);
        }
        desktop.work();
    }

    private void typeInto(String id, String text) {
        desktop.until(id + " has the cursor", () -> has(id) || desktop.field(id).forceFocus());
        keys.type(text);
        keys.press(SWT.CR);
    }

    private static boolean has(String id) {
        Control c = Display.getCurrent().getFocusControl();
        return c != null && id.equals(c.getData(Desk.ID));
    }

    private void be(String person) {
        desktop.session().who(person);
        desktop.work();
        desktop.settle(editor);
    }

    private void assertCovered(String who) {
        assertHidden(TURNS, who);
        assertHidden(STRANDS, who);
    }

    /** Nothing in the window says it, nor do the verdicts and hold points behind it. */
    private void assertHidden(String figure, String who) {
        assertEquals(List.of(), shown().stream().filter(t -> t.contains(figure)).toList(), who);
        assertEquals(List.of(), editor.judgement().verdicts().stream()
                .filter(v -> (v.title() + v.reason() + v.limitText() + v.settle() + v.value()).contains(figure)).toList(), who);
        assertFalse(editor.judgement().holdPoints().toString().contains(figure), who);
        assertFalse(editor.outline().toString().contains(figure), who);
    }

    /** Every text that is on the screen now. */
    private static List<String> shown() {
        List<String> all = new ArrayList<>();
        for (Control shell : Display.getCurrent().getShells()) {
            texts(shell, all);
        }
        return all;
    }

    private static void texts(Control at, List<String> all) {
        if (!at.isVisible()) {
            return;
        }
        if (at instanceof Text t) {
            all.add(t.getText());
        } else if (at instanceof Label l) {
            all.add(l.getText());
        } else if (at instanceof Button b) {
            all.add(b.getText());
        } else if (at instanceof Combo c) {
            all.add(c.getText());
        } else if (at instanceof Table t) {
            for (TableItem item : t.getItems()) {
                for (int i = 0; i < t.getColumnCount(); i++) {
                    all.add(item.getText(i));
                }
            }
        }
        if (at.getToolTipText() != null) {
            all.add(at.getToolTipText());
        }
        if (at instanceof Composite c) {
            for (Control child : c.getChildren()) {
                texts(child, all);
            }
        }
    }

    private HoldPointState capture() {
        return editor.judgement().holdPoints().stream().filter(s -> s.point() == HoldPoint.CAPTURE_COMPLETE).findFirst()
                .orElseThrow();
    }

    private Verdict verdict(String id) {
        return editor.judgement().verdicts().stream().filter(v -> v.id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError(id + " is not among " + editor.judgement().verdicts().stream()
                        .map(Verdict::id).toList()));
    }

    private WindingData winding() {
        return (WindingData) editor.document().part(STATOR).orElseThrow();
    }

    private List<TurnCount> counts() {
        return winding().counts();
    }
}
