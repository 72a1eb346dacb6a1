package org.copperbook.jobs.winding;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;

/** Which winding of the machine. */
public enum WindingRole {
    MAIN_STATOR("main-stator", false),
    MAIN_ROTOR("main-rotor", true),
    EXCITER_STATOR("exciter-stator", true),
    EXCITER_ROTOR("exciter-rotor", false),
    PILOT_STATOR("pilot-stator", false),
    MOTOR_STATOR("motor-stator", false),
    MOTOR_ROTOR("motor-rotor", false);

    private final String word;
    private final boolean field;

    WindingRole(String word, boolean field) {
        this.word = word;
        this.field = field;
    }

    /** The role as it stands in keys and files. */
    @JsonValue
    public String word() {
        return word;
    }

    /** Whether it is a direct-current field winding (poles) and not an alternating-current one (phases). */
    public boolean isField() {
        return field;
    }

    /** Whether the winding turns. */
    public boolean isRotor() {
        return this == MAIN_ROTOR || this == EXCITER_ROTOR || this == MOTOR_ROTOR;
    }

    /**
     * The role behind a word.
     *
     * @throws IllegalArgumentException when no role has that word
     */
    @JsonCreator
    public static WindingRole of(String word) {
        for (WindingRole r : values()) {
            if (r.word.equals(word)) {
                return r;
            }
        }
        throw new IllegalArgumentException("\"" + word + "\" is not a winding role");
    }
}
