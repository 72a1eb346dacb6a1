package org.copperbook.winding.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.copperbook.calc.winding.design.BareCore;
import org.copperbook.calc.winding.design.FirstWinding;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.winding.WindingData;
import org.junit.jupiter.api.Test;

/** A first winding follows from the record of a bare core, or the missing figures are named. */
class BareCoreCaseTest {

    private static final PartJson JSON = new PartJson();
    private static final BareCoreCase.Choice NONE = new BareCoreCase.Choice(null, null, null, null);

    private static WindingData core(String more) throws BadRecordException {
        return (WindingData) JSON.read(PartKey.parse("winding/main-stator"),
                "{\"schema\":1,\"role\":\"main-stator\",\"asWound\":false" + more + "}");
    }

    private static Nameplate plate(String more) throws BadRecordException {
        return (Nameplate) JSON.read(PartKey.parse("nameplate"), "{\"schema\":1" + more + "}");
    }

    /**
     * McPherson and Laramore, An Introduction to Electrical Machines and Transformers, ch. 3 Ex. 1-3: 36 slots, six
     * poles, 50 Hz, bore 0.3 m, length 0.25 m, span 5, two turns a coil; 119.38 V a phase at 0.96 T.
     */
    @Test
    void theBookWindingFollowsFromTheRecordOfItsCore() throws Exception {
        WindingData core = core(",\"slots\":36,\"poles\":6,\"boreM\":0.30,\"coreLengthM\":0.25,\"toothWidthM\":0.013,"
                + "\"yokeDepthM\":0.045,\"connection\":\"STAR\"");
        Nameplate plate = plate(",\"apparentPowerVA\":20000.0,\"voltageV\":206.772,\"frequencyHz\":50.0");
        BareCoreCase found = BareCoreCase.of(MachineKind.BRUSHLESS_ALTERNATOR, Optional.of(plate), Optional.of(core),
                new BareCoreCase.Choice(160e-6, 0.96, 0.7, null));
        assertEquals(List.of(), found.missing());
        FirstWinding best = BareCore.design(found.wish().orElseThrow()).proposals().get(0);
        assertEquals(5, best.span());
        assertEquals(2, best.turnsPerCoil());
        assertEquals(1, best.circuits());
        assertEquals(0.96, best.densities().gap(), 0.002);
        assertEquals(List.of("design.assumedStacking"), found.assumed());
    }

    @Test
    void everyMissingFigureIsNamedAndNothingIsAssumed() throws Exception {
        BareCoreCase nothing = BareCoreCase.of(MachineKind.BRUSHLESS_ALTERNATOR, Optional.empty(), Optional.empty(), NONE);
        assertTrue(nothing.wish().isEmpty());
        assertEquals(List.of("winding.slots", "winding.poles", "core.bore", "core.length", "core.tooth", "core.yoke",
                "design.slotArea", "design.volts", "design.hertz", "design.rating", "winding.connection"),
                nothing.missing());
        BareCoreCase motor = BareCoreCase.of(MachineKind.INDUCTION_MOTOR_CAGE,
                Optional.of(plate(",\"powerW\":11000.0,\"voltageV\":400.0,\"frequencyHz\":50.0")),
                Optional.of(core(",\"slots\":36,\"poles\":4,\"boreM\":0.155,\"coreLengthM\":0.16,\"outsideM\":0.26,"
                        + "\"slotDepthM\":0.0205,\"slotWidthTopM\":0.0074,\"slotWidthBottomM\":0.0105,"
                        + "\"toothWidthM\":0.0064,\"connection\":\"DELTA\"")), NONE);
        assertEquals(List.of("design.rating"), motor.missing(), "shaft power alone does not say the current");
    }

    @Test
    void aDoubtfulConnectionIsNotTakenForAStar() throws Exception {
        BareCoreCase zigzag = BareCoreCase.of(MachineKind.BRUSHLESS_ALTERNATOR,
                Optional.of(plate(",\"connection\":\"zig-zag star\"")), Optional.empty(), NONE);
        assertTrue(zigzag.missing().contains("winding.connection"));
        BareCoreCase star = BareCoreCase.of(MachineKind.BRUSHLESS_ALTERNATOR,
                Optional.of(plate(",\"connection\":\"parallel star\"")), Optional.empty(), NONE);
        assertTrue(!star.missing().contains("winding.connection"));
    }

    @Test
    void aYokeThatCannotBeIsMissing() throws Exception {
        BareCoreCase found = BareCoreCase.of(MachineKind.BRUSHLESS_ALTERNATOR, Optional.empty(),
                Optional.of(core(",\"boreM\":0.3,\"outsideM\":0.34,\"slotDepthM\":0.03")), NONE);
        assertTrue(found.missing().contains("core.yoke"), "outside, bore and slot depth leave no iron");
    }
}
