package org.copperbook.store.backup;

import java.time.Duration;

/**
 * How often the store is backed up and which backups are kept.
 *
 * @param every time between two backups, at least a minute
 * @param keep  this many of the newest are kept whatever their age, at least 1
 * @param days  those younger than this many days are kept whatever their number, 0 for none
 */
public record BackupPlan(Duration every, int keep, int days) {

    /** Every four hours; ten, and all of the last thirty days. */
    public static final BackupPlan STANDARD = new BackupPlan(Duration.ofHours(4), 10, 30);

    public BackupPlan {
        if (every.compareTo(Duration.ofMinutes(1)) < 0 || keep < 1 || days < 0) {
            throw new IllegalArgumentException("at least a minute between backups, one kept, no negative days");
        }
    }
}
