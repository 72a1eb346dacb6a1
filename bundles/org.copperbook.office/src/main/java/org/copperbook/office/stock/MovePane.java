package org.copperbook.office.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.DecimalEntry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Where stock is moved: how much, for which job, and a button for each thing that can be done. */
final class MovePane {

    /** What was typed, understood as far as it can be without looking at the store. */
    record Wish(StockMovement.Kind kind, BigDecimal quantity, Optional<StockUnit> unit, String job, String lot,
            Optional<BigDecimal> price, String note) {
    }

    /** What the buttons say to do, one for each kind of movement. */
    enum Act { RECEIVE, RESERVE, RELEASE, ISSUE, RETURN, ADJUST }

    private static final Pattern WITH_UNIT = Pattern.compile("(.*?[0-9])\\s*([A-Za-z]+)");
    private static final int FIELD_CHARS = 10;
    private static final int PAIRS = 3;
    private static final int BUTTONS = 4;

    private final StockWords words;
    private final Consumer<Wish> wish;
    private final Consumer<String> propose;
    private final Label item;
    private final List<Text> order = new ArrayList<>();
    private final Text quantity;
    private final Text job;
    private final Text lot;
    private final Text price;
    private final Text note;
    private final Map<StockMovement.Kind, Button> buttons = new EnumMap<>(StockMovement.Kind.class);
    private final Button allTheSame;
    private final Label said;

    private Map<Text, String> asked = Map.of();
    private boolean any;

    /**
     * @param wish       told what is to be moved
     * @param propose    asked, with a job as typed, how much of the item is to be set aside for it
     * @param allTheSame told when what was refused is to be done all the same
     */
    MovePane(Composite parent, StockWords words, Consumer<Wish> wish, Consumer<String> propose, Runnable allTheSame) {
        this.words = words;
        this.wish = wish;
        this.propose = propose;
        Look look = Look.of(parent);
        item = look.as(Look.Role.STRONG, new Label(parent, SWT.WRAP));
        item.setData(Desk.ID, "stock.chosen");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(item);
        Composite fields = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2 * PAIRS).spacing(8, 4).applyTo(fields);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(fields);
        quantity = field(fields, look, "stock.quantity", 1);
        job = field(fields, look, "stock.job", 1);
        lot = field(fields, look, "stock.lot", 1);
        price = field(fields, look, "stock.priceOfUnit", 1);
        note = field(fields, look, "stock.note", 2 * PAIRS - 3);
        Composite row = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(BUTTONS).equalWidth(true).spacing(8, 4).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        for (StockMovement.Kind kind : StockMovement.Kind.values()) {
            buttons.put(kind, button(row, "stock.do." + kind.name(), words.of(Act.valueOf(kind.name())), () -> read(kind)));
        }
        this.allTheSame = button(row, "stock.allTheSame", words.text("stock.allTheSame"), allTheSame);
        this.allTheSame.setEnabled(false);
        said = look.as(Look.Role.TEXT, new Label(parent, SWT.WRAP));
        said.setData(Desk.ID, "stock.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        Reach.ensure(fields);
        Reach.ensure(row);
    }

    private Text field(Composite parent, Look look, String key, int span) {
        Label label = look.as(Look.Role.TEXT, new Label(parent, SWT.NONE));
        label.setText(words.text(key));
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
        Text t = look.as(Look.Role.TEXT, new Text(parent, SWT.BORDER));
        t.setData(Desk.ID, key);
        SpokenName.give(t, words.text(key));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).span(span, 1)
                .hint(look.chars(FIELD_CHARS), SWT.DEFAULT).applyTo(t);
        order.add(t);
        t.addListener(SWT.DefaultSelection, e -> after(t));
        return t;
    }

    private static Button button(Composite parent, String id, String text, Runnable does) {
        Button b = PushButton.in(parent, id, text, does);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(b);
        return b;
    }

    /** Enter goes on: from field to field, then to what can be done. */
    private void after(Text t) {
        int next = order.indexOf(t) + 1;
        if (next < order.size()) {
            order.get(next).setFocus();
            order.get(next).selectAll();
        } else {
            buttons.get(StockMovement.Kind.RECEIVE).setFocus();
        }
    }

    void show(Optional<StockItem> chosen, String currency) {
        item.setText(chosen.map(i -> words.text("stock.chosen", i.code(), words.what(i), StockWords.amount(i.onHand(), i),
                StockWords.amount(i.free(), i), words.hint(i)).strip()).orElse(words.text("stock.noneChosen")));
        any = chosen.isPresent();
        buttons.values().forEach(b -> b.setEnabled(any));
    }

    void setFocus() {
        quantity.setFocus();
        quantity.selectAll();
    }

    void say(String text, boolean canBeSaid) {
        said.setText(text);
        allTheSame.setEnabled(canBeSaid);
        buttons.values().forEach(b -> b.setEnabled(any));
        said.getParent().layout(true, true);
    }

    /** Puts an amount to be set aside, to be changed or pressed again; what somebody typed meanwhile stays. */
    void propose(BigDecimal amount) {
        if (quantity.getText().isBlank()) {
            quantity.setText(StockWords.typed(amount));
        }
    }

    /**
     * After a movement was made the job stays, since the next thing is often for the same one; so does what was typed while it
     * was being made.
     */
    void made() {
        asked.forEach((field, text) -> {
            if (field.getText().equals(text)) {
                field.setText("");
            }
        });
    }

    private void read(StockMovement.Kind kind) {
        String text = quantity.getText().strip();
        Matcher m = WITH_UNIT.matcher(text);
        Optional<StockUnit> unit = m.matches() ? StockUnit.of(m.group(2)) : Optional.empty();
        Optional<BigDecimal> amount = number(unit.isPresent() ? m.group(1) : text);
        Optional<BigDecimal> cost = number(price.getText());
        if (text.isEmpty() && kind == StockMovement.Kind.RESERVE && !job.getText().isBlank()) {
            propose.accept(job.getText().strip());
        } else if (amount.isEmpty()) {
            say(text.isEmpty() ? words.text("stock.noQuantity") : words.text("stock.quantityFirst", text), false);
            setFocus();
        } else if (cost.isEmpty() && !price.getText().isBlank()) {
            say(words.text("stock.priceFirst", price.getText().strip()), false);
            price.setFocus();
        } else {
            asked = Map.of(quantity, quantity.getText(), note, note.getText(), price, price.getText());
            say(words.text("stock.doing", words.of(Act.valueOf(kind.name()))), false);
            // A second press would do it twice.
            buttons.values().forEach(b -> b.setEnabled(false));
            wish.accept(new Wish(kind, amount.get(), unit, job.getText().strip(), lot.getText().strip(), cost,
                    note.getText().strip()));
        }
    }

    /** A number as typed; nothing when it is none, or could be two. */
    static Optional<BigDecimal> number(String text) {
        return new DecimalEntry().read(text) instanceof Typed.Understood u ? Optional.of(u.node().decimalValue())
                : Optional.empty();
    }
}
