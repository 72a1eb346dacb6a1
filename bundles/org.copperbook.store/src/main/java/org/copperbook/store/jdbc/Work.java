package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;

/**
 * What is done in one transaction.
 *
 * @param <T> what comes out of it
 */
@FunctionalInterface
public interface Work<T> {

    T on(Connection connection) throws SQLException;
}
