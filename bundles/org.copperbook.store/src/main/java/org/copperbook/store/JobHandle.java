package org.copperbook.store;

/**
 * A job that has been given its number.
 *
 * @param id     key that never changes (a UUID)
 * @param number the number people use
 */
public record JobHandle(String id, String number) {
}
