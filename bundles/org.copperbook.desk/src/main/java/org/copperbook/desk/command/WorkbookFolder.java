package org.copperbook.desk.command;

import java.nio.file.Path;
import org.copperbook.desk.Desk;
import org.copperbook.store.UserFolders;
import org.eclipse.core.runtime.preferences.InstanceScope;

/** The folder that workbooks are written to: the one chosen in the preferences, else one in the user's data folder. */
public final class WorkbookFolder {

    /** Key of the preference. */
    public static final String KEY = "workbooks";

    private WorkbookFolder() {
    }

    /** The folder of now. */
    public static Path current() {
        String chosen = InstanceScope.INSTANCE.getNode(Desk.BUNDLE).get(KEY, "");
        return chosen.isBlank() ? standard() : Path.of(chosen);
    }

    static Path standard() {
        return UserFolders.current().home().resolve("workbooks");
    }
}
