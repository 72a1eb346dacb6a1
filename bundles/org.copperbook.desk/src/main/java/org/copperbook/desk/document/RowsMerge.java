package org.copperbook.desk.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.PartKind;

/**
 * Two copies of a record that began as one, put together row by row in the lists to which several people add
 * ({@link RowKeys}). Rows that either side added are all there, theirs first; a row that one side changed or took out is as that
 * side left it; one that was taken out here and changed there stays as it was changed. Only a row that both changed, each
 * in its way, is left for somebody to choose, as a whole. An equal row that both added is one row: mostly it is a save of which no answer came.
 * Fields outside those lists are not put together, because one value of a record may hang on another.
 */
final class RowsMerge {

    private final ObjectNode mixed;
    private final List<FieldDifference> differences = new ArrayList<>();
    private final Map<String, Map<Integer, Integer>> places = new TreeMap<>();

    /**
     * @param base   the record that both began from
     * @param mine   the copy that is not saved yet
     * @param theirs the copy that was saved meanwhile
     */
    RowsMerge(PartKind kind, ObjectNode base, ObjectNode mine, ObjectNode theirs) {
        mixed = mine.deepCopy();
        ObjectNode restBase = base.deepCopy();
        ObjectNode restMine = mine.deepCopy();
        ObjectNode restTheirs = theirs.deepCopy();
        for (String list : RowKeys.lists(kind)) {
            if (!rows(base.path(list)) || !rows(mine.path(list)) || !rows(theirs.path(list))) {
                continue;
            }
            restBase.remove(list);
            restMine.remove(list);
            restTheirs.remove(list);
            ArrayNode merged = new OneList(kind, list, base.path(list), mine.path(list), theirs.path(list)).merged();
            if (merged.isEmpty()) {
                mixed.remove(list);
            } else {
                mixed.set(list, merged);
            }
        }
        differences.addAll(FieldDifference.between(restBase, restMine, restTheirs));
    }

    /** The copy here with every row of theirs that needs no choice. */
    ObjectNode mixed() {
        return mixed.deepCopy();
    }

    /** What somebody has to choose; pointers of rows are those of {@link #mixed()}. */
    List<FieldDifference> differences() {
        return List.copyOf(differences);
    }

    /** The texts not understood, beside the rows where they stand in {@link #mixed()}; empty when a row of one was taken out. */
    Optional<Map<String, String>> typed(Map<String, String> asTyped) {
        Map<String, String> moved = new TreeMap<>();
        for (Map.Entry<String, String> e : asTyped.entrySet()) {
            String[] steps = e.getKey().split("/", 4);
            Map<Integer, Integer> now = steps.length < 3 ? null : places.get(steps[1]);
            if (now == null) {
                moved.put(e.getKey(), e.getValue());
                continue;
            }
            Integer row = now.get(Integer.valueOf(steps[2]));
            if (row == null) {
                return Optional.empty();
            }
            moved.put("/" + steps[1] + "/" + row + (steps.length > 3 ? "/" + steps[3] : ""), e.getValue());
        }
        return Optional.of(moved);
    }

    private static boolean rows(JsonNode list) {
        if (!list.isMissingNode() && !list.isArray()) {
            return false;
        }
        for (JsonNode row : list) {
            if (!row.isObject()) {
                return false;
            }
        }
        return true;
    }

    /** One list while it is put together. */
    private final class OneList {

        private final String list;
        private final JsonNode base;
        private final JsonNode mine;
        private final JsonNode theirs;
        private final RowMatch here;
        private final RowMatch there;
        private final ArrayNode out = JsonNodeFactory.instance.arrayNode();
        private final Map<Integer, Integer> sameNamed;
        private final Map<Integer, Integer> placeOfMine = new HashMap<>();

        OneList(PartKind kind, String list, JsonNode base, JsonNode mine, JsonNode theirs) {
            this.list = list;
            this.base = base;
            this.mine = mine;
            this.theirs = theirs;
            here = RowMatch.of(kind, list, base, mine);
            there = RowMatch.of(kind, list, base, theirs);
            sameNamed = sameNamed(kind);
        }

        ArrayNode merged() {
            added(-1);
            for (int i = 0; i < base.size(); i++) {
                kept(i);
                added(i);
            }
            places.put(list, placeOfMine);
            return out;
        }

        private void kept(int i) {
            Optional<Integer> m = here.now(i);
            Optional<Integer> t = there.now(i);
            JsonNode was = base.get(i);
            JsonNode mineNow = m.<JsonNode>map(mine::get).orElse(null);
            JsonNode theirsNow = t.<JsonNode>map(theirs::get).orElse(null);
            boolean mineSame = was.equals(mineNow);
            boolean theirsSame = was.equals(theirsNow);
            if (mineNow != null && theirsNow != null && !mineSame && !theirsSame && !mineNow.equals(theirsNow)) {
                choose(was, m.get(), mineNow, theirsNow);
            } else if (mineNow == null && theirsNow != null && !theirsSame || theirsNow != null && mineSame) {
                put(theirsNow, m);
            } else if (mineNow != null && (theirsNow != null || !mineSame)) {
                put(mineNow, m);
            }
        }

        /** Rows that came after one of the beginning: theirs, and those of mine that are not among them. */
        private void added(int after) {
            List<Integer> mineHere = new ArrayList<>(here.cameAfter(after));
            mineHere.removeAll(sameNamed.values());
            for (int t : there.cameAfter(after)) {
                JsonNode row = theirs.get(t);
                Optional<Integer> same = Optional.ofNullable(sameNamed.get(t))
                        .or(() -> mineHere.stream().filter(m -> mine.get(m).equals(row)).findFirst());
                same.ifPresent(mineHere::remove);
                if (same.isPresent() && !mine.get(same.get()).equals(row)) {
                    choose(MissingNode.getInstance(), same.get(), mine.get(same.get()), row);
                } else {
                    put(row, same);
                }
            }
            mineHere.forEach(m -> put(mine.get(m), Optional.of(m)));
        }

        /** Rows that both added under one name: place in mine by place in theirs. */
        private Map<Integer, Integer> sameNamed(PartKind kind) {
            Map<Integer, Integer> same = new HashMap<>();
            List<Integer> mineCame = new ArrayList<>(here.came());
            for (int t : there.came()) {
                Optional<String> name = RowKeys.name(kind, list, theirs.get(t));
                mineCame.stream().filter(m -> name.isPresent() && name.equals(RowKeys.name(kind, list, mine.get(m))))
                        .findFirst().ifPresent(m -> {
                            same.put(t, m);
                            mineCame.remove(m);
                        });
            }
            return same;
        }

        private void choose(JsonNode was, int place, JsonNode own, JsonNode other) {
            differences.add(new FieldDifference("/" + list + "/" + out.size(), was, own, other));
            put(own, Optional.of(place));
        }

        private void put(JsonNode row, Optional<Integer> ofMine) {
            ofMine.ifPresent(m -> placeOfMine.put(m, out.size()));
            out.add(row.deepCopy());
        }
    }
}
