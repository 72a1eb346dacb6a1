package org.copperbook.jobs.signoff;

/** Roles of people in the shop. */
public enum Role { FOREMAN, WINDER, TESTER, QUALITY_CHECKER, OFFICE, OWNER }
