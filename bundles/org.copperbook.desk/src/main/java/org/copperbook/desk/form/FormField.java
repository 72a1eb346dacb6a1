package org.copperbook.desk.form;

import java.util.List;
import org.copperbook.jobs.check.Verdict;

/** One field on a page. */
public interface FormField {

    /** What stands before the field; its pointer where nothing does. */
    default String label() {
        return pointer();
    }

    /** JSON pointer of the field in its part. */
    String pointer();

    /** Shows what the draft holds now. */
    void refresh();

    /** Shows the verdicts that stand at this field. */
    void show(List<Verdict> here);

    /** Whether it can be typed into now. */
    void enable(boolean enabled);

    /** Puts the cursor here. */
    void focus();
}
