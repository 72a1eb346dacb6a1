package org.copperbook.store;

import java.time.Clock;
import java.time.Duration;
import java.util.Objects;

/**
 * How a store is opened.
 *
 * @param stageOf             says where a job stands
 * @param clock               time of saves; its zone decides the year of job numbers
 * @param patience            how long to wait for another program that is writing
 * @param lookForChangesEvery how often to look for changes made by other programs
 */
public record StoreOptions(StageOf stageOf, Clock clock, Duration patience, Duration lookForChangesEvery) {

    public StoreOptions {
        Objects.requireNonNull(stageOf, "stageOf");
        Objects.requireNonNull(clock, "clock");
    }

    public static StoreOptions standard() {
        return new StoreOptions(StageOf.CHECKS, Clock.systemDefaultZone(), Duration.ofSeconds(10),
                Duration.ofSeconds(1));
    }

    public StoreOptions withStageOf(StageOf other) {
        return new StoreOptions(other, clock, patience, lookForChangesEvery);
    }

    public StoreOptions withClock(Clock other) {
        return new StoreOptions(stageOf, other, patience, lookForChangesEvery);
    }

    public StoreOptions withPatience(Duration other) {
        return new StoreOptions(stageOf, clock, other, lookForChangesEvery);
    }

    public StoreOptions withLookForChangesEvery(Duration other) {
        return new StoreOptions(stageOf, clock, patience, other);
    }
}
