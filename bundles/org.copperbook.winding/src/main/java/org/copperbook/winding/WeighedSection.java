package org.copperbook.winding;

import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;

/** The copper taken out of the old winding, weighed: the figures that follow compare it with what the data imply. */
final class WeighedSection implements WindingSection {

    @Override
    public void build(Form here) {
        here.section("winding.weighed").number("/copperRemovedKg", "winding.copperRemoved", FieldUnit.KILOGRAM);
    }
}
