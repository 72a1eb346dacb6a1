package org.copperbook.store.sqlite;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A connection that keeps its prepared statements: of a short query the engine spends most of its time on making sense of
 * the text, and the driver makes every statement anew. A statement that is closed goes back under its text and is handed out
 * again; while it is out, whoever asks for the same text gets another one. One that failed is not kept. The engine itself
 * prepares kept ones again when the layout changes. Not for several threads at once, as the connection itself.
 */
final class KeptStatements implements InvocationHandler {

    private static final int MOST = 100;

    private final Connection connection;
    private final Map<String, PreparedStatement> idle = new LinkedHashMap<>();

    private KeptStatements(Connection connection) {
        this.connection = connection;
    }

    /** The same connection with statements kept; closing it closes them. */
    static Connection over(Connection connection) {
        return (Connection) Proxy.newProxyInstance(KeptStatements.class.getClassLoader(),
                new Class<?>[] {Connection.class}, new KeptStatements(connection));
    }

    @Override
    public Object invoke(Object proxy, Method method, Object[] args) throws Throwable {
        if (method.getName().equals("prepareStatement") && args.length == 1) {
            return prepared((String) args[0]);
        }
        if (method.getName().equals("close")) {
            idle.clear();
        }
        return call(connection, method, args);
    }

    private PreparedStatement prepared(String sql) throws SQLException {
        PreparedStatement kept = idle.remove(sql);
        return (PreparedStatement) Proxy.newProxyInstance(KeptStatements.class.getClassLoader(),
                new Class<?>[] {PreparedStatement.class},
                new Lent(sql, kept == null ? connection.prepareStatement(sql) : kept));
    }

    private void back(String sql, PreparedStatement statement) throws SQLException {
        if (connection.isClosed() || idle.containsKey(sql)) {
            statement.close();
            return;
        }
        // Lets go of the values, which may be long texts.
        statement.clearParameters();
        idle.put(sql, statement);
        if (idle.size() > MOST) {
            String oldest = idle.keySet().iterator().next();
            idle.remove(oldest).close();
        }
    }

    private static Object call(Object target, Method method, Object[] args) throws Throwable {
        try {
            return method.invoke(target, args);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }

    /** A statement that is out. */
    private final class Lent implements InvocationHandler {

        private final String sql;
        private final PreparedStatement statement;
        private ResultSet last;
        private boolean failed;
        private boolean returned;

        Lent(String sql, PreparedStatement statement) {
            this.sql = sql;
            this.statement = statement;
        }

        @Override
        public Object invoke(Object proxy, Method method, Object[] args) throws Throwable {
            if (method.getName().equals("close")) {
                giveBack();
                return null;
            }
            if (returned) {
                throw new SQLException("the statement is closed: " + sql);
            }
            try {
                Object result = call(statement, method, args);
                if (result instanceof ResultSet rows) {
                    last = rows;
                }
                return result;
            } catch (SQLException e) {
                failed = true;
                throw e;
            }
        }

        private void giveBack() throws SQLException {
            if (returned) {
                return;
            }
            returned = true;
            if (failed) {
                statement.close();
                return;
            }
            if (last != null) {
                // A result that was read half would hold its snapshot.
                last.close();
            }
            back(sql, statement);
        }
    }
}
