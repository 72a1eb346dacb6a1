package org.copperbook.calc.catalogue;

import java.util.List;

/** A contributor of calculations, usually one small class per package. */
public interface CalculationSource {

    List<Calculation> calculations();
}
