package org.copperbook.calc.money;

import java.math.BigDecimal;

import org.copperbook.calc.Require;

/**
 * A tax added to net amounts.
 *
 * @param name what the customer reads
 * @param percent per cent of the net amount, 0 to 100; zero for exempt lines
 */
public record TaxKind(String name, BigDecimal percent) {

    public TaxKind {
        Require.between("tax", percent.doubleValue(), 0, 100, "%", "a tax is a share of the net amount");
    }
}
