package org.copperbook.calc.winding.design;

/** Figures that have a usual range. */
public enum DesignQuantity {
    /** Peak flux density in the air gap, T. */
    GAP,
    /** Peak apparent flux density in the teeth, T. */
    TOOTH,
    /** Peak flux density in the yoke, T. */
    YOKE,
    /** Ampere-conductors along the bore, A/m. */
    LINEAR_LOADING,
    /** Current density in an open ventilated stator, A/m2. */
    STATOR_CURRENT_DENSITY_OPEN,
    /** Current density in a totally enclosed stator, A/m2. */
    STATOR_CURRENT_DENSITY_CLOSED,
    /** Current density in a field winding, A/m2. */
    FIELD_CURRENT_DENSITY,
    /** Squares round the insulated wires over the slot area. */
    SQUARE_CELL_FILL,
    /** Coil span over pole pitch. */
    PITCH
}
