package org.copperbook.calc.excitation;

import org.copperbook.calc.Require;

/**
 * The limits of the separate-excitation run, as fractions.
 *
 * @param outputBand how far the output may be from expected (0.10)
 * @param balance greatest unbalance of the three line voltages (0.01)
 * @param residual output at or below this share of expected counts as none (0.10)
 * @param speedBand how far the speed may be from nominal (0.04)
 */
public record RunLimits(double outputBand, double balance, double residual, double speedBand) {

    /** Common practice, no source. */
    public static final RunLimits DEFAULT = new RunLimits(0.10, 0.01, 0.10, 0.04);

    public RunLimits {
        Require.between("output band", outputBand, 0.001, 0.5, "", "a band outside this decides nothing");
        Require.between("balance limit", balance, 0.0001, 0.5, "", "a limit outside this decides nothing");
        Require.between("residual share", residual, 0, 1 - outputBand, "", "residual must lie below the output band");
        Require.between("speed band", speedBand, 0, 0.5, "", "a band outside this decides nothing");
    }
}
