package org.copperbook.sheets.picture;

/** A place on a scene, in its units; y grows downwards. */
public record Point(double x, double y) {
}
