package org.copperbook.desk.tests.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.copperbook.desk.document.FieldDifference;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.editor.OutlineRow;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.register.RegisterView;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.store.Intake;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every page of a job just begun, and every other kind of page of a whole one, is walked with Tab alone: every field,
 * button and grid is reached, in reading order, and left again; a grid is left behind its last column, and from anywhere
 * in it with Ctrl+Tab.
 */
class EveryPageByTabTest {

    private final Desktop desktop = new Desktop();
    private final Walker walker = new Walker(desktop);

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @TestFactory
    Stream<DynamicTest> everyPageOfAJobJustBegunIsWalkedForwardAndBack() throws Exception {
        desktop.beSomebody();
        desktop.command("org.copperbook.desk.command.newJob");
        JobEditor editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        return pages(editor);
    }

    private Stream<DynamicTest> pages(JobEditor editor) {
        List<PartKey> pages = keys(editor);
        assertTrue(pages.size() >= 8, pages.toString());
        editor.show(pages.get(pages.size() - 1));
        editor.setFocus();
        return pages.stream().map(p -> DynamicTest.dynamicTest(p.toString(), () -> walk(editor, p)));
    }

    private static List<PartKey> keys(JobEditor editor) {
        return editor.outline().stream().filter(OutlineRow.Page.class::isInstance)
                .map(row -> ((OutlineRow.Page) row).key()).toList();
    }

    /** The full rewind of the demo workshop with its release taken off: windings found and wound, and a quote. */
    @TestFactory
    Stream<DynamicTest> thePagesOfAWholeJobAreWalkedToo() throws Exception {
        desktop.beSomebody();
        JobEditor editor = desktop.open(openCopy("2026-0001"));
        List<PartKey> pages = keys(editor);
        List<PartKey> walked = List.of(PartKey.windingAsFound(WindingRole.MAIN_STATOR),
                PartKey.windingAsWound(WindingRole.MAIN_STATOR), PartKey.windingAsFound(WindingRole.MAIN_ROTOR),
                PartKey.quote(1));
        assertTrue(pages.containsAll(walked), pages.toString());
        return walked.stream().map(p -> DynamicTest.dynamicTest(p.toString(), () -> {
            editor.show(pages.get(pages.indexOf(p) - 1));
            editor.setFocus();
            desktop.settle(editor);
            walk(editor, p);
        }));
    }

    /** Nothing of a released job can be typed into, and yet the keys go from page to page. */
    @Test
    void aClosedPageLeavesTheCursorWhereTheKeysStillWork() throws Exception {
        desktop.beSomebody();
        JobEditor editor = desktop.open("2026-0001");
        List<PartKey> pages = keys(editor);
        editor.show(pages.get(0));
        editor.setFocus();
        for (PartKey next : pages.subList(1, 6)) {
            walker.press(SWT.CTRL, SWT.PAGE_DOWN, () -> editor.shown().filter(next::equals).isPresent());
            desktop.settle(editor);
            desktop.until("the cursor stands somewhere", () -> walker.here() instanceof Table
                    || PageStops.around(walker.here()).isPresent());
        }
    }

    /** The register without a mouse: type to filter, go down into the list, open with Enter. */
    @Test
    void aJobIsFoundAndOpenedFromTheRegisterByKeys() throws Exception {
        RegisterView register = desktop.register();
        register.filter().setText("");
        register.setFocus();
        desktop.until("the filter has the cursor", () -> walker.here() == register.filter());
        walker.writes("2026-0001");
        desktop.until("one job is left", () -> register.table().getItemCount() == 1);
        walker.press(SWT.ARROW_DOWN);
        desktop.until("the cursor is in the list", () -> walker.here() == register.table()
                && register.table().getSelectionIndex() == 0);
        walker.press(SWT.CR);
        desktop.until("the job is open", () -> desktop.activeEditor() instanceof JobEditor);
        assertEquals("2026-0001", ((JobEditor) desktop.activeEditor()).getPartName());
        register.filter().setText("");
    }

