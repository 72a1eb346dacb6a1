package org.copperbook.calc.excitation;

import org.copperbook.calc.Require;
import org.copperbook.calc.excitation.DiodeFinding.Reason;
import org.copperbook.calc.excitation.DiodeFinding.State;
import org.copperbook.calc.excitation.DiodeReading.Mode;
import org.copperbook.calc.excitation.DiodeReading.Placement;
import org.copperbook.calc.excitation.DiodeReading.Side;

/**
 * Classes a diode by its forward and reverse reading. Low both ways is shorted, blocking both ways is open, conducting one
 * way only is good (US Army TM 55-1930-209-14P-9-4). Good and shorted are said of isolated readings only: in the closed
 * bridge a good diode can read low both ways through the field and its opposite partner, so an in-circuit reading is
 * doubtful whatever it shows (common practice).
 */
public final class DiodeCheck {

    private enum Way {
        SHORT, CONDUCTS, BETWEEN, BLOCKS, MISSING
    }

    private DiodeCheck() {
    }

    /** Classes by {@link DiodeLimits#DEFAULT}. */
    public static DiodeFinding classify(DiodeReading reading) {
        return classify(reading, DiodeLimits.DEFAULT);
    }

    /** Classes by the limits given. */
    public static DiodeFinding classify(DiodeReading reading, DiodeLimits limits) {
        Way forward = way(reading.forward(), reading.forwardMode(), limits);
        Way reverse = way(reading.reverse(), reading.reverseMode(), limits);
        DiodeFinding isolated = isolated(forward, reverse);
        if (reading.placement() == Placement.ISOLATED || isolated.state() == State.NOT_MEASURED) {
            return isolated;
        }
        return new DiodeFinding(State.DOUBTFUL, isolated.suspected(), Reason.LIFT_THE_LEAD);
    }

    private static DiodeFinding isolated(Way forward, Way reverse) {
        if (forward == Way.MISSING || reverse == Way.MISSING) {
            return new DiodeFinding(State.NOT_MEASURED, State.NOT_MEASURED, Reason.NOT_READ);
        }
        boolean forwardPasses = forward == Way.CONDUCTS || forward == Way.SHORT;
        boolean reversePasses = reverse == Way.CONDUCTS || reverse == Way.SHORT;
        if (forwardPasses && reversePasses) {
            return sure(State.SHORTED, Reason.LOW_BOTH_WAYS);
        }
        if (forward == Way.BLOCKS && reverse == Way.BLOCKS) {
            return sure(State.OPEN, Reason.BLOCKS_BOTH_WAYS);
        }
        if (forward == Way.CONDUCTS && reverse == Way.BLOCKS) {
            return sure(State.GOOD, Reason.CONDUCTS_ONE_WAY);
        }
        if (forward == Way.BLOCKS && reversePasses) {
            return new DiodeFinding(State.DOUBTFUL, State.GOOD, Reason.CONDUCTS_BACKWARDS);
        }
        return new DiodeFinding(State.DOUBTFUL, State.DOUBTFUL, Reason.BETWEEN_THE_LIMITS);
    }

    private static DiodeFinding sure(State state, Reason reason) {
        return new DiodeFinding(state, state, reason);
    }

    private static Way way(Side side, Mode mode, DiodeLimits limits) {
        if (side instanceof Side.AboveRange) {
            return Way.BLOCKS;
        }
        if (side instanceof Side.BelowResolution) {
            return Way.SHORT;
        }
        if (side instanceof Side.Value v) {
            Require.notNegative("diode reading", v.amount(), mode == Mode.OHMS ? "ohm" : "V");
            return mode == Mode.OHMS ? byOhms(v.amount(), limits) : byVolts(v.amount(), limits);
        }
        return Way.MISSING;
    }

    private static Way byOhms(double ohms, DiodeLimits limits) {
        if (ohms <= limits.conductsBelowOhms()) {
            return Way.CONDUCTS;
        }
        return ohms >= limits.blocksAboveOhms() ? Way.BLOCKS : Way.BETWEEN;
    }

    private static Way byVolts(double volts, DiodeLimits limits) {
        if (volts <= limits.shortBelowVolts()) {
            return Way.SHORT;
        }
        if (volts >= limits.forwardLowVolts() && volts <= limits.forwardHighVolts()) {
            return Way.CONDUCTS;
        }
        // a diode range shows its open voltage, above any junction's drop, when nothing conducts
        return volts > 2 * limits.forwardHighVolts() ? Way.BLOCKS : Way.BETWEEN;
    }
}
