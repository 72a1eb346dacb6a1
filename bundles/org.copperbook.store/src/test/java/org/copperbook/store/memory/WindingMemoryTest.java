package org.copperbook.store.memory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.calc.winding.memory.PastWinding;
import org.copperbook.calc.winding.memory.PastWindings;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.Sample;
import org.copperbook.store.engines.Engine;
import org.copperbook.store.engines.OnEachEngine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Past windings are found again, whether of a job or of an old card. */
@ParameterizedClass
@EnumSource(Engine.class)
class WindingMemoryTest extends OnEachEngine {

    private static final PartKey STATOR = PartKey.windingAsFound(WindingRole.MAIN_STATOR);
    private static final double NONE = Double.NaN;

    private static OldCard card(String number, String serial, int slots, double bore, int turns) {
        return Sample.part("old-card/x", "{\"schema\":1,\"card\":\"" + number + "\",\"plate\":{\"schema\":1,\"maker\":"
                + "\"Harbour Works\",\"serial\":\"" + serial + "\",\"apparentPowerVA\":60000.0,\"voltageV\":400.0},"
                + "\"winding\":{\"schema\":1,\"role\":\"main-stator\",\"asWound\":false,\"slots\":" + slots
                + ",\"poles\":4,\"boreM\":" + bore + ",\"turnsPerCoil\":" + turns + "}}", OldCard.class);
    }

    private static WindingData winding(String more) {
        return Sample.part("winding/main-stator", "{\"schema\":1,\"role\":\"main-stator\",\"asWound\":false" + more + "}",
                WindingData.class);
    }

    private static Asked asked(MachineFigures figures, String serial, String words) {
        return new Asked(WindingRole.MAIN_STATOR, figures, serial, words, "");
    }

    private List<String> numbers(Asked asked) {
        return store.memory().nearest(asked, 10).stream().map(f -> f.winding().number()).toList();
    }

