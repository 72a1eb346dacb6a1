package org.copperbook.store.stock;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.IntPredicate;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.store.ConflictException;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;

/**
 * What is on the shelf. Every movement is a revision of its item in the chain; the list of movements is derived from them.
 * Movements are made on the item as it stands in the writing transaction, so that of two people who take from one shelf at
 * the same time neither is lost and none counts twice.
 */
public interface Stock {

    /** Every item as it stands, by code. */
    List<Saved> items();

    /** An item as it stands. */
    Optional<Saved> item(String code);

    /**
     * Keeps what an item is: name, size, place, price, level. What is on hand and set aside stays.
     *
     * @param before what it was taken to be; null for an item that is not there yet, which begins with nothing on hand
     * @throws ConflictException when somebody else described it otherwise in between; movements do not disturb
     * @throws StoreException    ALREADY_THERE when the code is taken; STOCK when the unit of what was moved already changes
     */
    Saved describe(StockItem item, StockItem before, String who, String why);

    /**
     * Makes movements, all of them or none, in their order. One that was made already, as its id says, is not made again.
     *
     * @return each item after its movement
     * @throws StockRefusedException when one of them cannot be made
     * @throws StoreException        NOT_FOUND when there is no such item or job
     */
    List<Saved> move(List<StockMove> moves, String who);

    /**
     * Takes in items from a list, all of them or none, each described and where the list says so counted, as a revision of
     * its own. What the list does not say of an item that is there stays.
     *
     * @param goOn asked before each and before all of it is made durable, with how many are written; false stops
     * @throws StoreException        as {@link #describe} and {@link #move}
     * @throws CancellationException when it was stopped; nothing is written
     */
    List<Saved> takeIn(List<Listed> rows, String who, String why, IntPredicate goOn);

    /**
     * A row of a list.
     *
     * @param item    what it is
     * @param counted how much is on hand; null when the list does not say
     */
    record Listed(StockItem item, BigDecimal counted) {
    }

    /** The movements of an item, the newest first, at most some. */
    List<StockEntry> ledger(String code, int most);

    /** Every movement for a job, the oldest first. */
    List<StockEntry> movesFor(String jobId);

    /**
     * Takes over the older list of wire: an item for each spool with what is on hand, and an empty list in the older one's
     * place, whose revisions stay. Nothing happens when the list is empty.
     *
     * @param name what to call a size of wire
     */
    List<Saved> takeOverWire(String name, String who, String why);
}