    private String openCopy(String number) {
        JobStore store = desktop.session().store();
        Job released = store.load(store.idOf(number).orElseThrow());
        Map<PartKey, Part> parts = new TreeMap<>(released.parts());
        parts.remove(PartKey.of(PartKind.ISSUED_COPIES));
        SignOffs s = released.signOffs().orElseThrow();
        parts.put(PartKey.of(PartKind.SIGN_OFFS), new SignOffs(s.schema(), s.signatures().stream()
                .filter(x -> x.point() != HoldPoint.RELEASE).toList(), s.concessions(), s.judgements(), s.reopenings(),
                s.cautions(), s.more()));
        Job open = new Job(UUID.randomUUID().toString(), "", parts);
        return store.takeIn(new Intake(Map.of(), List.of(), List.of(), List.of(open)), desktop.beSomebody(),
                "taken in by a test", NumberTaken.GIVE_NEW_NUMBER).get(0).number();
    }

    private void walk(JobEditor editor, PartKey page) {
        walker.press(SWT.CTRL, SWT.PAGE_DOWN, () -> editor.shown().filter(page::equals).isPresent());
        desktop.settle(editor);
        desktop.until("the page has the cursor", () -> PageStops.around(walker.here()).isPresent());
        PageStops stops = new PageStops(walker.here());
        List<Control> all = stops.all();
        assertEquals(PageStops.name(all.get(0)), walker.at(), "Ctrl+PageDown goes to the first field of the page");
        List<Control> forward = through(stops, all.get(0), walker::tab);
        // Pictures are stops of their own between these.
        assertEquals(names(all), names(forward.stream().filter(all::contains).toList()),
                "Tab reaches everything, and nothing twice");
        for (int i = 1; i < forward.size(); i++) {
            assertTrue(stops.readAfter(forward.get(i), forward.get(i - 1)), PageStops.name(forward.get(i)) + " "
                    + stops.place(forward.get(i)) + " is read after " + PageStops.name(forward.get(i - 1)) + " "
                    + stops.place(forward.get(i - 1)));
        }
        walker.back();
        List<Control> back = through(stops, forward.get(forward.size() - 1), walker::back);
        List<Control> reversed = new ArrayList<>(all);
        Collections.reverse(reversed);
        assertEquals(names(reversed), names(back.stream().filter(all::contains).toList()),
                "Shift+Tab goes the same way back");
        walker.to(PageStops.name(forward.get(0)));
        for (Control c : forward) {
            if (c instanceof Table t && RecordGrid.of(t) != null) {
                walker.to(PageStops.name(c)).onward();
            }
        }
        assertEquals(List.of(), changes(editor), "walking changes nothing");
        assertFalse(editor.isDirty(), "walking leaves nothing to save");
    }

    /** Fields that differ from what the store holds. */
    private List<FieldDifference> changes(JobEditor editor) {
        var json = desktop.session().json();
        return editor.document().pending().stream().flatMap(p -> {
            ObjectNode stored = desktop.session().store().current(editor.document().id(), p.key())
                    .map(s -> json.tree(s.part())).orElseGet(json.mapper()::createObjectNode);
            return FieldDifference.between(stored, json.tree(p.part()), stored).stream();
        }).toList();
    }

    /** Goes on from the first stop of a page until the page is left. */
    private List<Control> through(PageStops stops, Control first, Runnable step) {
        assertTrue(walker.here() == first, walker.at() + " has the focus, not " + PageStops.name(first));
        List<Control> passed = new ArrayList<>(List.of(first));
        int presses = 0;
        while (true) {
            step.run();
            Control now = walker.here();
            if (!stops.holds(now)) {
                return passed;
            }
            if (now != passed.get(passed.size() - 1)) {
                passed.add(now);
            }
            if (++presses > 1000) {
                fail("the page is never left; passed " + names(passed));
            }
        }
    }

    private static List<String> names(List<Control> controls) {
        return controls.stream().map(PageStops::name).toList();
    }
}
