package org.copperbook.calc.insulation;

/** The groups for which IEEE 43-2013, table 3 sets a minimum one-minute insulation resistance at 40 degrees Celsius. */
public enum WindingInsulation {
    /** Windings made before about 1970, all field windings, and windings not named elsewhere: kV + 1 megohm. */
    BEFORE_1970_OR_FIELD,
    /** Form-wound alternating-current windings made after about 1970: 100 megohm. */
    FORM_WOUND_AC,
    /** Random-wound windings, and form-wound ones rated below 1 kV: 5 megohm. */
    RANDOM_OR_BELOW_1_KV,
    /** Direct-current armatures by the 2013 edition: 5 megohm. */
    DC_ARMATURE_2013,
    /** Direct-current armatures by the 2000 edition: 100 megohm. */
    DC_ARMATURE_2000
}
