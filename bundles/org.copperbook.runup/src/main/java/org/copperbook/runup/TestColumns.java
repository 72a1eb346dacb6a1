package org.copperbook.runup;

import java.util.function.UnaryOperator;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.grid.GridColumns;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.winding.WindingRole;

/** Columns that the tests in process and those of the run-up have alike. */
public final class TestColumns {

    private TestColumns() {
    }

    /** A winding resistance: where, what was read, and under what conditions. */
    public static GridColumns resistance(GridColumns columns) {
        return columns.choice("/place/winding", "reading.winding", WindingRole.class)
                .choice("/place/kind", "reading.place", Place.Kind.class)
                .mark("/place/mark", "reading.mark")
                .observed("/observed", "reading.ohms", FieldUnit.OHM)
                .number("/windingCelsius", "reading.temperature", FieldUnit.CELSIUS)
                .instrument("/instrument", "reading.instrument")
                .choice("/method", "reading.method", Reading.Method.class)
                .moment("/at", "reading.at")
                .person("/by", "reading.by");
    }

    /** An insulation resistance, after the columns that say where. */
    public static GridColumns insulation(GridColumns columns) {
        return columns.mark("/place/mark", "reading.mark")
                .observed("/observed", "reading.insulation", FieldUnit.OHM.typedIn("MΩ"))
                .number("/testVolts", "reading.testVolts", FieldUnit.VOLT)
                .number("/afterSeconds", "reading.after", FieldUnit.SECOND)
                .number("/windingCelsius", "reading.temperature", FieldUnit.CELSIUS)
                .instrument("/instrument", "reading.instrument")
                .moment("/at", "reading.at")
                .person("/by", "reading.by");
    }

    /**
     * A surge comparison.
     *
     * @param rule adds the column of the rule that sets the level
     */
    public static GridColumns surge(GridColumns columns, UnaryOperator<GridColumns> rule) {
        GridColumns level = columns.choice("/winding", "reading.winding", WindingRole.class)
                .mark("/pair", "surge.pair")
                .number("/peakVolts", "surge.peak", FieldUnit.VOLT);
        return rule.apply(level)
                .either("/alike", "surge.alike", "surge.isAlike", "surge.differs")
                .says()
                .instrument("/instrument", "test.instrument")
                .moment("/at", "test.at")
                .person("/by", "test.by")
                .person("/cautionsBy", "test.cautionsBy")
                .text("/note", "test.note");
    }
}
