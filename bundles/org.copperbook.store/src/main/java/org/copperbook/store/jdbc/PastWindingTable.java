package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.winding.memory.Figure;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.store.memory.Asked;
import org.copperbook.store.memory.Remembered;

/** The derived rows of remembered windings. */
final class PastWindingTable {

    private static final String COLUMNS = "job_id, part, revision, number, role, as_wound, proposed, maker, type, serial,"
            + " rating, poles, slots, bore, length, volts, span, turns, wire, circuits, connection, recorded_at";
    private static final String PUT = "INSERT INTO past_winding (" + COLUMNS + ", serial_key, search, fingerprint)"
            + " VALUES (" + "?, ".repeat(24) + "?) ON CONFLICT (job_id, part) DO UPDATE SET "
            // Changed in its place: the indexes of what stayed the same are left alone.
            + Stream.of((COLUMNS + ", serial_key, search, fingerprint").split(", ")).skip(2)
                    .map(n -> n + " = excluded." + n).collect(Collectors.joining(", "));
    private static final int MOST_OF_ONE_MACHINE = 100;

    void put(Connection c, PastWindingEntry entry) throws SQLException {
        Remembered w = entry.winding();
        try (PreparedStatement in = c.prepareStatement(PUT)) {
            in.setString(1, w.jobId());
            in.setString(2, w.part().toString());
            in.setInt(3, w.revision());
            in.setString(4, w.number());
            in.setString(5, w.role().word());
            in.setInt(6, w.asWound() ? 1 : 0);
            in.setInt(7, w.proposed() ? 1 : 0);
            in.setString(8, w.maker());
            in.setString(9, w.type());
            in.setString(10, w.serial());
            MachineFigures f = w.figures();
            int at = 11;
            for (double value : new double[] {f.rating(), f.poles(), f.slots(), f.bore(), f.length(), f.volts()}) {
                if (Double.isNaN(value)) {
                    in.setNull(at++, Types.DOUBLE);
                } else {
                    in.setDouble(at++, value);
                }
            }
            in.setString(17, w.span());
            whole(in, 18, w.turns());
            in.setString(19, w.wire());
            whole(in, 20, w.circuits());
            in.setString(21, w.connection());
            in.setString(22, w.recordedAt().toString());
            in.setString(23, serialKey(w.serial()));
            in.setString(24, entry.search());
            in.setString(25, entry.fingerprint());
            in.executeUpdate();
        }
    }

    private static void whole(PreparedStatement in, int at, Integer value) throws SQLException {
        if (value == null) {
            in.setNull(at, Types.INTEGER);
        } else {
            in.setInt(at, value);
        }
    }

