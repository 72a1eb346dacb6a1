package org.copperbook.jobs.check;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.limits.Formula;
import org.copperbook.jobs.limits.Limit;
import org.copperbook.jobs.limits.LimitProfile;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.shop.Shop;

/** Where a job's checks look up their limits: the machine's own from its maker first, then the profile in force. */
final class LimitBook {

    private final LimitProfile profile;
    private final Nameplate plate;

    LimitBook(Job job, Shop shop) {
        profile = shop.limits();
        plate = job.nameplate().orElse(null);
    }

    /** The first of some limits that has no bounds here; for computations that need them all. */
    Optional<String> firstUnset(String... ids) {
        return Stream.of(ids).filter(id -> !find(id).isSet()).findFirst();
    }

    /** A limit without a formula. */
    Applied find(String id) {
        return find(id, Map.of());
    }

    /** A limit, its formula computed from the quantities given (SI units). */
    Applied find(String id, Map<String, Double> quantities) {
        Optional<Limit> limit = entry(id);
        if (limit.isEmpty()) {
            return new Applied(id, null, null, "");
        }
        return apply(id, limit.get(), quantities);
    }

    private Optional<Limit> entry(String id) {
        Optional<Limit> general = profile.find(id);
        if (plate == null) {
            return general;
        }
        Optional<Limit> own = plate.makerLimits().stream().filter(l -> l.id().equals(id)).findFirst();
        if (own.isPresent() && own.get().original() == null && general.isPresent()) {
            return Optional.of(own.get().inPlaceOf(general.get()));
        }
        return own.isPresent() ? own : general;
    }

    private static Applied apply(String id, Limit limit, Map<String, Double> quantities) {
        if (limit.lower() != null || limit.upper() != null) {
            if (limit.lower() != null && limit.upper() != null && limit.lower() > limit.upper()) {
                return new Applied(id, limit, null, Phrases.say("limit.crossed"));
            }
            return new Applied(id, limit, new Bounds(limit.lower(), limit.upper()), "");
        }
        if (limit.formula() == null || limit.formula().isBlank()) {
            return new Applied(id, limit, null, "");
        }
        try {
            Formula formula = Formula.parse(limit.formula());
            double v = formula.value(quantities);
            return new Applied(id, limit, formula.isLower() ? Bounds.atLeast(v) : Bounds.atMost(v), "");
        } catch (Formula.UnknownQuantity e) {
            return new Applied(id, limit, null, Phrases.say("limit.quantity-unknown", e.quantity(), limit.formula()));
        } catch (IllegalArgumentException e) {
            return new Applied(id, limit, null, e.getMessage());
        }
    }

    /**
     * A limit as it applies here.
     *
     * @param id      id asked for
     * @param limit   the entry, or null when the profile has none
     * @param bounds  its bounds, or null when nothing can be decided by it
     * @param trouble why there are no bounds although there is an entry, in words; empty otherwise
     */
    record Applied(String id, Limit limit, Bounds bounds, String trouble) {

        boolean isSet() {
            return bounds != null && !bounds.isEmpty();
        }

        /** An outcome by a rule in words: without the rule in the profile nothing can meet it. */
        Outcome byRule(Outcome outcome) {
            return limit == null && outcome == Outcome.MEETS ? Outcome.NO_LIMIT_SET : outcome;
        }

        /** An upper bound, or nothing; for limits that are used inside a computation. */
        Optional<Double> upper() {
            return Optional.ofNullable(bounds).map(Bounds::upper);
        }

        /** A lower bound, or nothing. */
        Optional<Double> lower() {
            return Optional.ofNullable(bounds).map(Bounds::lower);
        }

        /** Whether the profile lets this entry decide; entries that say nothing decide. */
        boolean decides() {
            return limit != null && !Boolean.FALSE.equals(limit.decides());
        }

        String unit() {
            return limit == null || limit.unit() == null ? "" : limit.unit();
        }

        /** Source with edition; an override names what it stands in place of. */
        String source() {
            if (limit == null) {
                return "";
            }
            String own = withEdition(limit);
            Limit was = limit.original();
            return was == null ? own : Phrases.say("limit.in-place-of", own,
                    Figures.bounds(was.lower() == null && was.upper() == null ? null
                            : new Bounds(was.lower(), was.upper()), was.unit() == null ? "" : was.unit()),
                    withEdition(was));
        }

        private static String withEdition(Limit l) {
            String source = l.source() == null ? Phrases.say("limit.no-source") : l.source();
            return l.edition() == null || l.edition().isBlank() ? source : source + " (" + l.edition() + ")";
        }
    }
}
