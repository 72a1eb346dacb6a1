package org.copperbook.calc.wire;

import org.copperbook.calc.Require;

/**
 * Wire on the shelf.
 *
 * @param size size
 * @param grade enamel
 * @param kilograms mass on hand in kg, 0 or more
 */
public record StockedWire(WireSize size, InsulationGrade grade, double kilograms) {
    public StockedWire {
        Require.notNegative("wire on hand", kilograms, "kg");
    }
}
