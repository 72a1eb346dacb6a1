package org.copperbook.jobs.stock;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.stock.Refusal.Why;

/**
 * What a movement does to an item. On hand is always what came in, less what went out, plus what came back and what
 * counting found; nothing is issued that is not there; nobody takes what is set aside for another job without saying so.
 */
public final class StockRules {

    /** Most that can be moved or be on hand; more is a slip of the pen. */
    public static final BigDecimal MOST = new BigDecimal("1000000");

    private StockRules() {
    }

    /** What came of a movement. */
    public sealed interface Moved permits Done, Refused {
    }

    /** It was made. */
    public record Done(StockItem item) implements Moved {
    }

    /** It was not made. */
    public record Refused(Refusal refusal) implements Moved {
    }

    /**
     * Makes a movement.
     *
     * @param item     the item as it stands
     * @param m        the movement
     * @param issued   what was issued to the movement's job so far and has not come back, 0 or more
     */
    public static Moved move(StockItem item, StockMovement m, BigDecimal issued) {
        Refusal unsound = unsound(item, m);
        if (unsound != null) {
            return new Refused(unsound);
        }
        return switch (m.kind()) {
            case RECEIVE -> receive(item, m);
            case RESERVE -> reserve(item, m);
            case RELEASE -> release(item, m);
            case ISSUE -> issue(item, m);
            case RETURN -> takeBack(item, m, issued);
            case ADJUST -> adjust(item, m);
        };
    }

    private static Refusal unsound(StockItem item, StockMovement m) {
        BigDecimal q = m.quantity();
        boolean adjusts = m.kind() == StockMovement.Kind.ADJUST;
        if (q.signum() == 0 || q.signum() < 0 && !adjusts) {
            return refusal(Why.NOTHING, item, m, null);
        }
        if (m.unit() != null && m.unit() != item.unit()) {
            return refusal(Why.UNIT, item, m, null);
        }
        if (q.abs().compareTo(MOST) > 0 || item.onHand().add(q).compareTo(MOST) > 0 && m.kind() != StockMovement.Kind.ISSUE) {
            return refusal(Why.TOO_MUCH, item, m, MOST);
        }
        if (!item.unit().counts(q)) {
            return refusal(Why.TOO_FINE, item, m, null);
        }
        if (m.price() != null && m.price().signum() < 0) {
            return refusal(Why.PRICE, item, m, null);
        }
        boolean needsJob = m.kind() == StockMovement.Kind.RESERVE || m.kind() == StockMovement.Kind.RELEASE;
        return needsJob && (m.job() == null || m.job().isBlank()) ? refusal(Why.NO_JOB, item, m, null) : null;
    }

    /** What a delivery cost is what the item costs from then on. */
    private static Moved receive(StockItem item, StockMovement m) {
        BigDecimal price = price(item, m);
        boolean another = !isSame(price, item.price());
        return new Done(item.moved(item.onHand().add(m.quantity()), null, null, price, m.completed(item.unit(), m.price(), null)
                .withRepriced(another ? new StockMovement.Repriced(item.price()) : null)));
    }

    private static boolean isSame(BigDecimal one, BigDecimal other) {
        return one == null ? other == null : other != null && one.compareTo(other) == 0;
    }

    private static Moved reserve(StockItem item, StockMovement m) {
        if (m.quantity().compareTo(item.free()) > 0 && !beyond(m)) {
            return refused(Why.MORE_THAN_FREE, item, m, item.free().max(BigDecimal.ZERO), others(item, m.job()));
        }
        return done(item, m, item.onHand(), item.reservedFor(m.job()).add(m.quantity()), null);
    }

    private static Moved release(StockItem item, StockMovement m) {
        BigDecimal reserved = item.reservedFor(m.job());
        if (m.quantity().compareTo(reserved) > 0) {
            return refused(Why.MORE_THAN_RESERVED, item, m, reserved, List.of(m.job()));
        }
        return done(item, m, item.onHand(), reserved.subtract(m.quantity()), null);
    }

