package org.copperbook.calc.winding.memory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PastWindingsTest {
    private static final double UNKNOWN = Double.NaN;

    /** Oracle: a plain scan that sorts every row by its distance. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void agreesWithAPlainScan(long seed) {
        Random random = new Random(seed);
        List<MachineFigures> past = IntStream.range(0, 1000).mapToObj(i -> draw(random, 0.1)).toList();
        PastWindings index = PastWindings.of(past);
        for (int q = 0; q < 8; q++) {
            MachineFigures asked = draw(random, 0.15);
            List<Integer> expected = IntStream.range(0, past.size()).boxed()
                    .sorted(Comparator.comparingDouble(i -> distance(asked, past.get(i)))).limit(10).toList();
            List<PastWinding> found = index.nearest(asked, 10);
            for (int i = 0; i < 10; i++) {
                assertEquals(distance(asked, past.get(expected.get(i))), found.get(i).distance(), 1e-4);
            }
        }
    }

    private static double distance(MachineFigures asked, MachineFigures other) {
        double[][] pairs = {{asked.rating(), other.rating(), 1}, {asked.poles(), other.poles(), 4},
                {asked.slots(), other.slots(), 4},
            {asked.bore(), other.bore(), 3}, {asked.length(), other.length(), 2}, {asked.volts(), other.volts(), 0.7}};
        double sum = 0;
        for (double[] pair : pairs) {
            if (!Double.isNaN(pair[0])) {
                double ratio = Double.isNaN(pair[1]) ? 1.5 : pair[1] / pair[0];
                sum += Math.pow(pair[2] * Math.log(ratio), 2);
            }
        }
        return Math.sqrt(sum);
    }

    private static MachineFigures draw(Random random, double unknown) {
        double[] v = {Math.exp(Math.log(2e3) + random.nextDouble() * 6), 2 * (1 + random.nextInt(4)),
                12 * (2 + random.nextInt(7)),
            0.08 + random.nextDouble() * 0.6, 0.06 + random.nextDouble() * 0.5, 100 * (1 + random.nextInt(7))};
        for (int i = 0; i < v.length; i++) {
            if (i != 1 && random.nextDouble() < unknown) {
                v[i] = UNKNOWN;
            }
        }
        return new MachineFigures(v[0], v[1], v[2], v[3], v[4], v[5]);
    }

    @Test
    void differencesAreSaidInPlainWords() {
        PastWindings index = PastWindings.of(List.of(new MachineFigures(60e3, 4, 48, 0.28, 0.22, 400),
                new MachineFigures(250e3, 4, 60, 0.42, 0.4, 400)));
        PastWinding found = index.nearest(new MachineFigures(55e3, 4, 36, 0.28, UNKNOWN, 400), 2).get(0);
        assertEquals(0, found.row());
        assertEquals("48 slots against 36", found.differences().get(0).inWords());
        assertEquals("rating +9.1 %", found.differences().get(1).inWords());
        assertEquals(2, found.differences().size());
    }

    @Test
    void theSameMachineIsAtNoDistance() {
        List<MachineFigures> past = new ArrayList<>(List.of(new MachineFigures(60e3, 4, 48, 0.28, 0.22, 400)));
        assertEquals(0, PastWindings.of(past).nearest(past.get(0), 1).get(0).distance(), 1e-9);
        assertTrue(PastWindings.of(List.of()).nearest(past.get(0), 3).isEmpty());
    }

    @Test
    void refusesQuestionsWithoutFigures() {
        PastWindings index = PastWindings.of(List.of(new MachineFigures(60e3, 4, 48, 0.28, 0.22, 400)));
        assertThrows(OutOfRange.class,
                () -> index.nearest(new MachineFigures(UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN), 3));
        assertThrows(OutOfRange.class, () -> index.nearest(new MachineFigures(-1, 4, 48, 0.3, 0.2, 400), 3));
    }
}
