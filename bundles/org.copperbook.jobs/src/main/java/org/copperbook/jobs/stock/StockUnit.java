package org.copperbook.jobs.stock;

import java.math.BigDecimal;
import java.util.Optional;

/** What an item is counted in. */
public enum StockUnit {
    KG("kg"), PC("pc"), M("m"), L("l");

    private final String sign;

    StockUnit(String sign) {
        this.sign = sign;
    }

    /** The unit as quotes and lists write it. */
    public String sign() {
        return sign;
    }

    /** Whether only whole numbers of it can be moved. */
    public boolean whole() {
        return this == PC;
    }

    /** Whether an amount can be counted in this unit: whole pieces, else thousandths. */
    public boolean counts(BigDecimal amount) {
        return amount.stripTrailingZeros().scale() <= (whole() ? 0 : StockItem.DECIMALS);
    }

    /** The unit behind a sign, whatever its letter case. */
    public static Optional<StockUnit> of(String sign) {
        for (StockUnit u : values()) {
            if (sign != null && u.sign.equalsIgnoreCase(sign.strip())) {
                return Optional.of(u);
            }
        }
        return Optional.empty();
    }
}
