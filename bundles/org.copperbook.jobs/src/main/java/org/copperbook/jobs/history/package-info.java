/** What changed between two revisions of a part. */
package org.copperbook.jobs.history;
