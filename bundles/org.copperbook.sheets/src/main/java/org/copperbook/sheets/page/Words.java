package org.copperbook.sheets.page;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The texts of a workbook in one language. Languages that are not shipped get English. */
public final class Words {

    private final ResourceBundle bundle;
    private final Locale locale;

    /** @param bundle name of the resource bundle beside the caller's class */
    public Words(Class<?> beside, String bundle, Locale locale) {
        this.locale = locale;
        this.bundle = ResourceBundle.getBundle(beside.getPackageName() + "." + bundle, locale, beside.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** The text under a key with its blanks filled. */
    public String get(String key, Object... filled) {
        return new MessageFormat(bundle.getString(key), locale).format(filled);
    }

    /** The text for a member of an enumeration, under "Type.NAME" or "Owner.Type.NAME"; null has none. */
    public String of(Enum<?> member) {
        if (member == null) {
            return "";
        }
        Class<?> type = member.getDeclaringClass();
        String owner = type.getEnclosingClass() == null ? "" : type.getEnclosingClass().getSimpleName() + ".";
        return get(owner + type.getSimpleName() + "." + member.name());
    }

    /** The text as it stands, for patterns that are filled elsewhere. */
    public String raw(String key) {
        return bundle.getString(key);
    }
}
