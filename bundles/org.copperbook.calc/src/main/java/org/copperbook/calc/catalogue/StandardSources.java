package org.copperbook.calc.catalogue;

import java.util.List;

import org.copperbook.calc.resistance.ResistanceCalculations;

/** The contributors of the standard catalogue, in the order in which areas are shown. */
final class StandardSources {

    private StandardSources() {
    }

    static List<CalculationSource> all() {
        return List.of(
                new ResistanceCalculations());
    }
}