    /** Takes out those of a job that it has no more. */
    void keepOnly(Connection c, String jobId, List<PastWindingEntry> entries) throws SQLException {
        Set<String> gone = new HashSet<>();
        try (PreparedStatement q = c.prepareStatement("SELECT part FROM past_winding WHERE job_id = ?")) {
            q.setString(1, jobId);
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    gone.add(r.getString(1));
                }
            }
        }
        entries.forEach(e -> gone.remove(e.winding().part().toString()));
        try (PreparedStatement d = c.prepareStatement("DELETE FROM past_winding WHERE job_id = ? AND part = ?")) {
            for (String part : gone) {
                d.setString(1, jobId);
                d.setString(2, part);
                d.executeUpdate();
            }
        }
    }

    void clear(Connection c) throws SQLException {
        try (PreparedStatement d = c.prepareStatement("DELETE FROM past_winding")) {
            d.executeUpdate();
        }
    }

    int size(Connection c) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT COUNT(*) FROM past_winding");
                ResultSet r = q.executeQuery()) {
            r.next();
            return r.getInt(1);
        }
    }

    /** The fingerprint under which a card is in; nothing when it is not. */
    Optional<String> fingerprint(Connection c, String jobId, PartKey key) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(
                "SELECT fingerprint FROM past_winding WHERE job_id = ? AND part = ?")) {
            q.setString(1, jobId);
            q.setString(2, key.toString());
            try (ResultSet r = q.executeQuery()) {
                return r.next() ? Optional.of(r.getString(1)) : Optional.empty();
            }
        }
    }

    /** Receives the figures of the windings in question, block by block. */
    interface Blocks {
        /**
         * @param ids     keys of the rows
         * @param columns figures by {@link Figure}, one array each of the same length
         */
        void take(long[] ids, double[][] columns);
    }

    /**
     * Streams the figures of every winding that may be meant, so that none but one block is ever in memory.
     *
     * @param kind  those of this kind only
     * @param range those of some sizes only; all when null
     */
    void figures(Connection c, Asked asked, MachineKind kind, SizeRange range, int block, Blocks to)
            throws SQLException {
        List<String> words = words(asked);
        try (PreparedStatement q = c.prepareStatement("SELECT id, rating, poles, slots, bore, length, volts"
                + " FROM past_winding" + where(words, is("poles", kind.poles()) + is("slots", kind.slots()) + within(range)))) {
            int next = fill(q, asked, words);
            for (double known : new double[] {kind.poles(), kind.slots()}) {
                if (!Double.isNaN(known)) {
                    q.setDouble(next++, known);
                }
            }
            if (range != null && !range.unknown()) {
                q.setDouble(next, range.from());
                q.setDouble(next + 1, range.below());
            }
            try (ResultSet r = q.executeQuery()) {
                long[] ids = new long[block];
                double[][] columns = new double[Figure.values().length][block];
                int n = 0;
                while (r.next()) {
                    ids[n] = r.getLong(1);
                    for (int f = 0; f < columns.length; f++) {
                        double value = r.getDouble(f + 2);
                        columns[f][n] = r.wasNull() ? Double.NaN : value;
                    }
                    if (++n == block) {
                        to.take(ids, columns);
                        n = 0;
                    }
                }
                if (n > 0) {
                    double[][] rest = new double[columns.length][];
                    for (int f = 0; f < rest.length; f++) {
                        rest[f] = java.util.Arrays.copyOf(columns[f], n);
                    }
                    to.take(java.util.Arrays.copyOf(ids, n), rest);
                }
            }
        }
    }

    /** The kinds there are of a role; goes from one to the next by the index and not by the rows. */
    List<MachineKind> kinds(Connection c, WindingRole role) throws SQLException {
        List<MachineKind> kinds = new ArrayList<>();
        for (double poles : different(c, role, "poles", "")) {
            List<Double> slots = Double.isNaN(poles) ? different(c, role, "slots", " AND poles IS NULL")
                    : different(c, role, "slots", " AND poles = ?", poles);
            slots.forEach(s -> kinds.add(new MachineKind(poles, s)));
        }
        return kinds;
    }

    private static List<Double> different(Connection c, WindingRole role, String column, String and, double... values)
            throws SQLException {
        List<Double> found = new ArrayList<>();
        String from = " FROM past_winding WHERE role = ?" + and + " AND " + column;
        try (PreparedStatement none = c.prepareStatement("SELECT 1" + from + " IS NULL LIMIT 1");
                PreparedStatement next = c.prepareStatement("SELECT MIN(" + column + ")" + from + " > ?")) {
            if (one(none, role, values, new double[0]).isPresent()) {
                found.add(Double.NaN);
            }
            Optional<Double> last = one(next, role, values, -Double.MAX_VALUE);
            while (last.isPresent()) {
                found.add(last.get());
                last = one(next, role, values, last.get());
            }
        }
        return found;
    }

    private static Optional<Double> one(PreparedStatement q, WindingRole role, double[] values, double... last)
            throws SQLException {
        int at = 1;
        q.setString(at++, role.word());
        for (double value : values) {
            q.setDouble(at++, value);
        }
        for (double value : last) {
            q.setDouble(at++, value);
        }
        try (ResultSet r = q.executeQuery()) {
            if (!r.next()) {
                return Optional.empty();
            }
            double value = r.getDouble(1);
            return r.wasNull() ? Optional.empty() : Optional.of(value);
        }
    }

    private static String is(String column, double value) {
        return " AND " + column + (Double.isNaN(value) ? " IS NULL" : " = ?");
    }

    private static String within(SizeRange range) {
        if (range == null) {
            return "";
        }
        return " AND " + range.column() + (range.unknown() ? " IS NULL" : " >= ? AND " + range.column() + " < ?");
    }

    /** A row with its key. */
    record Row(long id, Remembered winding) {
    }

    /** The windings of the machine asked for, newest first. */
    List<Row> ofMachine(Connection c, Asked asked) throws SQLException {
        String serial = serialKey(asked.serial());
        if (serial.isEmpty()) {
            return List.of();
        }
        List<String> words = words(asked);
        try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS + ", id FROM past_winding"
                + where(words, " AND serial_key = ?") + " ORDER BY recorded_at DESC, id DESC LIMIT "
                + MOST_OF_ONE_MACHINE)) {
            q.setString(fill(q, asked, words), serial);
            return rows(q);
        }
    }

    /** The newest windings that may be meant. */
    List<Row> newest(Connection c, Asked asked, int wanted) throws SQLException {
        List<String> words = words(asked);
        try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS + ", id FROM past_winding"
                + where(words, "") + " ORDER BY recorded_at DESC, id DESC LIMIT ?")) {
            q.setInt(fill(q, asked, words), wanted);
            return rows(q);
        }
    }

    Optional<Row> byId(Connection c, long id) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS + ", id FROM past_winding WHERE id = ?")) {
            q.setLong(1, id);
            return rows(q).stream().findFirst();
        }
    }

    private static List<String> words(Asked asked) {
        return SearchText.words(asked.words()).stream().map(SearchText::anywhere).toList();
    }

    private static String where(List<String> words, String and) {
        return " WHERE role = ? AND job_id <> ?" + " AND search LIKE ? ESCAPE '\\'".repeat(words.size()) + and;
    }

    private static int fill(PreparedStatement q, Asked asked, List<String> words) throws SQLException {
        q.setString(1, asked.role().word());
        q.setString(2, asked.notOf());
        int at = 3;
        for (String word : words) {
            q.setString(at++, word);
        }
        return at;
    }

    /** Letters and digits only, so that "A-104/7" and "a104 7" are the same serial number. */
    private static String serialKey(String serial) {
        return SearchText.fold(serial).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private static List<Row> rows(PreparedStatement q) throws SQLException {
        List<Row> found = new ArrayList<>();
        try (ResultSet r = q.executeQuery()) {
            while (r.next()) {
                MachineFigures figures = new MachineFigures(real(r, 11), real(r, 12), real(r, 13), real(r, 14),
                        real(r, 15), real(r, 16));
                found.add(new Row(r.getLong(23), new Remembered(r.getString(1), Kept.word(r.getString(2), PartKey::parse),
                        r.getInt(3), r.getString(4), Kept.word(r.getString(5), WindingRole::of), r.getInt(6) != 0,
                        r.getInt(7) != 0, r.getString(8), r.getString(9), r.getString(10), figures, r.getString(17),
                        whole(r, 18), r.getString(19), whole(r, 20), r.getString(21),
                        Kept.time(r.getString(22)))));
            }
        }
        return found;
    }

    private static double real(ResultSet r, int column) throws SQLException {
        double value = r.getDouble(column);
        return r.wasNull() ? Double.NaN : value;
    }

    private static Integer whole(ResultSet r, int column) throws SQLException {
        int value = r.getInt(column);
        return r.wasNull() ? null : value;
    }
}
