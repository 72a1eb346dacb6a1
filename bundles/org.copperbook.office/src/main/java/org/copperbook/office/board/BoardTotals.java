package org.copperbook.office.board;

import java.time.LocalDate;
import java.util.Optional;
import org.copperbook.store.BoardQuery;
import org.copperbook.store.BoardQuery.Order;
import org.copperbook.store.BoardQuery.Which;
import org.copperbook.store.JobStore;

/** How many jobs are late, wait, or have no day promised. */
final class BoardTotals {

    private BoardTotals() {
    }

    static int late(JobStore store, LocalDate today) {
        return count(store, Which.LATE, today);
    }

    static int waiting(JobStore store, LocalDate today) {
        return count(store, Which.WAITING, today);
    }

    static int undated(JobStore store, LocalDate today) {
        return count(store, Which.NO_DATE, today);
    }

    private static int count(JobStore store, Which which, LocalDate today) {
        return store.board(new BoardQuery(Optional.empty(), which, Order.DUE, today, 0, 0)).total();
    }
}
