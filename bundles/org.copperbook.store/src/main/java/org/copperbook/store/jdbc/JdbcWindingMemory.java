package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.calc.winding.memory.PastWinding;
import org.copperbook.calc.winding.memory.PastWindings;
import org.copperbook.jobs.rights.Right;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.store.Change;
import org.copperbook.store.JobStore;
import org.copperbook.store.memory.Asked;
import org.copperbook.store.memory.CardTaken;
import org.copperbook.store.memory.FoundWinding;
import org.copperbook.store.memory.SameCard;
import org.copperbook.store.memory.WindingMemory;

/** The memory over the derived table of past windings. */
final class JdbcWindingMemory implements WindingMemory {

    /** Distances are kept as single floats: what lies within their rounding of the edge is not left out. */
    private static final double CLEARLY = 1 - 1e-5;
    /** Rows compared at a time; bounds the memory a search takes to a few megabytes. */
    private static final int BLOCK = 20_000;

    private final Database database;
    private final PastWindingTable table;
    private final Writing writing;
    private final Guard guard;
    private final ChangeWatch watch;
    private final Listeners listeners;

    JdbcWindingMemory(Database database, PastWindingTable table, Writing writing, Guard guard,
            ChangeWatch watch, Listeners listeners) {
        this.database = database;
        this.table = table;
        this.writing = writing;
        this.guard = guard;
        this.watch = watch;
        this.listeners = listeners;
    }

    @Override
    public int size() {
        return database.read(table::size);
    }

    @Override
    public List<FoundWinding> nearest(Asked asked, int wanted) {
        org.copperbook.calc.Require.between("past windings wanted", wanted, 1, 1000, "nobody reads more");
        return database.readApart(c -> find(c, asked, wanted));
    }

    private List<FoundWinding> find(Connection c, Asked asked, int wanted) throws SQLException {
        Map<Long, FoundWinding> found = new LinkedHashMap<>();
        boolean compare = known(asked.figures());
        for (PastWindingTable.Row row : table.ofMachine(c, asked)) {
            found.put(row.id(), new FoundWinding(row.winding(), true, compare ? distance(asked, row) : Double.NaN,
                    compare ? differences(asked, row) : List.of()));
        }
        if (compare) {
            for (Near near : nearestIds(c, asked, wanted)) {
                if (!found.containsKey(near.id())) {
                    table.byId(c, near.id()).ifPresent(row -> found.put(near.id(),
                            new FoundWinding(row.winding(), false, near.found().distance(),
                                    near.found().differences())));
                }
            }
        } else {
            for (PastWindingTable.Row row : table.newest(c, asked, wanted)) {
                found.putIfAbsent(row.id(), new FoundWinding(row.winding(), false, Double.NaN, List.of()));
            }
        }
        return found.values().stream().limit(wanted).toList();
    }

    private record Near(long id, PastWinding found) {
    }

    private List<Near> nearestIds(Connection c, Asked asked, int wanted) throws SQLException {
        List<Near> best = new ArrayList<>();
        PastWindingTable.Blocks compare = (ids, columns) -> {
            for (PastWinding p : PastWindings.ofColumns(columns).nearest(asked.figures(), wanted)) {
                best.add(new Near(ids[p.row()], p));
            }
            best.sort(Comparator.comparingDouble((Near n) -> n.found().distance()).thenComparingLong(Near::id));
            if (best.size() > wanted) {
                best.subList(wanted, best.size()).clear();
            }
        };
        Map<MachineKind, Double> kinds = new HashMap<>();
        for (MachineKind kind : table.kinds(c, asked.role())) {
            kinds.put(kind, kind.distance(asked.figures()));
        }
        for (MachineKind kind : kinds.keySet().stream().sorted(Comparator.comparing(kinds::get)).toList()) {
            double least = kinds.get(kind);
            if (best.size() == wanted && last(best) < least * CLEARLY) {
                break;
            }
            ofKind(c, asked, kind, least, wanted, best, compare);
        }
        return best;
    }

    /** @param least how far every winding of the kind is at least */
    private void ofKind(Connection c, Asked asked, MachineKind kind, double least, int wanted, List<Near> best,
            PastWindingTable.Blocks compare) throws SQLException {
        boolean enough = best.size() == wanted;
        List<SizeRange> ranges = enough ? SizeRange.within(asked.figures(), left(last(best), least))
                : SizeRange.around(asked.figures());
        if (ranges.isEmpty()) {
            table.figures(c, asked, kind, null, BLOCK, compare);
        }
        for (SizeRange range : ranges) {
            table.figures(c, asked, kind, range, BLOCK, compare);
            if (!enough && best.size() == wanted
                    && last(best) < Math.hypot(least, range.farthest()) * CLEARLY) {
                break;
            }
        }
    }

    private static double last(List<Near> best) {
        return best.get(best.size() - 1).found().distance();
    }

    /** What a distance leaves for the size when the kind alone takes the least of it; rather too much than too little. */
    private static double left(double distance, double least) {
        double whole = distance / CLEARLY;
        double taken = least * CLEARLY;
        return Math.sqrt(Math.max(0, whole * whole - taken * taken)) + 1 - CLEARLY;
    }

    private static double distance(Asked asked, PastWindingTable.Row row) {
        return one(asked, row).distance();
    }

    private static List<PastWinding.Difference> differences(Asked asked, PastWindingTable.Row row) {
        return one(asked, row).differences();
    }

    private static PastWinding one(Asked asked, PastWindingTable.Row row) {
        return PastWindings.of(List.of(row.winding().figures())).nearest(asked.figures(), 1).get(0);
    }

    private static boolean known(MachineFigures f) {
        return !(Double.isNaN(f.rating()) && Double.isNaN(f.poles()) && Double.isNaN(f.slots())
                && Double.isNaN(f.bore()) && Double.isNaN(f.length()) && Double.isNaN(f.volts()));
    }

    @Override
    public List<CardTaken> takeIn(List<OldCard> cards, String who, String why, SameCard same) {
        if (who == null || who.isBlank()) {
            throw new IllegalArgumentException("every save needs the key of the person who saves");
        }
        List<CardTaken> taken = watch.write(c -> {
            guard.may(c, Right.TAKE_IN_CARDS, who);
            List<CardTaken> out = new ArrayList<>();
            for (OldCard card : cards) {
                out.add(writing.takeInCard(c, card, who, why == null ? "" : why, same));
            }
            return out;
        });
        listeners.tell(new Change(JobStore.CARDS, Change.CARDS, false));
        return taken;
    }

    @Override
    public void rebuild() {
        database.write(c -> {
            writing.rebuildPastWindings(c);
            return null;
        });
    }
}
