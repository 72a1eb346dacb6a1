package org.copperbook.sheets.template;

import java.util.Locale;
import org.copperbook.sheets.QuoteWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.page.Words;

/** A template that cannot be used; nothing was written. The message says why and what to do. */
public final class UnusableTemplate extends WorkbookNotWrittenException {

    private static final long serialVersionUID = 1L;

    /** Why. */
    public enum Why { MISSING, TOO_LARGE, BOMB, NO_WORKBOOK, PASSWORD, MACROS, ACTIVE, EXTERNAL, NO_NAMES, BROKEN_NAME, FORMULA,
        NOT_ONE_ROW, NOT_IN_ROW, TOO_LONG }

    private final Why why;

    UnusableTemplate(Why why, Throwable cause, Object... about) {
        super(Reason.CONTENT, new Words(QuoteWorkbook.class, "quote", Locale.ENGLISH).get("template." + why, about), cause);
        this.why = why;
    }

    public Why why() {
        return why;
    }
}
