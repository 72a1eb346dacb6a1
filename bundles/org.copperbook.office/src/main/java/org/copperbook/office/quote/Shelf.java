package org.copperbook.office.quote;

import java.util.List;
import java.util.Optional;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.PartsOnShelf;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** Bearings and diodes in stock as they stand, read behind while the page is open. For the window's own thread. */
final class Shelf {

    private static final String ITEMS = PartKind.STOCK_ITEM.word() + "/";

    private final PageSite site;
    private final Words words;
    private final Control page;
    private final Runnable whenRead;
    private PartsOnShelf parts;

    /**
     * @param page     until this goes, the stock is kept up with
     * @param whenRead called each time that the stock was read
     */
    Shelf(PageSite site, Words words, Control page, Runnable whenRead) {
        this.whenRead = whenRead;
        this.site = site;
        this.words = words;
        this.page = page;
        Display display = page.getDisplay();
        JobStore.Listening listening = site.store().onChange(change -> {
            if (JobStore.SHOP.equals(change.jobId()) && change.part().startsWith(ITEMS)) {
                read(display);
            }
        });
        page.addDisposeListener(e -> listening.close());
        read(display);
    }

    /** The stock; empty as long as it could not be read. */
    Optional<PartsOnShelf> parts() {
        return Optional.ofNullable(parts);
    }

    private void read(Display display) {
        JobStore store = site.store();
        new DeskJob(words.text("proposal.readingStock"), monitor -> {
            try {
                PartsOnShelf found = new PartsOnShelf(store.stock().items().stream().map(s -> (StockItem) s.part())
                        .filter(i -> List.of(StockItem.Kind.BEARING, StockItem.Kind.DIODE).contains(i.kind())).toList());
                if (!display.isDisposed()) {
                    display.asyncExec(() -> {
                        if (!page.isDisposed()) {
                            parts = found;
                            whenRead.run();
                        }
                    });
                }
            } catch (StoreException e) {
                ILog.of(Shelf.class).warn("the stock could not be read for a quote", e);
            }
        }).schedule();
    }
}
