package org.copperbook.office.stock;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockRules;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.sheets.registers.RegisterField;
import org.copperbook.sheets.registers.RegisterRow;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.sheets.registers.RegisterWorkbook;
import org.copperbook.sheets.registers.RowRefusedException;
import org.copperbook.store.stock.Stock;
import org.copperbook.store.stock.StockEntry;

/** The list of stock and the ledger of an item as tables. */
final class StockSheet {

    /** In the list where nothing was ever moved. */
    private static final String NEVER = "-";
    private static final Pattern LAST = Pattern.compile("-|(\\S+) (\\S+)");

    private final StockWords words;
    private final Function<String, Stock.Seen> now;

    /** @param now how the item with a code stands now, for lists that do not say how it stood when they were written */
    StockSheet(StockWords words, Function<String, Stock.Seen> now) {
        this.words = words;
        this.now = now;
    }

    /** The columns of the list that say what an item is and how much of it there is; these can be taken in again. */
    RegisterShape list() {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (StockItem.Kind k : StockItem.Kind.values()) {
            kinds.put(words.of(k), k.name());
        }
        Map<String, String> units = new LinkedHashMap<>();
        for (StockUnit u : StockUnit.values()) {
            units.put(u.sign(), u.name());
        }
        Map<String, String> shapes = new LinkedHashMap<>();
        for (StockItem.Shape s : StockItem.Shape.values()) {
            shapes.put(words.of(s), s.name());
        }
        return new RegisterShape(words.text("stock.tab"), List.of(
                RegisterField.text("code", words.text("stock.code"), words.text("stock.titles.code")).needed(),
                RegisterField.choice("kind", words.text("stock.kind"), words.text("stock.titles.kind"), kinds),
                RegisterField.text("name", words.text("stock.name"), words.text("stock.titles.name")).needed(),
                RegisterField.text("size", words.text("stock.size"), words.text("stock.titles.size")),
                RegisterField.whole("grade", words.text("stock.grade"), words.text("stock.titles.grade"), 1, 3),
                RegisterField.choice("shape", words.text("stock.shape"), words.text("stock.titles.shape"), shapes),
                RegisterField.choice("unit", words.text("stock.unit"), words.text("stock.titles.unit"), units).needed(),
                number("onHand", "stock.onHand", "stock.titles.onHand"),
                number("level", "stock.level", "stock.titles.level"),
                number("price", "stock.priceOfUnit", "stock.titles.price"),
                RegisterField.text("place", words.text("stock.place"), words.text("stock.titles.place")),
                RegisterField.number("onHandThen", words.text("stock.onHandThen"), "", BigDecimal.ZERO, StockRules.MOST),
                RegisterField.text("lastMove", words.text("stock.lastMove"), "")), List.of("code"));
    }

    /** What a row of a list says of an item; what it does not say is left open. */
    Stock.Listed listed(RegisterRow row) throws RowRefusedException {
        String code = row.text("code").orElse("").strip();
        if (!StockItem.isCode(code)) {
            throw new RowRefusedException("code", words.text("stock.badCode", code));
        }
        StockUnit unit = row.text("unit").map(StockUnit::valueOf).orElse(StockUnit.PC);
        BigDecimal counted = row.number("onHand").orElse(null);
        if (counted != null && !unit.counts(counted)) {
            throw new RowRefusedException("onHand", words.text("stock.tooFine"));
        }
        return new Stock.Listed(new StockItem(StockItem.SCHEMA, code, row.text("kind").map(StockItem.Kind::valueOf).orElse(null),
                row.text("name").orElse(null), row.text("size").orElse(null),
                row.number("grade").map(BigDecimal::intValue).orElse(null),
                row.text("shape").map(StockItem.Shape::valueOf).orElse(null), unit, row.text("place").orElse(null),
                row.number("price").orElse(null), row.number("level").orElse(null), null, null, null, null, null), counted,
                seen(code, row));
    }

