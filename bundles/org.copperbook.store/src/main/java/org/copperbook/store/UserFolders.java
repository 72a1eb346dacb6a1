package org.copperbook.store;

import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * Where Copperbook keeps a user's data.
 *
 * @param home the folder itself
 */
public record UserFolders(Path home) {

    /** System property that names the folder outright. */
    public static final String HOME_PROPERTY = "copperbook.home";

    /** The folder for this user on this machine. */
    public static UserFolders current() {
        return of(System::getProperty, System::getenv);
    }

    /**
     * The folder by the rule: the property {@value #HOME_PROPERTY}, else the place the operating system gives to
     * applications.
     */
    static UserFolders of(UnaryOperator<String> property, UnaryOperator<String> environment) {
        String named = property.apply(HOME_PROPERTY);
        if (named != null && !named.isBlank()) {
            return new UserFolders(Path.of(named).toAbsolutePath().normalize());
        }
        Path user = Path.of(property.apply("user.home"));
        String os = property.apply("os.name").toLowerCase(Locale.ROOT);
        if (os.startsWith("windows")) {
            String roaming = environment.apply("APPDATA");
            Path base = roaming == null || roaming.isBlank() ? user.resolve("AppData").resolve("Roaming")
                    : Path.of(roaming);
            return new UserFolders(base.resolve("Copperbook"));
        }
        if (os.startsWith("mac")) {
            return new UserFolders(user.resolve("Library").resolve("Application Support").resolve("Copperbook"));
        }
        return new UserFolders(user.resolve(".copperbook"));
    }

    /** The workshop's store. */
    public Path store() {
        return home.resolve("workshop.sqlite");
    }

    /** The store of the invented demo workshop. */
    public Path demoStore() {
        return home.resolve("demo.sqlite");
    }

    /** What belongs to stores on a server on this machine. */
    public Path shared() {
        return home.resolve("shared");
    }

    /** Typed but unsaved entries. */
    public Path journal() {
        return home.resolve("journal");
    }

    /** The native library of the database engine. */
    public Path nativeLibraries() {
        return home.resolve("native");
    }
}
