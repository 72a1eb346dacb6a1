package org.copperbook.desk.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.MissingResourceException;

/**
 * The visible texts of one plug-in: the {@code messages.properties} beside an anchor class, in the language of the
 * locale. One file per plug-in.
 */
public final class Words {

    private final ResourceBundle bundle;

    private Words(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /** The texts in the {@code messages.properties} of the anchor's package. */
    public static Words of(Class<?> anchor) {
        return new Words(ResourceBundle.getBundle(anchor.getPackageName() + ".messages", Locale.getDefault(),
                anchor.getClassLoader()));
    }

    /**
     * A text with its {0} places filled in.
     *
     * @throws MissingResourceException when the file has no such key, which a test of each plug-in rules out
     */
    public String text(String key, Object... args) {
        String pattern = bundle.getString(key);
        return args.length == 0 ? pattern.replace("''", "'") : new MessageFormat(pattern, Locale.getDefault()).format(args);
    }

    /** Whether a key has a text. */
    public boolean has(String key) {
        return bundle.containsKey(key);
    }

    /** The word for an enum constant: key "Simple class name.CONSTANT", e.g. "MachineKind.BRUSHLESS_ALTERNATOR". */
    public String of(Enum<?> constant) {
        return text(key(constant));
    }

    /** The key under which the word of an enum constant stands. */
    public static String key(Enum<?> constant) {
        return constant.getDeclaringClass().getSimpleName() + "." + constant.name();
    }
}
