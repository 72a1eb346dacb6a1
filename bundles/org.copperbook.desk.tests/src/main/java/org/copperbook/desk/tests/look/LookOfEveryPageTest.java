package org.copperbook.desk.tests.look;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.BeginningInput;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.editor.OutlineRow;
import org.copperbook.desk.tests.window.Desktop;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IPerspectiveRegistry;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every page in light and dark, at desk and at bench size: no text is clipped, no control lies on another, text stands
 * out from its background, what takes the cursor has a name, and at bench size everything can be hit with a glove.
 * Pictures of the screens with a flaw stand beside the reports; of all screens with
 * {@code -Dcopperbook.tests.pictures=true}.
 */
class LookOfEveryPageTest {

    private static final String CALCULATOR = "org.copperbook.desk.view.calculator";
    private static final String PREFERENCES = "org.copperbook.desk.preferences";
    private static final String SHARED = PREFERENCES + ".shared";
    private static final String CHECKLIST = "org.copperbook.inspection.checklist";
    private static final int MOST_SCREENS = 12;
    private static final int LOOKS_AGAIN = 4;
    private static final int PAUSE_MILLIS = 500;

    private final Desktop desktop = new Desktop();
    private final Set<String> flaws = new LinkedHashSet<>();
    private Appearance appearance;

    @BeforeEach
    void somebodyWorks() {
        desktop.beSomebody();
    }

    @AfterEach
    void asItWas() {
        desktop.closeAll();
        Appearance.LIGHT.putOn(desktop);
    }

    /** One job, opened once and walked through in the system's look and in the one farthest from it. */
    @Test
    void everyPageOfARewind() throws Exception {
        JobEditor editor = desktop.open("2026-0001");
        for (Appearance now : List.of(Appearance.LIGHT, Appearance.DARK_BENCH)) {
            putOn(now);
            for (OutlineRow row : editor.outline()) {
                // The windings of the exciter have the pages of those of the main machine.
                if (row instanceof OutlineRow.Page p && !p.key().toString().contains("exciter")) {
                    editor.show(p.key());
                    desktop.settle(editor);
                    look("2026-0001 " + p.key(), partWith("outline"));
                }
            }
        }
        assertEquals("", String.join("\n", flaws));
    }

    @ParameterizedTest
    @EnumSource(Appearance.class)
    void whatStandsBesideTheJobs(Appearance now) throws Exception {
        putOn(now);
        IPerspectiveRegistry perspectives = PlatformUI.getWorkbench().getPerspectiveRegistry();
        for (String perspective : List.of(Desk.BENCH, Desk.TEST_BAY, Desk.FRONT_OFFICE)) {
            desktop.page().setPerspective(perspectives.findPerspectiveWithId(perspective));
            desktop.register();
            look("register " + perspective, partWith("register/jobs"));
        }
        desktop.page().openEditor(new BeginningInput(), Desk.BEGINNING);
        look("beginning", partWith("ready/bookIn"));
        board();
        desktop.command("org.copperbook.office.command.month");
        desktop.until("the month is added up", () -> !((Label) desktop.field("month.said")).getText().isEmpty());
        look("month", partWith("month.month"));
        stock();
        registers();
        desktop.page().showView(CALCULATOR).setFocus();
        look("calculator", partWith("calculator.tree"));
        desktop.page().hideView(desktop.page().findView(CALCULATOR));
        preferences("preferences", PREFERENCES);
        preferences("preferences shared", SHARED);
        preferences("preferences checklist", CHECKLIST);
        assertEquals("", String.join("\n", flaws));
    }

    private void registers() throws Exception {
        desktop.command("org.copperbook.office.command.registers");
        desktop.until("the instruments are read", () -> desktop.shows("/instruments/0/id"));
        CTabFolder tabs = (CTabFolder) desktop.field("registers.tabs");
        for (int i = 0; i < tabs.getItemCount(); i++) {
            tabs.setSelection(i);
            desktop.work();
            look("registers " + tabs.getItem(i).getText(), tabs.getParent());
        }
    }

