package org.copperbook.desk.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.Optional;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import org.copperbook.desk.document.Conflict;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.people.SignInDialog;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.PartKey;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** The strips at the top of an open job: who works here, what a crash left, conflicts, why a part is closed. */
final class JobStrips {

    private final Composite box;
    private final DeskSession session;
    private final Map<PartKey, ConflictStrip> conflicts = new LinkedHashMap<>();
    private Strip who;
    private boolean whoSignsIn;
    private Strip others;
    private Strip left;
    private Strip blocked;
    private String blockedBy;
    private Strip failure;
    private Strip written;
    private IntConsumer moved = by -> { };

    JobStrips(Composite parent, DeskSession session) {
        this.session = session;
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 1).applyTo(box);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(box);
    }

    /** What is told by how much all below the strips has moved down, in pixels; up is below zero. */
    void onMoved(IntConsumer listener) {
        moved = listener;
    }

    /** Asks who works here, until somebody has said so. */
    void askWho() {
        Map<String, String> people = people();
        if (who != null && whoSignsIn != session.hasSecrets()) {
            who.dispose();
            who = null;
        }
        whoSignsIn = session.hasSecrets();
        if (session.who().isPresent() || people.isEmpty()) {
            if (who != null) {
                who.dispose();
                who = null;
            }
        } else if (who == null) {
            if (session.hasSecrets()) {
                who = new Strip(box, "who", false).text(DeskWords.text("who.signIn"))
                        .button("who/signIn", DeskWords.text("signIn.do"), () -> SignInDialog.open(null));
                layout();
                return;
            }
            who = new Strip(box, "who", false).text(DeskWords.text("who.ask"));
            List<String> keys = new ArrayList<>(people.keySet());
            Combo list = who.list("who/list", people.values().toArray(String[]::new));
            list.addListener(SWT.Selection, e -> session.who(keys.get(list.getSelectionIndex())));
        }
        layout();
    }

    /** Says whose unsaved text this is, and lets that person sign in; null takes it away. */
    void typedBy(String key) {
        if (others != null) {
            others.dispose();
            others = null;
        }
        if (key != null) {
            others = new Strip(box, "others", true)
                    .text(DeskWords.text("others.said", session.shop().nameOf(key)))
                    .button("others/signIn", DeskWords.text("others.signIn", session.shop().nameOf(key)),
                            () -> SignInDialog.open(key));
        }
        layout();
    }

    /**
     * Offers what a crash left behind. Where people sign in, only who typed it throws it away.
     *
     * @param authors person keys of who typed it, as far as known
     */
    void offerLeft(List<String> partLabels, Set<String> authors, Runnable putBack, Runnable throwAway) {
        List<String> names = authors.stream().map(session.shop()::nameOf).toList();
        left = new Strip(box, "left", false)
                .text(names.isEmpty() ? DeskWords.text("left.said", String.join(", ", partLabels))
                        : DeskWords.text("left.saidOf", String.join(", ", partLabels), String.join(", ", names)))
                .button("left/putBack", DeskWords.text("left.putBack"), () -> {
                    closeLeft();
                    putBack.run();
                })
                .button("left/throwAway", DeskWords.text("left.throwAway"), () -> {
                    Optional<String> other = authors.stream()
                            .filter(a -> session.hasSecrets() && !session.who().filter(a::equals).isPresent()).findFirst();
                    if (other.isPresent()) {
                        failed(DeskWords.text("left.notYours", session.shop().nameOf(other.get())), () -> null);
                        return;
                    }
                    closeLeft();
                    throwAway.run();
                });
        layout();
    }

    /** Says why the part shown cannot be edited, or nothing. */
    void blocked(String why) {
        if (Objects.equals(why, blockedBy)) {
            return; // Asked each time that a page is turned; laying out the whole page for nothing is felt.
        }
        blockedBy = why;
        if (blocked != null) {
            blocked.dispose();
            blocked = null;
        }
        if (why != null) {
            blocked = new Strip(box, "blocked", true).text(why);
        }
        layout();
    }

    /** Says what went wrong, what was kept and what to do; null takes it away. */
    void failed(String words, Supplier<Runnable> again) {
        if (failure != null) {
            failure.dispose();
            failure = null;
        }
        if (words != null) {
            failure = new Strip(box, "failure", true).text(words);
            Runnable retry = again.get();
            if (retry != null) {
                failure.button("failure/again", DeskWords.text("save.again"), retry);
            }
        }
        layout();
    }

    /** Says which texts were not understood and so not saved, and offers to take them out. */
    void notUnderstood(String words, Runnable takeOut) {
        failed(words, () -> null);
        failure.button("failure/takeOut", DeskWords.text("save.takeOut"), takeOut);
        layout();
    }

    /** Says that a workbook has been written, and offers to open it. */
    void wrote(Path workbook) {
        if (written != null) {
            written.dispose();
        }
        written = new Strip(box, "written", false).text(DeskWords.text("workbook.written", workbook))
                .button("written/open", DeskWords.text("workbook.open"), () -> Program.launch(workbook.toString()))
                .button("written/close", DeskWords.text("strip.close"), () -> {
                    written.dispose();
                    written = null;
                    layout();
                });
        layout();
    }

    /**
     * Shows the conflicts that are not settled.
     *
     * @param label name of a part
     * @param words how the differences are told
     */
    void conflicts(JobDocument document, Function<PartKey, String> label, DifferenceWords words) {
        List<PartKey> open = document.conflicts().stream().map(Conflict::key).toList();
        conflicts.keySet().stream().filter(k -> !open.contains(k)).toList().forEach(k -> conflicts.remove(k).dispose());
        for (Conflict c : document.conflicts()) {
            conflicts.computeIfAbsent(c.key(), k -> new ConflictStrip(box, c, label.apply(k),
                    session.shop().nameOf(c.who()), words, take -> document.settle(c, take)
                            .ifPresent(problem -> failed(DeskWords.text("conflict.cannot", problem), () -> null))));
        }
        layout();
    }

    private Map<String, String> people() {
        Map<String, String> names = new LinkedHashMap<>();
        session.shop().people().forEach((k, p) -> {
            if (p.active() && !p.roles().isEmpty()) {
                names.put(k, p.name());
            }
        });
        return names;
    }

    private void closeLeft() {
        left.dispose();
        left = null;
        layout();
    }

    private void layout() {
        boolean any = box.getChildren().length > 0;
        Reach.ensure(box);
        int before = box.getVisible() ? box.getSize().y : 0;
        box.setVisible(any);
        ((GridData) box.getLayoutData()).exclude = !any;
        box.getParent().layout(true, true);
        int by = (any ? box.getSize().y : 0) - before;
        if (by != 0) {
            moved.accept(by);
        }
    }
}
