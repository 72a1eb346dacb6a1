package org.copperbook.jobs.booking;

/** Hazards to be known before anybody opens the machine. */
public enum Hazard { ASBESTOS_ERA_INSULATION, OIL, CONTAMINATION, HEAVY_LIFT, STORED_ENERGY, SHARP_EDGES, OTHER }
