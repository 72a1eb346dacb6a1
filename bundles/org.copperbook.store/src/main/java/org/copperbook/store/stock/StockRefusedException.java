package org.copperbook.store.stock;

import org.copperbook.jobs.stock.Refusal;
import org.copperbook.store.StoreException;

/** A movement of stock cannot be made. Nothing was moved, nor was anything else of the same step. */
public final class StockRefusedException extends StoreException {

    private static final long serialVersionUID = 1L;

    private final transient Refusal refusal;

    public StockRefusedException(Refusal refusal, String message) {
        super(Kind.STOCK, message);
        this.refusal = refusal;
    }

    public Refusal refusal() {
        return refusal;
    }
}
