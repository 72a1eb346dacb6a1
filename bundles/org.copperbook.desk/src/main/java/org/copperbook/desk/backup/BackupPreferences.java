package org.copperbook.desk.backup;

import java.nio.file.Path;
import java.time.Duration;
import org.copperbook.desk.Desk;
import org.copperbook.store.backup.BackupPlan;
import org.copperbook.store.backup.Backups;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;

/** What the preferences say of backups; what was never set, or cannot be, has its default. */
public final class BackupPreferences {

    /** Folder of the backups. */
    public static final String FOLDER = "backups";
    /** Hours between two. */
    public static final String HOURS = "backups.hours";
    /** How many of the newest are kept. */
    public static final String KEEP = "backups.keep";
    /** How many days the others are kept. */
    public static final String DAYS = "backups.days";

    private BackupPreferences() {
    }

    /** The plan of now. */
    public static BackupPlan plan() {
        BackupPlan standard = BackupPlan.STANDARD;
        return new BackupPlan(Duration.ofHours(Math.max(1, node().getInt(HOURS, (int) standard.every().toHours()))),
                Math.max(1, node().getInt(KEEP, standard.keep())), Math.max(0, node().getInt(DAYS, standard.days())));
    }

    /** The folder of now: the one chosen, else one beside the store. */
    public static Path folder(Path store) {
        String chosen = node().get(FOLDER, "");
        return chosen.isBlank() ? Backups.beside(store) : Path.of(chosen);
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(Desk.BUNDLE);
    }
}
