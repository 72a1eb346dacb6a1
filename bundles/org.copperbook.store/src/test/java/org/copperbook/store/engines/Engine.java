package org.copperbook.store.engines;

import java.nio.file.Path;
import java.sql.SQLException;

/** The engines a store's behaviour must not depend on. */
public enum Engine {
    SQLITE {
        @Override
        public Place place(Path folder) {
            return new FilePlace(folder.resolve("a shop").resolve("workshop.sqlite"));
        }
    },
    POSTGRES {
        @Override
        public Place place(Path folder) {
            try {
                return new ServerPlace(TestServer.shared());
            } catch (SQLException e) {
                throw new AssertionError(e);
            }
        }
    };

    /** A new place for one store; each call gives another. */
    public abstract Place place(Path folder);
}
