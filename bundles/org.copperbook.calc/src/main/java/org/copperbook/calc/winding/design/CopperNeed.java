package org.copperbook.calc.winding.design;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.copperbook.calc.Require;

/**
 * Copper to be drawn from stock, and what it costs.
 *
 * @param bareKilograms bare mass of the winding in kg
 * @param orderKilograms mass to draw, allowance for ends and waste included, in kg
 * @param cost mass to draw times the price, to the cent, half up
 */
public record CopperNeed(double bareKilograms, double orderKilograms, BigDecimal cost) {

    /**
     * @param bareKilograms bare mass of the winding in kg, 0 or more
     * @param allowance share added for ends and waste, 0 to 1 (0.05 to 0.1 is common practice)
     * @param pricePerKilogram price per kg in the shop's currency
     * @return need and cost
     */
    public static CopperNeed of(double bareKilograms, double allowance, BigDecimal pricePerKilogram) {
        Require.notNegative("copper mass", bareKilograms, "kg");
        Require.between("allowance for ends and waste", allowance, 0, 1, "", "more would be a second winding");
        double order = bareKilograms * (1 + allowance);
        BigDecimal grams = BigDecimal.valueOf(order).setScale(3, RoundingMode.HALF_UP);
        return new CopperNeed(bareKilograms, order, grams.multiply(pricePerKilogram).setScale(2, RoundingMode.HALF_UP));
    }
}
