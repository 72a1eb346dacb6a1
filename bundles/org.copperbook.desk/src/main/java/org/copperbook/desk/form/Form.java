package org.copperbook.desk.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.copperbook.desk.entry.ChoiceEntry;
import org.copperbook.desk.grid.GridColumns;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.photo.PhotoDoor;
import org.copperbook.desk.photo.PhotosArea;
import org.copperbook.desk.picture.PictureHeading;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Narrow;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;

/**
 * The scrolling form of a page: titled sections of fields, grids, and areas of the page's own. Wide windows show fields
 * in two columns; the reading order stays line by line.
 */
public final class Form {

    private static final int LABEL_CHARS = 24;
    private static final int COLUMN_CHARS = 62;
    private static final int MARGIN = 12;
    /** A page that needs its scroll bar only because of the bar's own width would go to and fro for ever. */
    private static final int MOST_TURNS = 3;

    private final ScrolledComposite scroll;
    private final Composite body;
    private final PageSite site;
    private final Words words;
    private final List<FormField> fields = new ArrayList<>();
    private final List<RecordGrid> grids = new ArrayList<>();
    private final List<Composite> flowing = new ArrayList<>();
    private boolean editable = true;
    private Predicate<String> open = pointer -> true;
    private boolean layoutAsked;
    private boolean laying;
    private boolean resized;
    private boolean hasDoor;

    public Form(Composite parent, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        scroll.getVerticalBar().setIncrement(Look.of(parent).rowHeight());
        WheelOnThePage.on(scroll);
        Composite outer = new Composite(scroll, SWT.NONE);
        outer.setLayout(new AsHighAsItsContent(scroll, () -> laying));
        body = new Composite(outer, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).spacing(0, 6).applyTo(body);
        scroll.setContent(outer);
        scroll.addListener(SWT.Resize, e -> {
            resized = true;
            if (!laying) {
                layoutNow();
            }
        });
        Grown.heardBy(body, this::relayout);
        PictureHeading.onPage(body, () -> site.document().job());
    }

    /** The whole form. */
    public Control control() {
        return scroll;
    }

    /** Begins a titled section of fields; what the title names by {0} follows its key. */
    public Section section(String titleKey, Object... named) {
        title(titleKey, named);
        Composite fieldsBody = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(1).spacing(24, 4).extendedMargins(0, 0, 0, 10).applyTo(fieldsBody);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(fieldsBody);
        flowing.add(fieldsBody);
        return new Section(this, fieldsBody, site, words);
    }

    /**
     * Adds a titled grid over a list of the part.
     *
     * @param list    JSON pointer of the list
     * @param columns gets the columns to add to
     * @param named   what the title names by {0}
     */
    public RecordGrid grid(String titleKey, String list, Consumer<GridColumns> columns, Object... named) {
        title(titleKey, named);
        GridColumns made = new GridColumns(words, site);
        columns.accept(made);
        RecordGrid grid = new RecordGrid(body, site, list, made, words.text(titleKey, named));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(grid.control());
        grids.add(grid);
        return grid.onHeight(this::relayout);
    }

    /** The photos of a list of the part, under a title; what is dropped on the page goes to the first such list. */
    public PhotosArea photos(String titleKey, String list) {
        return photos(titleKey, () -> Optional.of(list));
    }

    /**
     * The photos of a list that changes with what is marked elsewhere on the page.
     *
     * @param list JSON pointer of the list; empty while nothing is marked
     */
    public PhotosArea photos(String titleKey, Supplier<Optional<String>> list) {
        PhotosArea photos = new PhotosArea(area(titleKey), hasDoor ? "morePhoto" : "photo", site, list, this::relayout);
        if (!hasDoor) {
            hasDoor = true;
            new PhotoDoor(scroll, photos);
        }
        add(photos);
        return photos;
    }

    /** An empty area under a title, for drawings and controls of the page's own; it has no layout yet. */
    public Composite area(String titleKey) {
        title(titleKey);
        return area();
    }

    /** An empty area that goes on under the title before it; it has no layout yet. */
    public Composite area() {
        Composite area = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(area);
        return area;
    }

    /**
     * A part of the form that can be taken off the screen.
     *
     * @param declares declares its sections, grids and areas
     */
    public Block block(Runnable declares) {
        List<Control> before = List.of(body.getChildren());
        declares.run();
        List<Control> added = new ArrayList<>(List.of(body.getChildren()));
        added.removeAll(before);
        return new Block(added, this::relayout);
    }

    /**
     * The same for what comes after the page was built.
     *
     * @param next the block before which it stands
     */
    public Block blockBefore(Block next, Runnable declares) {
        List<Control> known = List.of(body.getChildren());
        declares.run();
        List<Control> added = new ArrayList<>(List.of(body.getChildren()));
        added.removeAll(known);
        added.forEach(c -> c.moveAbove(next.first()));
        editable(editable);
        refresh();
        relayout();
        return new Block(added, this::relayout);
    }

    /** A paragraph of explanation. */
    public void words(String key) {
        Look look = Look.of(body);
        Label l = look.as(Look.Role.TEXT, new Label(body, SWT.WRAP));
        l.setText(words.text(key));
        l.setForeground(look.palette().muted());
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(l);
    }

    /** The entry for an enum under the page's words. */
    public <E extends Enum<E>> ChoiceEntry choice(Class<E> type) {
        return ChoiceEntry.of(type, words, e -> site.json().mapper().convertValue(e, String.class));
    }

    /** Shows what the draft holds now. */
    public void refresh() {
        fields.forEach(FormField::refresh);
        grids.forEach(RecordGrid::refresh);
    }

