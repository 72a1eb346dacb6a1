package org.copperbook.product.tests;

import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A bundle of the product and the bundles below it, which it may use. The arrows point one way:
 * {@code calc <- jobs <- store, sheets <- desk <- plug-ins}; {@code batch} stands on store and sheets; help on nothing.
 */
enum ProductBundle {
    CALC,
    JOBS(CALC),
    STORE(JOBS, CALC),
    SHEETS(JOBS, CALC),
    DESK(STORE, SHEETS, JOBS, CALC),
    INSPECTION(DESK, STORE, SHEETS, JOBS, CALC),
    WINDING(DESK, STORE, SHEETS, JOBS, CALC),
    RECTIFIER(DESK, STORE, SHEETS, JOBS, CALC),
    RUNUP(DESK, STORE, SHEETS, JOBS, CALC),
    OFFICE(DESK, STORE, SHEETS, JOBS, CALC),
    BATCH(STORE, SHEETS, JOBS, CALC),
    HELP;

    private final Set<ProductBundle> below;

    ProductBundle(ProductBundle... below) {
        this.below = Set.copyOf(List.of(below));
    }

    String symbolicName() {
        return "org.copperbook." + name().toLowerCase(Locale.ROOT);
    }

    /** @return the root package and all below it, in ArchUnit's notation */
    String packages() {
        return symbolicName() + "..";
    }

    boolean hasWindow() {
        return this == DESK || below.contains(DESK);
    }

    Set<ProductBundle> forbidden() {
        return Arrays.stream(values()).filter(other -> other != this && !below.contains(other))
                .collect(toUnmodifiableSet());
    }

    static Stream<ProductBundle> withoutWindow() {
        return Arrays.stream(values()).filter(bundle -> !bundle.hasWindow());
    }
}
