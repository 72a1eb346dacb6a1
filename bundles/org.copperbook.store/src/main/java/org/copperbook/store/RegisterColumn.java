package org.copperbook.store;

/** Columns by which the register can be sorted. */
public enum RegisterColumn { NUMBER, CUSTOMER, MACHINE, SERIAL, STAGE, PROMISED, CHANGED }
