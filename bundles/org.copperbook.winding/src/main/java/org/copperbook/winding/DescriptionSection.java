package org.copperbook.winding;

import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.jobs.winding.WindingData;

/** The short description of a winding: what a regular one is laid out from, and how it is connected. */
final class DescriptionSection implements WindingSection {

    static final int MOST_SLOTS = 1000;

    @Override
    public void build(Form here) {
        here.section("winding.description")
                .integer("/slots", "winding.slots", 1, MOST_SLOTS)
                .integer("/poles", "winding.poles", 2, 200)
                .integer("/phases", "winding.phases", 0, 3)
                .integer("/layers", "winding.layers", 1, 99)
                .choice("/coilType", "winding.coilType", WindingData.CoilType.class)
                .text("/span", "winding.span")
                .text("/groupSequence", "winding.sequence")
                .integer("/groupsPerPhase", "winding.groupsPerPhase", 1, 200)
                .integer("/coilsPerGroup", "winding.coilsPerGroup", 1, 200)
                .integer("/coilCount", "winding.coilCount", 1, MOST_SLOTS)
                .integer("/circuits", "winding.circuits", 1, 100)
                .choice("/connection", "winding.connection", WindingData.Connection.class)
                .integer("/leads", "winding.leads", 1, 48)
                .number("/meanTurnM", "winding.meanTurn", FieldUnit.METRE)
                .choice("/conductor", "winding.conductor", WindingData.Conductor.class)
                .text("/polaritySequence", "winding.polarity")
                .text("/reason", "winding.reason");
    }

    @Override
    public boolean shown(boolean covered) {
        return true;
    }
}
