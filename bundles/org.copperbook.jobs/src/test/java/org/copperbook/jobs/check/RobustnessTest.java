package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.shop.Shop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Half-filled and wild records are what a job looks like while somebody types: every check must live with them. */
class RobustnessTest {

    private static final double[] WILD = {0, -1, 1e-300, 1e300, 5, 1e9, -273.15, 0.3};

    private final Shop shop = Bench.shop();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void noHalfFilledRecordBreaksACheck(long seed) {
        Random random = new Random(seed);
        int judged = 0;
        for (int i = 0; i < 60; i++) {
            Job job = mangled(Bench.realInput(), random);
            List<Verdict> verdicts = JobChecks.verdicts(job, shop);
            Set<String> ids = new HashSet<>();
            for (Verdict v : verdicts) {
                assertTrue(ids.add(v.id()), "twice: " + v.id());
                assertNotNull(v.outcome(), v.id());
                assertTrue(!v.title().isBlank() && !v.reason().isBlank(), v.id());
                assertTrue(v.value() == null || Double.isFinite(v.value()), v.id() + " " + v.value());
            }
            assertEquals(5, HoldPoints.states(job, verdicts, shop).size());
            assertNotNull(Stage.of(job).words());
            judged += verdicts.size();
        }
        assertTrue(judged > 1000, "only " + judged + " verdicts");
    }

    private static Job mangled(Job job, Random random) {
        Job out = job;
        for (PartKey key : job.parts().keySet()) {
            ObjectNode tree = Bench.JSON.tree(job.parts().get(key));
            for (int n = random.nextInt(6); n > 0; n--) {
                mangle(tree, random);
            }
            try {
                out = out.with(key, Bench.JSON.read(key, tree));
            } catch (BadRecordException e) {
                // refused at the door: the earlier part stays
                assertNotNull(e.problem());
            }
        }
        return out;
    }

    private static void mangle(ObjectNode tree, Random random) {
        JsonNode at = tree;
        while (true) {
            List<JsonNode> inside = new ArrayList<>();
            at.forEach(c -> {
                if (c.isContainerNode() && !c.isEmpty()) {
                    inside.add(c);
                }
            });
            if (inside.isEmpty() || random.nextInt(4) == 0) {
                break;
            }
            at = inside.get(random.nextInt(inside.size()));
        }
        if (at instanceof ObjectNode o) {
            List<String> names = new ArrayList<>();
            o.fieldNames().forEachRemaining(names::add);
            String name = names.get(random.nextInt(names.size()));
            if (name.equals("schema") || name.equals("role")) {
                return;
            }
            if (o.get(name).isFloatingPointNumber() && random.nextBoolean()) {
                o.put(name, WILD[random.nextInt(WILD.length)]);
            } else {
                o.remove(name);
            }
        } else if (at instanceof ArrayNode a && !a.isEmpty()) {
            a.remove(random.nextInt(a.size()));
        }
    }
}
