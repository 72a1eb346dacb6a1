package org.copperbook.store.stock;

import java.util.List;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;

/** Items of a list were moved on the shelf since it was written. Nothing was taken in; somebody has to say what counts. */
public final class MovedSinceException extends StoreException {

    private static final long serialVersionUID = 1L;

    /**
     * An item that was moved since.
     *
     * @param row its row of the list
     * @param now how it stands now
     */
    public record Moved(Stock.Listed row, Stock.Stand now) {
    }

    private final transient List<Moved> moved;

    public MovedSinceException(List<Moved> moved) {
        super(Kind.STOCK, StoreText.of("stock.movedSince", moved.size()));
        this.moved = List.copyOf(moved);
    }

    public List<Moved> moved() {
        return moved;
    }
}
