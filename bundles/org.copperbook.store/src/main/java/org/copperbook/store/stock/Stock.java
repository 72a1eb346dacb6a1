package org.copperbook.store.stock;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
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

    /** Every item with its last movement on the shelf, of one moment, by code. */
    List<Stand> stands();

    /** An item with its last movement on the shelf. */
    Optional<Stand> stand(String code);

    /**
     * How an item stands.
     *
     * @param item     the item
     * @param lastMove id of the last movement that changed what is on hand; empty when there was none
     * @param at       when that was kept; null when there was none
     */
    record Stand(StockItem item, String lastMove, Instant at) {

        /** What somebody saw who sees this. */
        public Seen seen() {
            return new Seen(item.onHand(), lastMove);
        }
    }

    /**
     * How an item stood when its row of a list was made.
     *
     * @param onHand   how much was on hand
     * @param lastMove id of the last movement that changed it; empty when there was none
     */
    record Seen(BigDecimal onHand, String lastMove) {

        /** Of an item that was not there. */
        public static final Seen NOTHING = new Seen(BigDecimal.ZERO, "");

        public Seen {
            Objects.requireNonNull(onHand, "onHand");
            Objects.requireNonNull(lastMove, "lastMove");
        }

        /** Whether nothing was moved on the shelf since. */
        public boolean holds(Stand now) {
            return onHand.compareTo(now.item().onHand()) == 0 && lastMove.equals(now.lastMove());
        }
    }

    /**
     * Takes in items from a list, all of them or none, each described and where the list says so counted, as a revision of
     * its own. What the list does not say of an item that is there stays.
     *
     * @param why  kept with each revision; what is to be taken back as one list needs a text of its own
     * @param goOn asked before each and before all of it is made durable, with how many are written; false stops
     * @throws MovedSinceException   when items were moved on the shelf since their rows were made; nothing is written
     * @throws StoreException        as {@link #describe} and {@link #move}
     * @throws CancellationException when it was stopped; nothing is written
     */
    List<Saved> takeIn(List<Listed> rows, String who, String why, IntPredicate goOn);

    /**
     * A row of a list.
     *
     * @param item    what it is
     * @param counted how much is on hand; null when the list does not say
     * @param seen    how the item stood when the row was made; null when that does not matter
     */
    record Listed(StockItem item, BigDecimal counted, Seen seen) {

        public Listed(StockItem item, BigDecimal counted) {
            this(item, counted, null);
        }
    }

    /**
     * Takes a whole list back that was taken in: what it counted by reverse movements, what it described by new revisions as it
     * was before. Items that came with it are not kept any more. All of it or none.
     *
     * @param sequence place in the chain of any revision that the list made
     * @param goOn     as for {@link #takeIn}
     * @return the items as they are now
     * @throws StoreException        STOCK when items of it were moved or described since, which the message names, or when no list
     *                               made the revision
     * @throws CancellationException when it was stopped; nothing is written
     */
    List<Saved> takeBackList(long sequence, String who, String why, IntPredicate goOn);

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