    @Test
    void theWindingOfAJobIsFoundByItsFiguresAndByItsNameplate() {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "foreman");
        store.save(job.id(), STATOR, winding(",\"slots\":48,\"poles\":4,\"turnsPerCoil\":5"), 0, "winder", "");
        MachineFigures rating = new MachineFigures(60_000, NONE, NONE, NONE, NONE, NONE);
        assertEquals("rating not known", store.memory().nearest(asked(rating, "", ""), 1).get(0).differences().get(0)
                .inWords());
        store.save(job.id(), Sample.NAMEPLATE, Sample.part("nameplate",
                "{\"schema\":1,\"serial\":\"HB-77/3\",\"apparentPowerVA\":60000.0}", Nameplate.class), 0, "winder", "");
        FoundWinding found = store.memory().nearest(asked(rating, "hb 773", ""), 1).get(0);
        assertTrue(found.sameMachine());
        assertEquals(List.of(), found.differences());
        assertEquals(job.number(), found.winding().number());
        assertEquals(List.of(), store.memory().nearest(
                new Asked(WindingRole.MAIN_STATOR, rating, "", "", job.id()), 10), "its own job is not a past winding");
    }

    @Test
    void aWindingThatIsBeingCountedTwiceIsNotFoundUntilBothCountsAreIn() {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "foreman");
        String first = "{\"ordinal\":1,\"by\":\"anna\",\"groups\":[{\"group\":1,\"turns\":[5]}]}";
        MachineFigures rating = new MachineFigures(60_000, NONE, NONE, NONE, NONE, NONE);
        store.save(job.id(), STATOR, winding(",\"slots\":48,\"turnsPerCoil\":5,\"counts\":[" + first + "]"), 0, "anna", "");
        assertEquals(List.of(), numbers(asked(rating, "", "")));
        store.save(job.id(), STATOR, winding(",\"slots\":48,\"turnsPerCoil\":5,\"counts\":[" + first + ","
                + first.replace("\"ordinal\":1", "\"ordinal\":2").replace("anna", "ben") + "]"), 1, "ben", "");
        assertEquals(List.of(job.number()), numbers(asked(rating, "", "")));
    }

    @Test
    void theSameMachineComesFirstAndTheOthersByDistance() {
        store.memory().takeIn(List.of(card("far", "1", 36, 0.30, 9), card("near", "2", 48, 0.251, 5),
                card("same", "X 9", 60, 0.40, 3)), "winder", "", SameCard.REFUSE);
        MachineFigures figures = new MachineFigures(60_000, 4, 48, 0.25, NONE, 400);
        assertEquals(List.of("same", "near", "far"), numbers(asked(figures, "x9", "")));
        assertEquals(List.of("near"), numbers(asked(figures, "", "harb near")));
        FoundWinding near = store.memory().nearest(asked(figures, "", ""), 1).get(0);
        assertEquals(List.of("bore +0.4 %"), near.differences().stream().map(PastWinding.Difference::inWords).toList());
    }

    @Test
    void withoutAnyFigureTheNewestCome() {
        store.memory().takeIn(List.of(card("a", "1", 36, 0.30, 9)), "winder", "", SameCard.REFUSE);
        store.memory().takeIn(List.of(card("b", "1", 36, 0.30, 9)), "winder", "", SameCard.REFUSE);
        assertEquals(List.of("b", "a"), numbers(asked(new MachineFigures(NONE, NONE, NONE, NONE, NONE, NONE), "", "")));
    }

    @Test
    void aCardTakenInTwiceIsInOnce() {
        List<OldCard> cards = List.of(card("1", "s", 36, 0.3, 9), card("", "s", 36, 0.3, 9));
        assertEquals(List.of(CardTaken.NEW, CardTaken.NEW), store.memory().takeIn(cards, "w", "", SameCard.REFUSE));
        assertEquals(List.of(CardTaken.KNOWN, CardTaken.KNOWN), store.memory().takeIn(cards, "w", "", SameCard.REFUSE));
        assertEquals(2, store.memory().size());
    }

    @Test
    void aCardOfTheSameNumberWithOtherContentIsLeftOutOrKeptAsARevision() {
        store.memory().takeIn(List.of(card("1", "s", 36, 0.3, 9)), "w", "", SameCard.REFUSE);
        List<OldCard> other = List.of(card("1", "s", 36, 0.3, 8));
        assertEquals(List.of(CardTaken.CONTRADICTS), store.memory().takeIn(other, "w", "", SameCard.REFUSE));
        assertEquals(List.of(CardTaken.REVISED), store.memory().takeIn(other, "w", "", SameCard.NEW_REVISION));
        Remembered row = store.memory().nearest(asked(new MachineFigures(1, 4, 36, NONE, NONE, NONE), "", ""), 5).get(0)
                .winding();
        assertEquals(8, row.turns());
        assertEquals(2, store.history(JobStore.CARDS, row.part()).size(), "the older one is still there");
    }

    @Test
    void cardsAreNotJobsAndStandInTheAuditedChain() {
        store.memory().takeIn(List.of(card("1", "s", 36, 0.3, 9)), "w", "", SameCard.REFUSE);
        assertEquals(0, store.register(org.copperbook.store.RegisterQuery.first(5)).total());
        assertTrue(store.audit().bad().isEmpty());
        assertEquals(1, store.audit().revisions());
        assertFalse(store.shop().workshop() == null);
    }

    @Test
    void theListIsMadeAnewFromTheRevisions() throws Exception {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "foreman");
        store.save(job.id(), STATOR, winding(",\"slots\":48,\"poles\":4,\"turnsPerCoil\":5"), 0, "winder", "");
        store.memory().takeIn(List.of(card("1", "s", 36, 0.3, 9), card("2", "t", 24, 0.2, 12)), "w", "",
                SameCard.REFUSE);
        store.close();
        place.run("DELETE FROM past_winding", "UPDATE setting SET value = '0' WHERE name = 'past-windings-edition'");
        store = place.open();
        assertEquals(3, store.memory().size());
        assertEquals(List.of(CardTaken.KNOWN), store.memory().takeIn(List.of(card("1", "s", 36, 0.3, 9)), "w", "",
                SameCard.REFUSE), "cards are known again after the list was made anew");
    }

    @Test
    void blockByBlockFindsWhatOnePassOverAllFinds() throws Exception {
        Random random = new Random(20261125);
        List<OldCard> cards = new ArrayList<>();
        List<MachineFigures> figures = new ArrayList<>();
        int n = 500;
        for (int i = 0; i < n; i++) {
            int slots = 12 * (1 + random.nextInt(8));
            double bore = 0.1 + random.nextInt(400) / 1000.0;
            cards.add(card("k" + i, "s" + i, slots, bore, 5));
            figures.add(new MachineFigures(60_000, 4, slots, bore, NONE, 400));
        }
        store.memory().takeIn(cards, "w", "", SameCard.REFUSE);
        copies(60);
        MachineFigures wanted = new MachineFigures(60_000, 4, 48, 0.25, NONE, 400);
        List<Double> expected = new ArrayList<>();
        PastWindings.of(figures).nearest(wanted, 1).forEach(p -> IntStream.range(0, 20)
                .forEach(i -> expected.add(p.distance())));
        List<Double> found = store.memory().nearest(asked(wanted, "", ""), 20).stream().map(FoundWinding::distance)
                .toList();
        assertTrue(store.memory().size() > 20_000, "more than one block");
        assertEquals(expected, found);
    }

    @Test
    void goingOutFromTheSizeFindsWhatLookingAtAllFinds() {
        Random random = new Random(20261126);
        List<OldCard> cards = new ArrayList<>();
        List<MachineFigures> figures = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            int slots = 12 * (1 + random.nextInt(8));
            double bore = random.nextInt(10) == 0 ? 0 : 0.02 * Math.exp(random.nextDouble() * 5);
            cards.add(card("k" + i, "s" + i, slots, bore, 5));
            figures.add(new MachineFigures(60_000, 4, slots, bore == 0 ? NONE : bore, NONE, 400));
        }
        store.memory().takeIn(cards, "w", "", SameCard.REFUSE);
        PastWindings all = PastWindings.of(figures);
        for (int i = 0; i < 60; i++) {
            MachineFigures wanted = new MachineFigures(i % 3 == 0 ? NONE : 55_000, 4, 12 * (1 + i % 8),
                    i % 4 == 0 ? NONE : 0.01 * Math.exp(i / 10.0), NONE, i % 5 == 0 ? 230 : NONE);
            int many = 1 + i % 30;
            assertEquals(all.nearest(wanted, many).stream().map(PastWinding::distance).toList(),
                    store.memory().nearest(asked(wanted, "", ""), many).stream().map(FoundWinding::distance).toList());
        }
    }

    @Test
    void goingFromKindToKindFindsWhatLookingAtAllFinds() {
        Random random = new Random(20261127);
        List<OldCard> cards = new ArrayList<>();
        List<MachineFigures> figures = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            double poles = random.nextInt(6) == 0 ? NONE : 2 * (1 + random.nextInt(4));
            double slots = random.nextInt(6) == 0 ? NONE : 12 * (1 + random.nextInt(8));
            double bore = random.nextInt(6) == 0 ? NONE : 0.1 + random.nextInt(300) / 1000.0;
            String known = (Double.isNaN(poles) ? "" : ",\"poles\":" + (int) poles)
                    + (Double.isNaN(slots) ? "" : ",\"slots\":" + (int) slots)
                    + (Double.isNaN(bore) ? "" : ",\"boreM\":" + bore);
            cards.add(Sample.part("old-card/x", "{\"schema\":1,\"card\":\"k" + i + "\",\"plate\":{\"schema\":1,"
                    + "\"maker\":\"Harbour Works\",\"serial\":\"s" + i + "\",\"apparentPowerVA\":60000.0},"
                    + "\"winding\":{\"schema\":1,\"role\":\"main-stator\",\"asWound\":false" + known
                    + ",\"turnsPerCoil\":5}}", OldCard.class));
            figures.add(new MachineFigures(60_000, poles, slots, bore, NONE, NONE));
        }
        store.memory().takeIn(cards, "w", "", SameCard.REFUSE);
        assertEquals(figures.size(), store.memory().size());
        PastWindings all = PastWindings.of(figures);
        for (int i = 0; i < 60; i++) {
            MachineFigures wanted = new MachineFigures(i % 2 == 0 ? NONE : 45_000, i % 5 == 0 ? NONE : 2 * (1 + i % 5),
                    i % 4 == 0 ? 18 : i % 7 == 0 ? NONE : 12 * (1 + i % 9), i % 3 == 0 ? NONE : 0.09 + i / 150.0, NONE,
                    400);
            int many = 1 + i % 40;
            assertEquals(all.nearest(wanted, many).stream().map(PastWinding::distance).toList(),
                    store.memory().nearest(asked(wanted, "", ""), many).stream().map(FoundWinding::distance).toList());
        }
    }

    /** More rows than one block, straight into the table: the search reads nothing else. */
    private void copies(int times) throws Exception {
        try (Connection c = place.connect(); Statement s = c.createStatement()) {
            c.setAutoCommit(false);
            List<String> names = new ArrayList<>();
            try (ResultSet r = s.executeQuery("SELECT * FROM past_winding WHERE 1 = 0")) {
                ResultSetMetaData columns = r.getMetaData();
                for (int i = 1; i <= columns.getColumnCount(); i++) {
                    if (!List.of("id", "part").contains(columns.getColumnName(i))) {
                        names.add(columns.getColumnName(i));
                    }
                }
            }
            String columns = String.join(", ", names);
            for (int i = 0; i < times; i++) {
                s.executeUpdate("INSERT INTO past_winding (part, " + columns + ") SELECT part || '-" + i + "', "
                        + columns + " FROM past_winding ORDER BY id LIMIT 500");
            }
            c.commit();
        }
    }
}
