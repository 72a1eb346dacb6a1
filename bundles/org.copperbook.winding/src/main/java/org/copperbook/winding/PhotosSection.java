package org.copperbook.winding;

import org.copperbook.desk.form.Form;

/** Photos of both ends. */
final class PhotosSection implements WindingSection {

    @Override
    public void build(Form here) {
        here.photos("winding.photos", "/photos");
    }

    @Override
    public boolean shown(boolean covered) {
        return true;
    }
}
