package org.copperbook.store.engines;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreOptions;

/** Where a store is, and the way in behind its back. */
public abstract class Place {

    /** Opens the store; more than once means several programs. */
    public abstract JobStore open(StoreOptions options);

    /** A connection as somebody with a database tool has it; foreign keys are not looked at. */
    public abstract Connection connect() throws SQLException;

    /** Names of the guards with what takes each away and what makes it again. */
    protected abstract String guards();

    /** What the arguments of a program of its own say of this place. */
    public abstract List<String> arguments();

    public final JobStore open() {
        return open(StoreOptions.standard());
    }

    /** Runs statements; the guards are in force. */
    public final void run(String... statements) throws SQLException {
        try (Connection c = connect(); Statement s = c.createStatement()) {
            for (String sql : statements) {
                s.executeUpdate(sql);
            }
        }
    }

    /** Takes away the guards against changing what was saved; gives what makes them again. */
    public final List<String> withoutGuards() throws SQLException {
        List<String> made = new ArrayList<>();
        try (Connection c = connect(); Statement s = c.createStatement()) {
            List<String> drops = new ArrayList<>();
            try (ResultSet r = s.executeQuery(guards())) {
                while (r.next()) {
                    drops.add(r.getString(1));
                    made.add(r.getString(2));
                }
            }
            for (String drop : drops) {
                s.executeUpdate(drop);
            }
        }
        return made;
    }

    /** Runs statements as somebody would who covers their traces: the guards are put back afterwards. */
    public final void tamper(String... statements) throws SQLException {
        List<String> guards = withoutGuards();
        run(statements);
        run(guards.toArray(String[]::new));
    }
}
