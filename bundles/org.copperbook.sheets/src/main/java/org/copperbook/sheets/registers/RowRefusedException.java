package org.copperbook.sheets.registers;

/** A row that can be read says something that the register cannot take; the message says what and what to do. */
public final class RowRefusedException extends Exception {

    private static final long serialVersionUID = 1L;

    private final String key;

    /** @param key key of the column at fault; empty for the row as a whole */
    public RowRefusedException(String key, String message) {
        super(message);
        this.key = key;
    }

    /** Key of the column at fault; empty for the row as a whole. */
    public String key() {
        return key;
    }
}