    private void board() throws Exception {
        desktop.command("org.copperbook.office.command.board");
        CTabFolder tabs = (CTabFolder) desktop.field("board.tabs");
        for (int i = 0; i < tabs.getItemCount(); i++) {
            tabs.setSelection(i);
            desktop.pause(PAUSE_MILLIS);
            look("board " + tabs.getItem(i).getText(), tabs.getParent());
        }
    }

    private void stock() throws Exception {
        desktop.command("org.copperbook.office.command.stock");
        desktop.until("the items are listed", () -> ((Table) desktop.field("stock.items")).getItemCount() > 0);
        CTabFolder tabs = (CTabFolder) desktop.field("stock.tabs");
        for (int i = 0; i < tabs.getItemCount(); i++) {
            tabs.setSelection(i);
            desktop.pause(PAUSE_MILLIS);
            look("stock " + tabs.getItem(i).getText(), partWith("stock.find"));
        }
    }

    private void putOn(Appearance now) {
        appearance = now;
        now.putOn(desktop);
    }

    private void preferences(String place, String id) {
        PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(null, id, null, null);
        dialog.setBlockOnOpen(false);
        dialog.open();
        try {
            look(place, ((org.eclipse.jface.dialogs.IDialogPage) dialog.getSelectedPage()).getControl());
        } finally {
            dialog.close();
            desktop.work();
        }
    }

    /** The whole part of the window that holds a control. */
    private Control partWith(String id) {
        desktop.work();
        Control up = desktop.field(id);
        while (!(up.getParent() instanceof CTabFolder) && !(up.getParent() instanceof Shell)) {
            up = up.getParent();
        }
        return up;
    }

    private void look(String place, Control root) {
        note(place, lasting(() -> {
            List<Flaw> found = new ArrayList<>();
            found.addAll(Clipping.below(root));
            found.addAll(Overlapping.below(root));
            found.addAll(Names.below(root));
            if (appearance.isBench()) {
                found.addAll(Targets.below(root));
            }
            return found;
        }));
        List<ScrolledComposite> forms = Controls.below(root).stream().filter(ScrolledComposite.class::isInstance)
                .map(ScrolledComposite.class::cast).toList();
        Set<Object> judged = new HashSet<>();
        for (int screen = 1; screen <= MOST_SCREENS; screen++) {
            String name = appearance + " " + place + " " + screen;
            List<Flaw> pale = lasting(() -> pale(root, judged, name));
            note(place, pale);
            if (forms.stream().noneMatch(LookOfEveryPageTest::scrollOn)) {
                break;
            }
        }
    }

    /** What is pale on the screen shown now; what was judged without a flaw need not be again on the next screen. */
    private List<Flaw> pale(Control root, Set<Object> judged, String name) {
        repaint(root);
        ImageData pixels = Screen.pixels();
        Set<Object> now = new HashSet<>(judged);
        List<Flaw> pale = new Contrast(pixels, Display.getCurrent().getBounds().width, now).below(root);
        if (pale.isEmpty()) {
            judged.addAll(now);
        }
        if (!pale.isEmpty() || Screen.allWanted()) {
            Screen.keep(pixels, name);
        }
        return pale;
    }

    /**
     * What somebody sees who looks for a moment: on a busy machine the window system may still be painting or moving
     * when first looked at, and that is no flaw.
     */
    private List<Flaw> lasting(Supplier<List<Flaw>> look) {
        desktop.work();
        List<Flaw> found = look.get();
        for (int again = 0; again < LOOKS_AGAIN && !found.isEmpty(); again++) {
            desktop.pause(PAUSE_MILLIS);
            found = look.get();
        }
        return found;
    }

    /** Scrolls a form by what it shows; false at its end. */
    private static boolean scrollOn(ScrolledComposite form) {
        int before = form.getOrigin().y;
        form.setOrigin(0, before + form.getClientArea().height * 9 / 10);
        return form.getOrigin().y > before;
    }

    private void repaint(Control root) {
        root.redraw();
        for (int i = 0; i < 3; i++) {
            desktop.work();
            root.update();
        }
    }

    private void note(String place, List<Flaw> found) {
        found.forEach(f -> flaws.add(appearance + " " + place + ": " + f));
    }
}
