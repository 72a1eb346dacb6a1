package org.copperbook.calc.winding.capture;

import org.copperbook.calc.Require;

/**
 * What the readings have in common, as standard uncertainties, and how rare slips are. Defaults are common practice
 * without a source but for the wire: its diameter may be off by one percent (IEC 60317-0-1), so its area by two, which
 * over the square root of three is 0.0115.
 *
 * @param meanTurn relative, of the mean length of turn
 * @param area relative, of the conductor area
 * @param kelvin of the winding temperature in K
 * @param gain relative, of the resistance meter's gain
 * @param coilSpread relative, from coil to coil by hand winding
 * @param cleanProbability probability before any reading that a capture has no slip
 * @param alarmBelow a capture is questioned when the probability that it is clean falls below this
 */
public record CaptureUncertainty(double meanTurn, double area, double kelvin, double gain, double coilSpread,
        double cleanProbability, double alarmBelow) {
    public CaptureUncertainty {
        String reason = "outside it the comparison says nothing";
        Require.between("uncertainty of the mean turn", meanTurn, 0, 0.2, "", reason);
        Require.between("uncertainty of the conductor area", area, 0, 0.2, "", reason);
        Require.between("uncertainty of the temperature", kelvin, 0, 20, "K", reason);
        Require.between("uncertainty of the meter's gain", gain, 0, 0.1, "", reason);
        Require.between("spread from coil to coil", coilSpread, 0, 0.1, "", reason);
        Require.between("probability of a clean capture", cleanProbability, 0.01, 0.999, "", "both must be possible");
        Require.between("alarm threshold", alarmBelow, 1e-6, 0.999, "", "an alarm must be possible and not certain");
    }

    /** @return defaults for hand-wound random windings read with a bridge */
    public static CaptureUncertainty usual() {
        return new CaptureUncertainty(0.017, 0.0115, 1.5, 0.002, 0.01, 0.9, 0.4);
    }
}
