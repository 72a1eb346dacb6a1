package org.copperbook.desk.register;

import org.copperbook.store.RegisterRow;

/** Gives the text of one column of the register. */
@FunctionalInterface
public interface RegisterCell {

    /** The text for a row; empty when there is nothing to say. */
    String text(RegisterRow row);
}
