package org.copperbook.store.engines;

import java.nio.file.Path;
import org.copperbook.store.JobStore;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;

/** An empty store on each engine, opened before each test and closed after it; a subclass names the engines. */
public abstract class OnEachEngine {

    @Parameter
    protected Engine engine;

    @TempDir
    protected Path folder;

    protected Place place;
    protected JobStore store;

    @BeforeEach
    void open() {
        place = engine.place(folder);
        store = place.open();
    }

    @AfterEach
    void close() {
        store.close();
    }
}
