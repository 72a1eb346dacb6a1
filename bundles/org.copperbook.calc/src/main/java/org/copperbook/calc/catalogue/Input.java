package org.copperbook.calc.catalogue;

/**
 * An input of a calculation.
 *
 * @param name how it is named in key=value
 * @param type what it accepts
 * @param required whether it must be given
 * @param defaultText the text used when it is not given, or null
 * @param doc what it is, with its range
 */
public record Input(String name, InputType type, boolean required, String defaultText, String doc) {
}
