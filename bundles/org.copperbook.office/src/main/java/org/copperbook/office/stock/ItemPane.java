package org.copperbook.office.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.desk.Desk;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockUnit;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** What an item is: code, kind, size, unit, place, price, when to order. */
final class ItemPane {

    private static final int PAIRS = 3;
    private static final int FIELD_CHARS = 10;
    private static final int MOST_GRADE = 3;

    private final StockWords words;
    private final ItemDrafts drafts;
    private final BiConsumer<StockItem, StockItem> keep;
    private final Composite box;
    private final Label about;
    private final Map<String, Text> texts = new LinkedHashMap<>();
    private final Combo kind;
    private final Combo unit;
    private final Combo shape;
    private final Button retired;
    private final Button throwAway;
    private final Label said;
    private StockItem seen;
    /** The fields as they were shown before somebody typed; empty as long as nothing is to be followed. */
    private List<String> shown = List.of();

    /**
     * @param drafts  where what is typed and not kept is put by
     * @param keep    keeps an item as described; with what it was before, null for a new one
     * @param history shows everything that was ever kept of the item
     */
    ItemPane(Composite parent, StockWords words, ItemDrafts drafts, BiConsumer<StockItem, StockItem> keep,
            Consumer<StockItem> history) {
        this.words = words;
        this.drafts = drafts;
        this.keep = keep;
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 6).applyTo(box);
        about = look.as(Look.Role.STRONG, new Label(box, SWT.WRAP));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(about);
        Composite fields = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2 * PAIRS).spacing(8, 4).applyTo(fields);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(fields);
        field(fields, look, "stock.code");
        kind = choice(fields, look, "stock.kind", Arrays.stream(StockItem.Kind.values()).map(words::of).toArray(String[]::new));
        field(fields, look, "stock.name");
        field(fields, look, "stock.size");
        field(fields, look, "stock.grade");
        shape = choice(fields, look, "stock.shape", "", words.of(StockItem.Shape.ROUND), words.of(StockItem.Shape.STRIP));
        unit = choice(fields, look, "stock.unit", Arrays.stream(StockUnit.values()).map(StockUnit::sign).toArray(String[]::new));
        field(fields, look, "stock.price");
        field(fields, look, "stock.level");
        field(fields, look, "stock.place");
        Composite row = new Composite(box, SWT.NONE);
        RowLayoutFactory.fillDefaults().wrap(true).center(true).spacing(8).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(row);
        retired = look.as(Look.Role.TEXT, new Button(row, SWT.CHECK));
        retired.setText(words.text("stock.isRetired"));
        retired.setData(Desk.ID, "stock.isRetired");
        retired.addListener(SWT.Selection, e -> putBy());
        PushButton.in(row, "stock.keep", words.text("stock.keep"), this::keepTyped);
        throwAway = PushButton.in(row, "stock.throwAway", words.text("stock.throwAway"), this::asItWas);
        throwAway.setEnabled(false);
        PushButton.in(row, "stock.new", words.text("stock.new"), () -> {
            show(Optional.empty());
            texts.get("stock.code").setFocus();
        });
        PushButton.in(row, "stock.history", words.text("registers.history"), () -> {
            if (seen == null) {
                say(words.text("stock.noneChosen"));
            } else {
                history.accept(seen);
            }
        });
        said = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        said.setData(Desk.ID, "stock.itemSaid");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        Reach.ensure(fields);
        Reach.ensure(row);
    }

    Composite control() {
        return box;
    }

    void setFocus() {
        texts.get(seen == null ? "stock.code" : "stock.name").setFocus();
    }

    void say(String text) {
        said.setText(text);
        box.layout(true, true);
    }

    /**
     * Shows an item; without one the fields are empty, for a new one. What was typed about the one before and not kept is put
     * by, and is there again with it.
     */
    void show(Optional<StockItem> item) {
        putBy();
        fill(item);
        say("");
        recall();
    }

    /** Puts what was typed about the item shown and not kept into the fields again, unless something is typed by now. */
    void recall() {
        Optional<ItemDraft> before = drafts.of(code());
        if (before.isEmpty() || !shown.equals(typed())) {
            return;
        }
        List<String> fields = new ArrayList<>(texts.keySet());
        fields.addAll(List.of("stock.kind", "stock.unit", "stock.shape", "stock.isRetired"));
        List<Integer> contested = before.get().contested(shown);
        typeAgain(before.get().over(shown));
        say(contested.isEmpty() ? words.text("stock.typedBefore") : words.text("stock.typedBeforeOther",
                contested.stream().map(i -> words.text(fields.get(i))).collect(Collectors.joining(", "))));
    }

    /** The page is closed: what is typed is there again when it is opened. */
    void close() {
        putBy();
        drafts.write();
    }

    private void putBy() {
        if (!shown.isEmpty()) {
            drafts.follow(code(), new ItemDraft(shown, typed()));
            throwAway.setEnabled(!shown.equals(typed()));
        }
    }

    private void asItWas() {
        drafts.forget(code());
        fill(Optional.ofNullable(seen));
        say("");
        texts.get(seen == null ? "stock.code" : "stock.name").setFocus();
    }

    /**
     * Follows the item shown: a delivery may have given it another price. What is typed stays typed; after somebody described
     * it otherwise nothing is followed, so that keeping tells of it.
     */
    void follow(StockItem item) {
        if (seen == null || !seen.code().equals(item.code()) || !seen.describedAs(seen).equals(seen.describedAs(
                item.priced(seen.price())))) {
            return;
        }
        ItemDraft before = new ItemDraft(shown, typed());
        fill(Optional.of(item));
        typeAgain(before.over(shown));
    }

    /** Shows an item as it was kept just now. */
    void kept(StockItem item) {
        if (item.code().equalsIgnoreCase(seen == null ? text("stock.code") : code())) {
            drafts.forget(code());
            shown = List.of();
        }
        drafts.forget(item.code());
        show(Optional.of(item));
    }

    private String code() {
        return seen == null ? "" : seen.code();
    }

    private List<String> typed() {
        List<String> all = new ArrayList<>();
        texts.values().forEach(t -> all.add(t.getText()));
        Stream.of(kind, unit, shape).forEach(c -> all.add(Integer.toString(c.getSelectionIndex())));
        all.add(Boolean.toString(retired.getSelection()));
        return all;
    }

    private void typeAgain(List<String> before) {
        List<String> as = shown;
        shown = List.of();
        int i = 0;
        for (Text t : texts.values()) {
            t.setText(before.get(i++));
        }
        for (Combo c : List.of(kind, unit, shape)) {
            c.select(Integer.parseInt(before.get(i++)));
        }
        retired.setSelection(Boolean.parseBoolean(before.get(i)));
        shown = as;
        putBy();
    }

    /** Nothing is followed while the fields are filled one by one. */
    private void fill(Optional<StockItem> item) {
        shown = List.of();
        seen = item.orElse(null);
        StockItem i = item.orElseGet(() -> StockItem.of("", StockItem.Kind.WIRE, "", StockUnit.KG));
        about.setText(seen == null ? words.text("stock.newItem") : words.text("stock.describing", i.code()));
        put("stock.code", i.code());
        texts.get("stock.code").setEditable(seen == null);
        put("stock.name", i.name());
        put("stock.size", i.size());
        put("stock.grade", i.grade() == null ? "" : i.grade().toString());
        put("stock.price", StockWords.typed(i.price()));
        put("stock.level", StockWords.typed(i.reorderLevel()));
        put("stock.place", i.place());
        kind.select(i.kind().ordinal());
        unit.select(i.unit().ordinal());
        shape.select(i.shape() == null ? 0 : i.shape().ordinal() + 1);
        retired.setSelection(Boolean.TRUE.equals(i.retired()));
        shown = typed();
        throwAway.setEnabled(false);
    }

    private void put(String key, String text) {
        texts.get(key).setText(text == null ? "" : text);
    }

    private void keepTyped() {
        String code = text("stock.code");
        Optional<BigDecimal> price = MovePane.number(text("stock.price"));
        Optional<BigDecimal> level = MovePane.number(text("stock.level"));
        Optional<BigDecimal> grade = MovePane.number(text("stock.grade"));
        if (!StockItem.isCode(code)) {
            wrong("stock.code", "stock.badCode");
        } else if (text("stock.name").isEmpty()) {
            wrong("stock.name", "stock.badName");
        } else if (!text("stock.price").isEmpty() && price.filter(p -> p.signum() >= 0).isEmpty()) {
            wrong("stock.price", "stock.badPrice");
        } else if (!text("stock.level").isEmpty() && level.filter(l -> l.signum() >= 0).isEmpty()) {
            wrong("stock.level", "stock.badLevel");
        } else if (!text("stock.grade").isEmpty() && grade.filter(g -> g.signum() > 0 && g.stripTrailingZeros().scale() <= 0
                && g.intValue() <= MOST_GRADE).isEmpty()) {
            wrong("stock.grade", "stock.badGrade");
        } else {
            keep.accept(new StockItem(StockItem.SCHEMA, code, StockItem.Kind.values()[kind.getSelectionIndex()],
                    text("stock.name"), nothing("stock.size"), grade.map(BigDecimal::intValue).orElse(null),
                    shape.getSelectionIndex() <= 0 ? null : StockItem.Shape.values()[shape.getSelectionIndex() - 1],
                    StockUnit.values()[unit.getSelectionIndex()], nothing("stock.place"), price.orElse(null),
                    level.orElse(null), null, null, null, retired.getSelection() ? Boolean.TRUE : null,
                    seen == null ? null : seen.more()), seen);
        }
    }

    private void wrong(String field, String why) {
        say(words.text(why, text(field)));
        texts.get(field).setFocus();
    }

    private String text(String key) {
        return texts.get(key).getText().strip();
    }

    private String nothing(String key) {
        return text(key).isEmpty() ? null : text(key);
    }

    private void field(Composite parent, Look look, String key) {
        label(parent, look, key);
        Text t = look.as(Look.Role.TEXT, new Text(parent, SWT.BORDER));
        t.addListener(SWT.DefaultSelection, e -> t.traverse(SWT.TRAVERSE_TAB_NEXT));
        t.addListener(SWT.Modify, e -> putBy());
        place(t, look, key);
        texts.put(key, t);
    }

    private Combo choice(Composite parent, Look look, String key, String... items) {
        label(parent, look, key);
        Combo c = look.as(Look.Role.TEXT, new Combo(parent, SWT.READ_ONLY));
        c.setItems(items);
        c.addListener(SWT.Selection, e -> putBy());
        place(c, look, key);
        return c;
    }

    private void label(Composite parent, Look look, String key) {
        Label label = look.as(Look.Role.TEXT, new Label(parent, SWT.NONE));
        label.setText(words.text(key));
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
    }

    private void place(Control c, Look look, String key) {
        c.setData(Desk.ID, "item/" + key);
        SpokenName.give(c, words.text(key));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(look.chars(FIELD_CHARS), SWT.DEFAULT)
                .applyTo(c);
    }
}
