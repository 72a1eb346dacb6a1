/**
 * The fault finder of a job: symptoms and answers given, readings picked from the record, tables of likelihood that the
 * workshop can edit, and the report that ranks the suspects and names the next test.
 */
package org.copperbook.jobs.faults;
