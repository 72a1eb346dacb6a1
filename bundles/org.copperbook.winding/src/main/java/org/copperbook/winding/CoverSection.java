package org.copperbook.winding;

import org.copperbook.desk.form.Form;

/** Says why turns and strands are not on the page now. */
final class CoverSection implements WindingSection {

    @Override
    public void build(Form here) {
        here.words("cover.why");
    }

    @Override
    public boolean shown(boolean covered) {
        return covered;
    }
}
