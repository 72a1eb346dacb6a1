package org.copperbook.store.stock;

import java.time.Instant;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;

/**
 * A line of an item's ledger.
 *
 * @param sequence place of its revision in the chain
 * @param item    the item after the movement
 * @param savedAt when it was kept
 * @param who     key of who moved it
 * @param undone  whether a later movement took it back
 */
public record StockEntry(long sequence, StockItem item, Instant savedAt, String who, boolean undone) {

    /** The movement. */
    public StockMovement movement() {
        return item.movement();
    }

    /** When it happened: what the movement says, else when it was kept. */
    public Instant at() {
        return movement().at() == null ? savedAt : movement().at();
    }
}