    /** How the item stood when our list was written; of a list of others how it stands now that it is read. */
    private Stock.Seen seen(String code, RegisterRow row) throws RowRefusedException {
        Optional<BigDecimal> onHand = row.number("onHandThen");
        Optional<String> last = row.text("lastMove").map(String::strip);
        if (onHand.isEmpty() && last.isEmpty()) {
            return now.apply(code);
        }
        Matcher written = LAST.matcher(last.orElse(""));
        if (onHand.isEmpty() || !written.matches()) {
            throw new RowRefusedException("lastMove", words.text("stock.badLastMove"));
        }
        return new Stock.Seen(onHand.get(), written.group(2) == null ? "" : written.group(2));
    }

    /** The last movement as the list has it: when, and which. */
    private String last(Stock.Stand stand) {
        return stand.lastMove().isEmpty() ? NEVER : stand.at() + " " + stand.lastMove();
    }

    /** The list with what follows from it. */
    RegisterShape listOut() {
        List<RegisterField> fields = new ArrayList<>(list().fields());
        fields.add(number("reserved", "stock.reserved", ""));
        fields.add(number("free", "stock.free", ""));
        fields.add(number("value", "stock.value", ""));
        fields.add(text("hint", "stock.hint"));
        return new RegisterShape(words.text("stock.tab"), fields, List.of("code"));
    }

    Map<String, Object> row(Stock.Stand stand) {
        StockItem i = stand.item();
        Map<String, Object> row = new LinkedHashMap<>();
        put(row, "code", i.code());
        put(row, "kind", i.kind().name());
        put(row, "name", i.name());
        put(row, "size", i.size());
        put(row, "grade", i.grade() == null ? null : BigDecimal.valueOf(i.grade()));
        put(row, "shape", i.shape() == null ? null : i.shape().name());
        put(row, "unit", i.unit().name());
        put(row, "onHand", i.onHand());
        put(row, "level", i.reorderLevel());
        put(row, "price", i.price());
        put(row, "place", i.place());
        put(row, "onHandThen", i.onHand());
        put(row, "lastMove", last(stand));
        put(row, "reserved", i.reservedInAll());
        put(row, "free", i.free());
        put(row, "value", i.value().orElse(null));
        String hint = words.hint(i);
        put(row, "hint", StockWords.isWarning(i) ? new RegisterWorkbook.Warning(hint) : hint);
        return row;
    }

    /** @param code of the item whose movements they are */
    RegisterShape ledger(String code) {
        return new RegisterShape(words.text("stock.ledgerOf", code), List.of(RegisterField.date("date", words.text("stock.when"), ""),
                text("who", "stock.who"), text("did", "stock.did"), number("quantity", "stock.quantity", ""),
                text("unit", "stock.unit"), text("job", "stock.job"), number("after", "stock.after", ""),
                number("reserved", "stock.reservedAfter", ""), number("price", "stock.priceOfUnit", ""),
                text("lot", "stock.lot"), text("note", "stock.note")), List.of());
    }

    Map<String, Object> row(StockEntry e, Map<String, String> numbers, UnaryOperator<String> names) {
        String[] texts = LedgerPane.texts(words, e, numbers, names);
        Map<String, Object> row = new LinkedHashMap<>();
        put(row, "date", LocalDate.ofInstant(e.at(), ZoneId.systemDefault()));
        put(row, "who", names.apply(e.who()));
        put(row, "did", texts[LedgerPane.HEADS.indexOf("stock.did")]);
        put(row, "quantity", e.movement().quantity());
        put(row, "unit", e.item().unit().sign());
        put(row, "job", texts[LedgerPane.HEADS.indexOf("stock.job")]);
        put(row, "after", e.item().onHand());
        put(row, "reserved", e.item().reservedInAll());
        put(row, "price", e.movement().price());
        put(row, "lot", e.movement().lot());
        put(row, "note", e.movement().note());
        return row;
    }

    private static void put(Map<String, Object> row, String key, Object value) {
        if (value != null && !"".equals(value)) {
            row.put(key, value);
        }
    }

    private RegisterField text(String key, String label) {
        return RegisterField.text(key, words.text(label), "");
    }

    private RegisterField number(String key, String label, String titles) {
        return RegisterField.number(key, words.text(label), titles.isEmpty() ? "" : words.text(titles),
                titles.isEmpty() ? null : BigDecimal.ZERO, titles.isEmpty() ? null : StockRules.MOST);
    }
}
