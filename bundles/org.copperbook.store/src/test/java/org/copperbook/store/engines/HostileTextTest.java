package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Text that would do harm if any of it were taken for SQL. */
@ParameterizedClass
@EnumSource(Engine.class)
class HostileTextTest {

    private final PartJson json = new PartJson();

    @Parameter
    Engine engine;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"'; DROP TABLE revision; --", "\"); DELETE FROM job; --", "' OR '1'='1", "%' OR 1=1 --",
        "x' UNION SELECT json FROM revision --", "${jndi:x} {0} {n} ? :a @b $c", "\ud83d\udd27 \u2126 \u202e",
        "=cmd|' /C calc'!A0", "<![CDATA[<x>&#0;]]>", "\\", "\n\r\t", "'"})
    void everyTextFieldComesBackAsItWas(String evil) throws Exception {
        try (JobStore store = engine.place(folder).open()) {
            JobHandle job = store.create(Sample.booking(evil, evil), evil + "who");
            for (PartKind kind : PartKind.values()) {
                if (kind == PartKind.BOOKING || kind == PartKind.STAFF) {
                    continue;
                }
                PartKey key = new PartKey(kind, kind.many() ? "main-stator" : "");
                Part part = json.read(key, filled(kind, evil));
                String owner = kind.ofShop() ? JobStore.SHOP : job.id();
                if (part instanceof StockItem item) {
                    store.stock().describe(item, null, evil + "who", evil);
                } else {
                    store.save(owner, key, part, 0, evil + "who", evil);
                }
                Saved kept = store.current(owner, key).orElseThrow();
                assertEquals(part, kept.part());
                assertEquals(evil, kept.revision().why());
                assertEquals(evil + "who", kept.revision().who());
            }
            store.savePerson(new Person(evil + "key", evil, Set.of(), evil, evil, true), "o");
            assertEquals(evil, store.persons().get(evil + "key").name());
            assertEquals(evil, store.load(job.id()).booking().orElseThrow().customer());
            assertTrue(store.register(new RegisterQuery(evil, 0, 10, null)).total() <= 1);
            assertTrue(store.idOf(evil).isEmpty());
            assertTrue(store.photo(evil).isEmpty());
            assertTrue(store.audit().passed(), () -> store.audit().toString());
            assertEquals(1, store.register(RegisterQuery.first(10)).total());
        }
    }

    @Test
    void whatAnEngineCannotKeepIsRefusedWholeOrComesBackAsItWas() {
        String evil = "a\u0000b";
        try (JobStore store = engine.place(folder).open()) {
            JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
            try {
                store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", evil);
                assertEquals(evil, store.current(job.id(), Sample.NAMEPLATE).orElseThrow().revision().why());
            } catch (StoreException e) {
                assertEquals(StoreException.Kind.BAD_TEXT, e.kind());
                assertTrue(e.getMessage().contains("U+0000"), e.getMessage());
                assertTrue(store.current(job.id(), Sample.NAMEPLATE).isEmpty());
            }
            assertEquals(1, store.register(new RegisterQuery("harb\u0000our", 0, 10, null)).total());
            assertTrue(store.audit().passed(), () -> store.audit().toString());
        }
    }

    /** A part with the text in each of its text fields. */
    private String filled(PartKind kind, String evil) {
        ObjectNode tree = json.mapper().createObjectNode();
        for (RecordComponent c : kind.type().getRecordComponents()) {
            if (c.getType() == String.class) {
                tree.put(c.getName(), evil);
            } else if (c.getType() == boolean.class) {
                tree.put(c.getName(), true);
            } else if (c.getType() == int.class) {
                tree.put(c.getName(), 1);
            }
        }
        if (kind == PartKind.WORKSHOP) {
            tree.put("numberSeries", "{year}-{n:4}");
        }
        if (kind == PartKind.STOCK_ITEM) {
            tree.put("code", "main-stator").put("kind", "RESIN").put("unit", "KG");
        }
        tree.put("a later field", evil);
        return tree.toString();
    }

    @Test
    void aFileMayBringAnyNumberAndKey() {
        String evil = "2026'); DROP TABLE job; --";
        try (JobStore store = engine.place(folder).open()) {
            store.takeIn(new Job(evil, evil, Map.of(Sample.BOOKING, Sample.booking("a", "b"))), "ada", "",
                    NumberTaken.REFUSE);
            assertEquals(evil, store.idOf(evil).orElseThrow());
            assertEquals(evil, store.register(new RegisterQuery(evil, 0, 1, null)).rows().get(0).number());
            assertTrue(store.audit().passed());
        }
    }
}
