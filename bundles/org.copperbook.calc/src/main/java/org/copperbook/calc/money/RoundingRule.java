package org.copperbook.calc.money;

/** Where amounts are rounded; the rule is printed on the quote. */
public enum RoundingRule {
    /** Every line's net amount and every tax total is rounded; totals are sums of rounded amounts. */
    LINES,
    /** Lines are summed unrounded; net total per tax kind and tax total are rounded. */
    TOTALS
}
