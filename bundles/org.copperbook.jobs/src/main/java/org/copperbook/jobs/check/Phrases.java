package org.copperbook.jobs.check;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.winding.WindingRole;

/** The texts of verdicts, hold points and stages, from a message bundle. Numbers come in as text already shaped. */
final class Phrases {

    private static final String BUNDLE = "org.copperbook.jobs.check.verdicts";

    private Phrases() {
    }

    /** The phrase under a key with its arguments filled in. */
    static String say(String key, Object... args) {
        String pattern = ResourceBundle.getBundle(BUNDLE, Locale.getDefault(), Phrases.class.getClassLoader())
                .getString(key);
        return new MessageFormat(pattern, Locale.getDefault()).format(args);
    }

    /** The word for a constant of an enumeration: key is the prefix, a dot and the constant in lower case. */
    static String word(String prefix, Enum<?> constant) {
        return say(prefix + "." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** A part under the seal of a release in words, from its key as {@link Seal} gives it. */
    static String part(String sealed) {
        if (sealed.equals(Seal.DECISIONS)) {
            return say("sealed.decisions");
        }
        PartKey key = PartKey.parse(sealed);
        if (key.kind() != PartKind.WINDING) {
            return word("sealed", key.kind());
        }
        boolean asWound = key.name().endsWith(PartKey.AS_WOUND);
        String role = asWound ? key.name().substring(0, key.name().length() - PartKey.AS_WOUND.length()) : key.name();
        return say(asWound ? "sealed.as-wound" : "sealed.as-found", word("role", WindingRole.of(role)));
    }
}