    private static Moved issue(StockItem item, StockMovement m) {
        BigDecimal own = item.reservedFor(m.job());
        if (m.quantity().compareTo(item.onHand()) > 0) {
            return refused(Why.MORE_THAN_ON_HAND, item, m, item.onHand(), List.of());
        }
        BigDecimal forUs = item.free().add(own).max(BigDecimal.ZERO);
        if (m.quantity().compareTo(forUs) > 0 && !beyond(m)) {
            return refused(Why.SET_ASIDE, item, m, forUs, others(item, m.job()));
        }
        BigDecimal wanted = m.ofReserved() == null ? m.quantity() : m.ofReserved();
        BigDecimal taken = wanted.min(own).min(m.quantity());
        return done(item, m, item.onHand().subtract(m.quantity()), own.subtract(taken), taken);
    }

    private static Moved takeBack(StockItem item, StockMovement m, BigDecimal issued) {
        if (m.quantity().compareTo(issued) > 0) {
            return refused(Why.MORE_THAN_ISSUED, item, m, issued, m.job() == null ? List.of() : List.of(m.job()));
        }
        BigDecimal again = m.ofReserved() == null || m.job() == null ? BigDecimal.ZERO : m.ofReserved().min(m.quantity());
        return done(item, m, item.onHand().add(m.quantity()), item.reservedFor(m.job()).add(again), again);
    }

    private static Moved adjust(StockItem item, StockMovement m) {
        BigDecimal now = item.onHand().add(m.quantity());
        if (now.signum() < 0) {
            return refused(Why.MORE_THAN_ON_HAND, item, m, item.onHand(), List.of());
        }
        if (m.quantity().signum() < 0 && now.compareTo(item.reservedInAll()) < 0 && !beyond(m)) {
            return refused(Why.BELOW_RESERVED, item, m, item.free().max(BigDecimal.ZERO), others(item, null));
        }
        boolean priceGoesBack = m.repriced() != null && isSame(m.price(), item.price());
        return new Done(item.moved(now, null, null, priceGoesBack ? m.repriced().before() : item.price(),
                m.completed(item.unit(), price(item, m), null)));
    }

    private static Moved done(StockItem item, StockMovement m, BigDecimal onHand, BigDecimal reserved, BigDecimal ofReserved) {
        return new Done(item.moved(onHand, m.job(), reserved, item.price(), m.completed(item.unit(), price(item, m),
                ofReserved == null || ofReserved.signum() == 0 ? null : ofReserved)));
    }

    private static BigDecimal price(StockItem item, StockMovement m) {
        return m.price() == null ? item.price() : m.price();
    }

    private static boolean beyond(StockMovement m) {
        return Boolean.TRUE.equals(m.beyond());
    }

    private static List<String> others(StockItem item, String job) {
        return item.reserved().keySet().stream().filter(j -> !j.equals(job)).toList();
    }

    private static Refused refused(Why why, StockItem item, StockMovement m, BigDecimal possible, List<String> jobs) {
        return new Refused(new Refusal(why, item, m, possible, jobs));
    }

    private static Refusal refusal(Why why, StockItem item, StockMovement m, BigDecimal possible) {
        return new Refusal(why, item, m, possible, List.of());
    }

    /** What a movement adds to what is on hand; below zero where it takes away. */
    public static BigDecimal comes(StockMovement m) {
        return switch (m.kind()) {
            case RECEIVE, RETURN, ADJUST -> m.quantity();
            case ISSUE -> m.quantity().negate();
            case RESERVE, RELEASE -> BigDecimal.ZERO;
        };
    }

    /** What was issued to each job and has not come back, as a ledger says; what went to no job stands under "". */
    public static Map<String, BigDecimal> issued(Iterable<StockMovement> ledger) {
        Map<String, BigDecimal> issued = new java.util.TreeMap<>();
        for (StockMovement m : ledger) {
            if (m.kind() == StockMovement.Kind.ISSUE || m.kind() == StockMovement.Kind.RETURN) {
                issued.merge(m.job() == null ? "" : m.job(),
                        m.kind() == StockMovement.Kind.ISSUE ? m.quantity() : m.quantity().negate(), BigDecimal::add);
            }
        }
        return issued;
    }
}