    /** Shows the verdicts of this part where they stand. */
    public void show(List<Verdict> ofPart) {
        for (FormField f : fields) {
            f.show(ofPart.stream().filter(v -> v.path() != null && !v.path().isEmpty()
                    && (v.path().equals(f.pointer()) || v.path().startsWith(f.pointer() + "/"))).toList());
        }
        grids.forEach(g -> g.show(ofPart));
    }

    /** Lets the form be typed into, or shows it only. */
    public void editable(boolean now) {
        editable = now;
        fields.forEach(f -> f.enable(now && open.test(f.pointer())));
        grids.forEach(g -> g.editable(now && open.test(g.list())));
    }

    /** Lets only some of the form be typed into from now on, where it may be at all. */
    public void editableOnly(Predicate<String> pointers) {
        open = pointers;
        editable(editable);
    }

    /** Puts the cursor where a JSON pointer leads: the field itself, or the cell of a grid. */
    public boolean reveal(String pointer) {
        // Two grids can show one list; the one with a column for the place is meant.
        for (RecordGrid g : grids) {
            if (g.hasColumnFor(pointer) && g.reveal(pointer)) {
                return true;
            }
        }
        // A field of a row that has a section of its own is meant before the row of the grid.
        for (FormField f : fields) {
            if (pointer.equals(f.pointer())) {
                f.focus();
                return true;
            }
        }
        List<RecordGrid> around = around(pointer);
        for (RecordGrid g : around) {
            if (g.reveal(pointer)) {
                return true;
            }
        }
        for (FormField f : fields) {
            if (pointer.equals(f.pointer()) || pointer.startsWith(f.pointer() + "/")) {
                f.focus();
                return true;
            }
        }
        return around.stream().anyMatch(g -> g.revealNearest(pointer));
    }

    /**
     * The grids over the innermost list that a JSON pointer leads into, the one with the keyboard first: a row that is gone
     * is missed in its own grid, and not found in the grid of what it belonged to.
     */
    private List<RecordGrid> around(String pointer) {
        int inner = grids.stream().filter(g -> g.isAbove(pointer)).mapToInt(g -> g.list().length()).max().orElse(0);
        return grids.stream().filter(g -> g.isAbove(pointer) && g.list().length() == inner)
                .sorted(Comparator.comparing(g -> !g.table().isFocusControl())).toList();
    }

    /** What people call the place to which a JSON pointer leads: a field's label, a grid's row and heading. */
    public Optional<String> nameOf(String pointer) {
        return fields.stream().filter(f -> f.pointer().equals(pointer)).map(FormField::label).findFirst()
                .or(() -> grids.stream().filter(g -> g.hasColumnFor(pointer)).map(g -> g.nameOf(pointer)).findFirst());
    }

    /** Puts the cursor on what stands first on the form and can take it: a field, a grid, or what an area holds. */
    public boolean focusFirst() {
        return focusFirst(body);
    }

    /** A composite asked for the focus would take it itself where it holds words only. */
    private static boolean focusFirst(Composite in) {
        for (Control c : in.getChildren()) {
            if (c.getVisible() && c.isEnabled() && !(c instanceof Label)
                    && (holdsOthers(c) ? focusFirst((Composite) c) : c.setFocus())) {
                return true;
            }
        }
        return false;
    }

    private static boolean holdsOthers(Control c) {
        return c instanceof Composite && !(c instanceof Combo) && !(c instanceof Table);
    }

    /** Scrolls down by some pixels, as far as there is something to scroll; up where they are below zero. */
    public void scrollBy(int pixels) {
        scroll.setOrigin(scroll.getOrigin().x, scroll.getOrigin().y + pixels);
    }

    /** JSON pointers of the fields and grids, in reading order of their kind. */
    public List<String> pointers() {
        return Stream.concat(fields.stream().map(FormField::pointer), grids.stream().map(RecordGrid::list)).toList();
    }

    /** Lays the form out anew, once, after the current event. */
    public void relayout() {
        if (!layoutAsked && !scroll.isDisposed()) {
            layoutAsked = true;
            scroll.getDisplay().asyncExec(() -> {
                layoutAsked = false;
                if (!scroll.isDisposed()) {
                    layoutNow();
                }
            });
        }
    }

    void add(FormField field) {
        fields.add(field);
        field.enable(editable && open.test(field.pointer()));
    }

    int labelWidth() {
        return Look.of(body).chars(LABEL_CHARS);
    }

    private void title(String key, Object... named) {
        Look look = Look.of(body);
        Label l = look.as(Look.Role.STRONG, new Label(body, SWT.WRAP));
        l.setText(words.text(key, named));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(l);
        Label line = new Label(body, SWT.SEPARATOR | SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
    }

    private void layoutNow() {
        if (scroll.getClientArea().width <= 0) {
            return;
        }
        laying = true;
        // However often its size changes meanwhile, what is on the page is laid out once, at the end.
        body.setLayoutDeferred(true);
        try {
            Reach.ensure(body);
            Narrow.ensure(body);
            resized = true;
            for (int turn = 0; resized && turn < MOST_TURNS; turn++) {
                resized = false;
                fitHeight();
            }
            body.getParent().layout();
            body.layout(false, true);
        } finally {
            body.setLayoutDeferred(false);
            laying = false;
        }
    }

    /** Makes the page as high as its content needs at the width there is; that can bring or take the scroll bar. */
    private void fitHeight() {
        int width = scroll.getClientArea().width;
        int columns = width >= 2 * Look.of(body).chars(COLUMN_CHARS) ? 2 : 1;
        for (Composite c : flowing) {
            GridLayout layout = (GridLayout) c.getLayout();
            layout.numColumns = columns;
            layout.makeColumnsEqualWidth = columns > 1;
        }
        scroll.setMinSize(0, body.computeSize(width, SWT.DEFAULT, true).y);
    }
}
