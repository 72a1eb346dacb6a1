package org.copperbook.winding;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.reading.Conditions;
import org.copperbook.desk.reading.ConditionsArea;
import org.copperbook.desk.reading.NewReading;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.winding.CoilGroup;

/** The conditions that hold for the readings typed from now on, and the readings begun under them. */
final class WindingReadings implements WindingSection {

    private final OpenWinding winding;
    private ConditionsArea conditions;

    WindingReadings(OpenWinding winding) {
        this.winding = winding;
    }

    @Override
    public void build(Form here) {
        conditions = new ConditionsArea(here.area("winding.conditions"), winding.site().instruments(),
                lastConditions(), false);
        conditions.then(() -> here.reveal("/groups/0/resistance"));
    }

    /** Puts the cursor on the first of the conditions. */
    boolean focus() {
        return conditions.focus();
    }

    /** A reading of this winding taken now, still without what was observed. */
    ObjectNode begin(ReadingQuantity quantity, Place.Kind place) {
        // by the key, not by the record: while a block is pasted the record is in the middle of a change
        String name = winding.site().key().name();
        boolean asWound = name.endsWith(PartKey.AS_WOUND);
        Reading.State state = asWound ? Reading.State.IN_PROCESS : Reading.State.AS_FOUND;
        ObjectNode reading = new NewReading(winding.site()).of(quantity, place, state, conditions.conditions());
        ((ObjectNode) reading.path("place")).put("winding", asWound
                ? name.substring(0, name.length() - PartKey.AS_WOUND.length()) : name);
        return reading;
    }

    private Conditions lastConditions() {
        return winding.data().stream().flatMap(d -> d.groups().stream()).map(CoilGroup::resistance)
                .filter(r -> r != null).reduce((first, second) -> second).map(Conditions::of).orElse(Conditions.NONE);
    }

    @Override
    public boolean shown(boolean covered) {
        return true;
    }
}
