package org.copperbook.calc.runup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.complex.Complex;
import org.copperbook.calc.runup.Regulation.Load;
import org.copperbook.calc.runup.Regulation.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Regulation against complex arithmetic (Apache Commons Math) and on a machine whose curve is a straight line. */
class RegulationTest {

    @ParameterizedTest
    @CsvSource({"1, LAG", "0.8, LAG", "0.8, LEAD", "0.3, LAG", "0, LAG", "0, LEAD"})
    void voltageBehindAnImpedance(double pf, Side side) {
        double angle = Math.acos(pf) * (side == Side.LAG ? -1 : 1);
        Complex i = new Complex(50 * Math.cos(angle), 50 * Math.sin(angle));
        double e = new Complex(230, 0).add(i.multiply(new Complex(0.25, 3.2))).abs();
        assertEquals(e, Regulation.voltsBehind(new Load(230, 50, pf, side), 0.25, 3.2), 1e-9);
    }

    /** Without saturation the field-current methods and the impedance method are one. */
    @ParameterizedTest
    @CsvSource({"1, LAG", "0.8, LAG", "0.8, LEAD", "0, LAG"})
    void allMethodsAgreeOnAnUnsaturatedMachine(double pf, Side side) {
        double slope = 100;
        OpenCircuitCurve straight = OpenCircuitCurve.of(new double[][] {{0.001, 0.1}, {5, 500}, {20, 2000}});
        Load load = new Load(230, 40, pf, side);
        double xs = 3;
        double leakage = 0.5;
        double ifShort = 40 * xs / slope;
        double r = 0;
        double expected = Regulation.voltsBehind(load, r, xs);
        assertEquals(expected, Regulation.voltsByAmpereTurns(load, r, straight, ifShort), 1e-6);
        Regulation.PotierTriangle t = new Regulation.PotierTriangle(leakage, 40 * (xs - leakage) / slope);
        assertEquals(expected, Regulation.voltsByPotier(load, r, straight, t), 1e-6);
        assertEquals(expected, Regulation.voltsByAsa(load, r, straight, slope, ifShort, t), 1e-6);
    }

    @Test
    void noCurrentMeansNoRegulation() {
        assertEquals(0, Regulation.bySynchronousImpedance(new Load(230, 0, 0.8, Side.LAG), 0.2, 3), 1e-15);
    }

    /** Potier's triangle is found again on a saturating curve made with a known leakage reactance and armature field. */
    @Test
    void potierTriangleIsFoundAgain() {
        double[][] p = new double[400][];
        for (int i = 0; i < p.length; i++) {
            double x = 0.01 + i * 0.05;
            p[i] = new double[] {x, 400 * x / (4 + x)};
        }
        OpenCircuitCurve curve = OpenCircuitCurve.of(p);
        double slope = 100;
        double leakage = 0.8;
        double armature = 0.9;
        double amperes = 40;
        double ifShort = armature + amperes * leakage / slope;
        double zeroPf = curve.fieldFor(230 + amperes * leakage) + armature;
        Regulation.PotierTriangle t = Regulation.potier(curve, zeroPf, ifShort, slope, 230, amperes);
        assertEquals(leakage, t.leakageReactance(), 1e-3);
        assertEquals(armature, t.armatureField(), 1e-3);
    }
}
