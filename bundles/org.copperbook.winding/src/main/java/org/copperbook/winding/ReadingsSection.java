package org.copperbook.winding;

import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;

/** Readings of phases and between terminals. */
final class ReadingsSection implements WindingSection {

    private final WindingReadings readings;

    ReadingsSection(WindingReadings readings) {
        this.readings = readings;
    }

    @Override
    public void build(Form here) {
        here.grid("winding.readings", "/readings", columns -> columns
                .choice("/place/kind", "reading.place", Place.Kind.class)
                .mark("/place/mark", "reading.mark")
                .observed("/observed", "reading.ohms", FieldUnit.OHM)
                .number("/windingCelsius", "group.temperature", FieldUnit.CELSIUS)
                .instrument("/instrument", "group.instrument")
                .choice("/method", "reading.method", Reading.Method.class)
                .moment("/at", "count.at")
                .person("/by", "count.by"))
                .newRow(() -> readings.begin(ReadingQuantity.RESISTANCE, Place.Kind.PHASE));
    }

    @Override
    public boolean shown(boolean covered) {
        return true;
    }
}
