package org.copperbook.desk.command;

import java.nio.file.Path;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.store.UserFolders;
import org.eclipse.core.runtime.preferences.InstanceScope;

/** The folder that workbooks are written to: the one chosen in the preferences, else one in the user's data folder. */
public final class WorkbookFolder {

    /** Key of the preference. */
    public static final String KEY = "workbooks";

    /** Key of the preference that names a template for quotes on this screen only. */
    public static final String QUOTE_TEMPLATE = "quoteTemplate";

    private WorkbookFolder() {
    }

    /** The folder of now. */
    public static Path current() {
        String chosen = InstanceScope.INSTANCE.getNode(Desk.BUNDLE).get(KEY, "");
        return chosen.isBlank() ? standard() : Path.of(chosen);
    }

    /** The template for quotes on this screen, which goes before the workshop's; empty when none is chosen. */
    public static Optional<Path> quoteTemplate() {
        String chosen = InstanceScope.INSTANCE.getNode(Desk.BUNDLE).get(QUOTE_TEMPLATE, "");
        return chosen.isBlank() ? Optional.empty() : Optional.of(Path.of(chosen));
    }

    static Path standard() {
        return UserFolders.current().home().resolve("workbooks");
    }
}
