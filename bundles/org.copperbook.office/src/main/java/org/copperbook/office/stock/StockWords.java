package org.copperbook.office.stock;

import com.fasterxml.jackson.databind.node.DecimalNode;
import java.math.BigDecimal;
import java.text.NumberFormat;
import java.time.Instant;
import java.util.Currency;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.desk.entry.DecimalEntry;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.stock.StockItem;

/** Amounts, money, times and items in words. */
final class StockWords {

    private static final int USUAL_DIGITS = 2;
    private static final int MOST_DIGITS = 6;

    private final Words words;

    StockWords(Words words) {
        this.words = words;
    }

    String text(String key, Object... values) {
        return words.text(key, values);
    }

    String of(Enum<?> constant) {
        return words.of(constant);
    }

    /** An amount as people of here write it. */
    static String amount(BigDecimal amount) {
        NumberFormat format = NumberFormat.getInstance();
        format.setMaximumFractionDigits(StockItem.DECIMALS);
        return amount == null ? "" : format.format(amount);
    }

    /** An amount with its unit. */
    static String amount(BigDecimal amount, StockItem item) {
        return amount(amount) + "\u00a0" + item.unit().sign();
    }

    /** Money with the digits of its currency. */
    static String money(BigDecimal sum, String currency) {
        if (sum == null) {
            return "";
        }
        NumberFormat format = NumberFormat.getInstance();
        int digits = digits(currency);
        format.setMinimumFractionDigits(digits);
        format.setMaximumFractionDigits(digits);
        return format.format(sum);
    }

    /** A price per unit, which may be finer than the currency's smallest coin. */
    static String price(BigDecimal price, String currency) {
        if (price == null) {
            return "";
        }
        NumberFormat format = NumberFormat.getInstance();
        format.setMinimumFractionDigits(digits(currency));
        format.setMaximumFractionDigits(MOST_DIGITS);
        return format.format(price);
    }

    /** A number as it stands in a field to be typed over. */
    static String typed(BigDecimal number) {
        return number == null ? "" : new DecimalEntry().show(DecimalNode.valueOf(number));
    }

    private static int digits(String currency) {
        try {
            return Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits());
        } catch (IllegalArgumentException e) {
            return USUAL_DIGITS;
        }
    }

    static String when(Instant at) {
        return Days.ofLocale().moment(at);
    }

    /** What an item is: its name, size and grade. */
    String what(StockItem item) {
        return Stream.of(Optional.ofNullable(item.name()), Optional.ofNullable(item.size()),
                Optional.ofNullable(item.grade()).map(g -> words.text("stock.ofGrade", g)))
                .flatMap(Optional::stream).filter(s -> !s.isBlank()).collect(Collectors.joining(", "));
    }

    /** What to look at: order anew, more promised than there is. */
    String hint(StockItem item) {
        if (Boolean.TRUE.equals(item.retired())) {
            return words.text("stock.retired");
        }
        if (item.free().signum() < 0) {
            return words.text("stock.short", amount(item.free().negate(), item));
        }
        return item.isLow() ? words.text("stock.low") : "";
    }

    /** Whether what is said of it is to be seen first. */
    static boolean isWarning(StockItem item) {
        return item.isLow() || item.free().signum() < 0;
    }
}
