package org.copperbook.store.stock;

import java.util.Objects;
import org.copperbook.jobs.stock.StockMovement;

/**
 * A movement to be made.
 *
 * @param code     code of the item
 * @param movement the movement
 */
public record StockMove(String code, StockMovement movement) {

    public StockMove {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(movement, "movement");
    }
}
