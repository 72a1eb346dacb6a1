package org.copperbook.jobs.stock;

import java.math.BigDecimal;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;
import java.util.function.UnaryOperator;

/**
 * Why a movement cannot be made. Nothing was moved.
 *
 * @param why      the reason
 * @param item     the item
 * @param asked    how much was to be moved
 * @param possible how much could be; null where that is not the question
 * @param jobs     keys of the jobs in the way
 */
public record Refusal(Why why, StockItem item, StockMovement asked, BigDecimal possible, List<String> jobs) {

    /** Reasons. */
    public enum Why {
        /** Zero, or below zero where only more than zero makes sense. */
        NOTHING,
        /** More than anybody can have. */
        TOO_MUCH,
        /** A part of a piece, or finer than thousandths. */
        TOO_FINE,
        /** Another unit than the item's. */
        UNIT,
        /** A job must be named. */
        NO_JOB,
        /** More than is on hand. */
        MORE_THAN_ON_HAND,
        /** It would be taken from what others have set aside. */
        SET_ASIDE,
        /** More would be set aside than is on hand. */
        MORE_THAN_FREE,
        /** More than is set aside for the job. */
        MORE_THAN_RESERVED,
        /** More than was issued to the job. */
        MORE_THAN_ISSUED,
        /** Less would be on hand than is set aside. */
        BELOW_RESERVED,
        /** It was taken back already. */
        UNDONE_ALREADY,
        /** A price below zero. */
        PRICE
    }

    public Refusal {
        Objects.requireNonNull(why, "why");
        jobs = List.copyOf(jobs);
    }

    /** Whether it can be made all the same by somebody who knows that more is promised then than is there. */
    public boolean canBeSaid() {
        return why == Why.SET_ASIDE || why == Why.MORE_THAN_FREE || why == Why.BELOW_RESERVED;
    }

    /** What happened and what to do, for people. */
    public String message(UnaryOperator<String> numberOfJob) {
        ResourceBundle messages = ResourceBundle.getBundle("org.copperbook.jobs.stock.stock", Locale.getDefault(),
                Refusal.class.getClassLoader());
        String pattern = messages.getString("refused." + why.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        return new MessageFormat(pattern, Locale.getDefault()).format(new Object[] {item.code(), amount(asked.quantity()),
            item.unit().sign(), possible == null ? "" : amount(possible),
            String.join(", ", jobs.stream().map(numberOfJob).toList()),
            asked.unit() == null ? "" : asked.unit().sign()});
    }

    private static String amount(BigDecimal quantity) {
        NumberFormat format = NumberFormat.getInstance();
        format.setMaximumFractionDigits(StockItem.DECIMALS + 3);
        return format.format(quantity);
    }
}
