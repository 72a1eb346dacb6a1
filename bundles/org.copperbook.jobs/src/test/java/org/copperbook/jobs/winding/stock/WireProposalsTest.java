package org.copperbook.jobs.winding.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.stock.WireProposal.Warning;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WireProposalsTest {

    private static final double MM2 = Math.PI / 4;

    /**
     * Two strands of 1.0 mm have exactly the area of eight of 0.5 mm (geometry: half the diameter, a quarter of the area).
     */
    @Test
    void halfTheDiameterTakesFourTimesTheStrands() throws Exception {
        List<WireProposal> all = WireProposals.of(winding("1.0 mm", 2, ""), stock("0.5 mm", 100.0),
                new WireWish(-0.01, 0.03, 10, 1, false, true), 5);
        assertEquals(8, all.get(0).strands());
        assertEquals(0, all.get(0).areaChange(), 1e-12);
        assertEquals(2 * MM2 * 1e-6, all.get(0).area(), 1e-15);
        assertTrue(all.get(0).warnings().contains(Warning.MORE_STRANDS));
        assertTrue(all.get(0).warnings().contains(Warning.TIGHTER), "enamel takes more room on thin wire");
    }

    /**
     * The need is turns x mean turn x area x density of copper, 8 890 kg/m3 (IEC 60028), and five per cent more for ends:
     * 12 coils of 10 turns of 0.5 m, one strand of 1 mm: 60 m x 0.7854 mm2 x 8.89 g/cm3 = 0.4189 kg.
     */
    @Test
    void theNeedIsLengthTimesAreaTimesDensity() throws Exception {
        WireProposal same = best(winding("1.0 mm", 1, ""), stock("1.000 mm", 5.0)).get(0);
        double kg = 12 * 10 * 0.5 * MM2 * 1e-6 * 8890 * 1.05;
        assertEquals(kg, same.needs().get(0).needKg(), kg * 1e-6);
        assertEquals(5 - kg, same.needs().get(0).leftKg(), 1e-6);
        assertTrue(same.isOriginal());
        assertEquals("1.000 mm", same.wires().get(0).size(), "named as on the shelf");
    }

    @Test
    void whatTheShelfCannotGiveIsLeftOutOrWarnedOf() throws Exception {
        WireStock little = stock("1.000 mm", 0.2);
        assertTrue(WireProposals.of(winding("1.0 mm", 1, ""), little, new WireWish(-0.01, 0.03, 5, 1, true, true), 5)
                .isEmpty());
        WireProposal short1 = WireProposals.of(winding("1.0 mm", 1, ""), little,
                new WireWish(-0.01, 0.03, 5, 1, true, false), 5).get(0);
        assertTrue(short1.warnings().contains(Warning.STOCK_SHORT));
        assertTrue(short1.needs().get(0).leftKg() < 0);
    }

    @Test
    void withoutTurnsTheNeedIsNotInvented() throws Exception {
        WireProposal p = best(read("{'schema':1,'role':'main-stator','asWound':false,'wire':[{'size':'1.0 mm','strands':1}]}"),
                stock("1.000 mm", 5.0)).get(0);
        assertTrue(p.warnings().contains(Warning.NEED_UNKNOWN));
        assertEquals(null, p.needs().get(0).needKg());
    }

    /** Less copper is warned of as ANSI/EASA AR100 asks for a conductor area no less than the original. */
    @Test
    void lessCopperIsWarnedOf() throws Exception {
        WireProposal p = WireProposals.of(winding("1.0 mm", 1, ""), stock("0.999 mm", 5.0),
                new WireWish(-0.01, 0.03, 5, 1, false, true), 5).get(0);
        assertTrue(p.warnings().contains(Warning.LESS_COPPER));
        assertEquals(0.999 * 0.999 - 1, p.areaChange(), 1e-9);
        assertEquals(1 / (0.999 * 0.999) - 1, p.ohmsChange(), 1e-9, "resistance goes with one over the area");
    }

    @Test
    void anotherGradeAndMixedSizesAreWarnedOf() throws Exception {
        WireStock grade1 = new WireStock(1, List.of(new WireStock.Spool("1.0 mm", 1, 5.0, null, Map.of())), Map.of());
        assertTrue(best(winding("1.0 mm", 1, ""), grade1).get(0).warnings().contains(Warning.OTHER_GRADE));
        WireProposal mixed = WireProposals.of(winding("1.0 mm", 2, ""), stock("0.9 mm", 9.0, "1.1 mm", 9.0),
                new WireWish(-0.01, 0.03, 3, 2, false, true), 1).get(0);
        assertTrue(mixed.warnings().contains(Warning.MIXED_SIZES), mixed.label());
        assertEquals("1 \u00d7 1.1 mm + 1 \u00d7 0.9 mm", mixed.label());
    }

    @Test
    void theOriginalComesFirstWhereTheShelfHasIt() throws Exception {
        WireProposal first = WireProposals.of(winding("0.5 mm", 16, ""), stock("1.0 mm", 50.0, "0.500 mm", 50.0),
                WireWish.usual(16), 5).get(0);
        assertEquals("16 \u00d7 0.500 mm", first.label());
        assertTrue(first.isOriginal());
    }

    /** Every combination of two sizes tried one by one finds none better than the first proposal (brute force). */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noCombinationOfTwoSizesIsNearerThanTheFirst(long seed) throws Exception {
        Random random = new Random(seed);
        List<Object> spools = new ArrayList<>();
        double[] diameters = new double[9];
        for (int i = 0; i < diameters.length; i++) {
            diameters[i] = (50 + random.nextInt(90)) / 100.0 + i * 1e-3;
            spools.add(String.format(java.util.Locale.ROOT, "%.3f mm", diameters[i]));
            spools.add(1000.0);
        }
        double wanted = 6 * MM2;
        double nearest = Double.POSITIVE_INFINITY;
        for (double a : diameters) {
            for (double b : diameters) {
                for (int n = 1; n <= 10; n++) {
                    for (int m = 0; n + m <= 10; m++) {
                        double area = n * MM2 * a * a + m * MM2 * b * b;
                        double error = area / wanted - 1;
                        if (error >= -0.01 && error <= 0.03) {
                            nearest = Math.min(nearest, Math.abs(error));
                        }
                    }
                }
            }
        }
        List<WireProposal> found = WireProposals.of(winding("1.0 mm", 6, ""), stock(spools.toArray()),
                new WireWish(-0.01, 0.03, 10, 2, false, true), 3);
        assertFalse(found.isEmpty());
        // areas within half a step of 0.5 % rank alike, then fewer strands come first
        assertTrue(Math.abs(found.get(0).areaChange()) <= Math.round(nearest / 0.005) * 0.005 + 0.0025 + 1e-9,
                found.get(0).areaChange() + " against " + nearest);
    }

    @Test
    void stripsAndGroupsWithTheirOwnWireAreRefused() throws Exception {
        assertEquals(WireProposals.Why.NOT_ROUND, refused(winding("2.24 x 4.50 mm", 1, "")).why());
        assertEquals(WireProposals.Why.GROUP_WIRE,
                refused(winding("1.0 mm", 1, ",'wire':[{'size':'0.9 mm','strands':1}]")).why());
        assertEquals(WireProposals.Why.NO_WIRE,
                refused(read("{'schema':1,'role':'main-stator','asWound':false}")).why());
    }

    private static WireProposals.NotSubstitutable refused(WindingData w) {
        return assertThrows(WireProposals.NotSubstitutable.class, () -> best(w, stock("1.0 mm", 5.0)));
    }

    private static List<WireProposal> best(WindingData w, WireStock stock) throws WireProposals.NotSubstitutable {
        return WireProposals.of(w, stock, WireWish.usual(1), 5);
    }

    private static WireStock stock(Object... sizesAndKilograms) {
        List<WireStock.Spool> spools = new ArrayList<>();
        for (int i = 0; i < sizesAndKilograms.length; i += 2) {
            spools.add(new WireStock.Spool((String) sizesAndKilograms[i], 2, (Double) sizesAndKilograms[i + 1], null,
                    Map.of()));
        }
        return new WireStock(1, spools, Map.of());
    }

    /** Twelve coils of ten turns, half a metre each, in four groups. */
    private static WindingData winding(String size, int strands, String groupWire) throws BadRecordException {
        List<String> groups = new ArrayList<>();
        for (int g = 1; g <= 4; g++) {
            groups.add("{'number':" + g + ",'phase':'U','coils':[{'goSlot':1,'returnSlot':6,'turns':10},"
                    + "{'goSlot':2,'returnSlot':7,'turns':10},{'goSlot':3,'returnSlot':8,'turns':10}]" + groupWire + "}");
        }
        return read("{'schema':1,'role':'main-stator','asWound':false,'meanTurnM':0.5,'wire':[{'size':'" + size
                + "','strands':" + strands + ",'grade':2}],'groups':[" + String.join(",", groups) + "]}");
    }

    private static WindingData read(String json) throws BadRecordException {
        return (WindingData) new PartJson().read(PartKey.parse("winding/main-stator"), json.replace('\'', '"'));
    }
}
