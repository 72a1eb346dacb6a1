package org.copperbook.winding.count;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.copperbook.jobs.check.CountRule;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.winding.OpenWinding;

/** The count that the person at the screen is making: what is tapped goes into the record at once, coil by coil. */
final class OpenCount {

    private static final String COUNTS = "/counts";

    private final OpenWinding winding;
    private final int index;

    private OpenCount(OpenWinding winding, int index) {
        this.winding = winding;
        this.index = index;
    }

    /** The open count of whoever sits at the screen, if there is one. */
    static Optional<OpenCount> own(OpenWinding winding) {
        String who = winding.site().who().orElse("");
        List<TurnCount> counts = winding.data().map(WindingData::counts).orElse(List.of());
        for (int i = 0; i < counts.size(); i++) {
            if (Boolean.TRUE.equals(counts.get(i).open()) && who.equals(counts.get(i).by())) {
                return Optional.of(new OpenCount(winding, i));
            }
        }
        return Optional.empty();
    }

    /** Begins the next count for whoever sits at the screen. */
    static void begin(OpenWinding winding) {
        int ordinal = winding.data().map(CountRule::next).orElse(1);
        ObjectNode row = winding.row().put("ordinal", ordinal).put("by", winding.site().who().orElseThrow())
                .put("open", true);
        int place = (int) winding.data().map(WindingData::counts).orElse(List.of()).stream()
                .filter(c -> c.ordinal() < ordinal).count();
        winding.document().insertRow(winding.key(), COUNTS, place, row);
    }

    /** Number of the count: 1, 2, 3. */
    int ordinal() {
        return count().ordinal();
    }

    /** The coils to go through. */
    List<CountPlace> places() {
        return CountPlace.of(winding.data().orElseThrow(), ordinal());
    }

    boolean wantsStrands() {
        return CountPlace.strands(winding.data().orElseThrow(), ordinal());
    }

    /** Turns tapped for a coil; empty when it has not been counted. */
    Optional<Integer> turns(int group, int coil) {
        return turnsOf(group).filter(t -> coil <= t.size()).map(t -> t.get(coil - 1));
    }

    /** Turns tapped in a group so far. */
    Optional<List<Integer>> turnsOf(int group) {
        return count().groups().stream().filter(g -> g.group() == group).findFirst()
                .map(TurnCount.GroupTurns::turns);
    }

    Optional<Integer> strands() {
        return Optional.ofNullable(count().strands());
    }

    /** Puts the turns of a coil; coils are counted in their order, so a coil behind a gap is refused. */
    boolean put(int group, int coil, int turns) {
        TreeMap<Integer, List<Integer>> all = new TreeMap<>();
        count().groups().forEach(g -> all.put(g.group(), new ArrayList<>(g.turns())));
        List<Integer> here = all.computeIfAbsent(group, g -> new ArrayList<>());
        if (coil > here.size() + 1) {
            return false;
        }
        if (coil > here.size()) {
            here.add(turns);
        } else {
            here.set(coil - 1, turns);
        }
        change(c -> {
            ArrayNode groups = c.putArray("groups");
            all.forEach((number, list) -> {
                ArrayNode each = groups.addObject().put("group", number).putArray("turns");
                list.forEach(each::add);
            });
        });
        return true;
    }

    /** Puts all groups at once, as they stand on paper. */
    void putAll(JsonNode groups) {
        change(c -> c.set("groups", groups.deepCopy()));
    }

    void putStrands(int strands) {
        change(c -> c.put("strands", strands));
    }

    /** The first coil that has not been counted, as its place in the list; the size of the list when all are. */
    int firstUncounted() {
        List<CountPlace> places = places();
        for (int i = 0; i < places.size(); i++) {
            if (turns(places.get(i).group(), places.get(i).coil()).isEmpty()) {
                return i;
            }
        }
        return places.size();
    }

    /** Whether every coil and the strands are counted. */
    boolean isComplete() {
        boolean any = !count().groups().isEmpty() || places().isEmpty() && ordinal() > 2;
        return any && firstUncounted() == places().size() && (!wantsStrands() || strands().isPresent());
    }

    /** Hands the count in: from now on it is compared and not changed. */
    void handIn() {
        change(c -> {
            c.remove("open");
            c.put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
        });
    }

    /** Throws the count away. */
    void giveUp() {
        winding.document().removeRow(winding.key(), COUNTS, index);
    }

    private TurnCount count() {
        return winding.data().orElseThrow().counts().get(index);
    }

    private void change(Consumer<ObjectNode> change) {
        winding.document().change(winding.key(), COUNTS + "/" + index, tree -> {
            change.accept((ObjectNode) tree.at(COUNTS + "/" + index));
            return tree;
        });
    }
}
