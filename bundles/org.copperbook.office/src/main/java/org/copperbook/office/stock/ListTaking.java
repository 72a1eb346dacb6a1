package org.copperbook.office.stock;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import org.copperbook.office.registers.ImportWindow;
import org.copperbook.store.Saved;
import org.copperbook.store.stock.MovedSinceException;
import org.copperbook.store.stock.Stock;

/** Takes a list of stock in; of what was moved since it was written somebody is asked what counts, as often as it moves. */
final class ListTaking implements ImportWindow.Saving<Stock.Listed> {

    private final Stock stock;
    private final StockWords words;
    private final String who;
    private final Consumer<List<Saved>> taken;
    private final Map<String, Stock.Listed> read = new ConcurrentHashMap<>();
    private volatile boolean chosen;
    private ImportWindow<Stock.Listed> window;

    /** @param taken told behind the window what was taken in */
    ListTaking(Stock stock, StockWords words, String who, Consumer<List<Saved>> taken) {
        this.stock = stock;
        this.words = words;
        this.who = who;
        this.taken = taken;
    }

    /** Whether something was kept because a list said so. */
    static boolean isReason(String why, StockWords words) {
        return why.startsWith(words.text("stock.listWhy", ""));
    }

    /** The window in which the list is read. */
    void from(ImportWindow<Stock.Listed> importing) {
        window = importing;
    }

    @Override
    public String save(List<Stock.Listed> rows, IntPredicate goOn) {
        if (!chosen) {
            read.clear();
            rows.forEach(r -> read.put(r.item().code(), r));
        }
        chosen = false;
        // The time makes the text that of this list alone, by which it can be taken back as one.
        String why = words.text("stock.listWhy", DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM)
                .format(ZonedDateTime.now()));
        List<Saved> all = stock.takeIn(rows, who, why, goOn);
        taken.accept(all);
        return words.text("stock.tookIn", rows.size());
    }

    @Override
    public void notSaved(List<Stock.Listed> rows, RuntimeException why) {
        if (why instanceof MovedSinceException since) {
            // What was chosen for a row that moved once more does not stand for what the list says.
            List<MovedSinceException.Moved> moved = since.moved().stream()
                    .map(m -> new MovedSinceException.Moved(read.getOrDefault(m.row().item().code(), m.row()), m.now())).toList();
            Set<String> again = moved.stream().map(m -> m.row().item().code()).collect(Collectors.toSet());
            List<Stock.Listed> all = rows.stream().map(r -> again.contains(r.item().code())
                    ? read.getOrDefault(r.item().code(), r) : r).toList();
            new MovedSinceDialog(window.shell(), words, all, moved, decided -> {
                chosen = true;
                window.takeIn(decided);
            }).open();
        }
    }
}
