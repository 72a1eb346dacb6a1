package org.copperbook.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptStatementsTest {

    private static final String ALL = "SELECT n FROM t ORDER BY n";
    private static final String ONE = "SELECT ?";

    @TempDir
    Path folder;

    private SqliteFile file;
    private Connection writer;

    @BeforeEach
    void threeRows() throws SQLException {
        file = new SqliteFile(folder.resolve("s.sqlite"), Duration.ofSeconds(2), 0);
        writer = file.writer();
        SqliteFile.run(writer, "CREATE TABLE t (n INTEGER PRIMARY KEY)");
        SqliteFile.run(writer, "INSERT INTO t VALUES (1), (2), (3)");
    }

    @AfterEach
    void close() throws SQLException {
        writer.close();
    }

    private static int next(PreparedStatement s) throws SQLException {
        try (ResultSet r = s.executeQuery()) {
            assertTrue(r.next());
            return r.getInt(1);
        }
    }

    @Test
    void whatIsAskedForAgainIsHandedOutAgain() throws SQLException {
        PreparedStatement real;
        try (PreparedStatement s = writer.prepareStatement(ALL); ResultSet r = s.executeQuery()) {
            real = (PreparedStatement) r.getStatement();
        }
        try (PreparedStatement s = writer.prepareStatement(ALL); ResultSet r = s.executeQuery()) {
            assertTrue(real == r.getStatement());
        }
    }

    @Test
    void theSameTextInsideItselfIsAStatementOfItsOwn() throws SQLException {
        int outer = 0;
        try (PreparedStatement a = writer.prepareStatement(ALL); ResultSet r = a.executeQuery()) {
            while (r.next()) {
                outer += r.getInt(1);
                try (PreparedStatement b = writer.prepareStatement(ALL)) {
                    assertEquals(1, next(b));
                }
            }
        }
        assertEquals(1 + 2 + 3, outer);
    }

    @Test
    void noValueIsLeftBehind() throws SQLException {
        try (PreparedStatement s = writer.prepareStatement(ONE)) {
            s.setInt(1, 7);
            assertEquals(7, next(s));
        }
        try (PreparedStatement s = writer.prepareStatement(ONE); ResultSet r = s.executeQuery()) {
            r.next();
            assertNull(r.getObject(1));
        }
    }

    @Test
    void aResultReadHalfHoldsNoSnapshot() throws SQLException {
        try (Connection reader = file.reader()) {
            PreparedStatement half = reader.prepareStatement(ALL);
            assertTrue(half.executeQuery().next());
            half.close();
            SqliteFile.run(writer, "INSERT INTO t VALUES (0)");
            try (PreparedStatement s = reader.prepareStatement(ALL)) {
                assertEquals(0, next(s));
            }
        }
    }

    @Test
    void aStatementThatFailedIsNotKept() throws SQLException {
        String again = "INSERT INTO t VALUES (1)";
        try (PreparedStatement s = writer.prepareStatement(again)) {
            assertThrows(SQLException.class, s::executeUpdate);
        }
        SqliteFile.run(writer, "DELETE FROM t");
        try (PreparedStatement s = writer.prepareStatement(again)) {
            assertEquals(1, s.executeUpdate());
        }
    }

    @Test
    void aLayoutChangedByAnotherProgramIsSeen() throws SQLException {
        String count = "SELECT COUNT(*) FROM t";
        try (PreparedStatement s = writer.prepareStatement(count)) {
            assertEquals(3, next(s));
        }
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file.path())) {
            SqliteFile.run(other, "DROP TABLE t");
            SqliteFile.run(other, "CREATE TABLE t (a TEXT, n INTEGER)");
        }
        try (PreparedStatement s = writer.prepareStatement(count)) {
            assertEquals(0, next(s));
        }
    }

    @Test
    void aClosedStatementSaysSo() throws SQLException {
        PreparedStatement s = writer.prepareStatement(ALL);
        s.close();
        s.close();
        assertThrows(SQLException.class, s::executeQuery);
    }

    @Test
    void moreTextsThanAreKeptAllWork() throws SQLException {
        for (int round = 0; round < 2; round++) {
            for (int i = 0; i < 300; i++) {
                try (PreparedStatement s = writer.prepareStatement("SELECT " + i)) {
                    assertEquals(i, next(s));
                }
            }
        }
    }

    @Test
    void theConnectionClosesWithWhatItKept() throws SQLException {
        Connection reader = file.reader();
        try (PreparedStatement s = reader.prepareStatement(ALL)) {
            next(s);
        }
        reader.close();
        assertTrue(reader.isClosed());
        assertFalse(writer.isClosed());
    }
}
