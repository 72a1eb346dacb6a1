package org.copperbook.jobs.check;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.CountComparison;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;

/** Who may begin which count of an old winding. */
public final class CountRule {

    private CountRule() {
    }

    /**
     * Number of the count that would be begun next: 1, 2, or 3 for what the first two differ in. The lowest that is free:
     * a first count that was given up leaves its number to whoever begins next.
     */
    public static int next(WindingData winding) {
        Set<Integer> taken = winding.counts().stream().map(TurnCount::ordinal).collect(Collectors.toSet());
        return IntStream.iterate(1, i -> i + 1).filter(i -> !taken.contains(i)).findFirst().orElseThrow();
    }

    /** Whether a further count is wanted: two, and another while they differ. */
    public static boolean wanted(WindingData winding) {
        if (winding.counts().size() < 2) {
            return true;
        }
        return winding.counts().stream().allMatch(TurnCount::handedIn) && !CountComparison.of(winding).stands();
    }

    /**
     * Why a person may not begin the next count, in words; empty when the person may. Two people count; only in a shop
     * of one person the same person may count again, on another day.
     *
     * @param who  person key, or null when nobody has said who works here
     * @param zone where the shop is, for what another day is
     */
    public static Optional<String> refuses(WindingData winding, String who, Shop shop, Instant now, ZoneId zone) {
        if (who == null) {
            return Optional.of(Phrases.say("count.who"));
        }
        List<TurnCount> own = winding.counts().stream().filter(c -> who.equals(c.by())).toList();
        if (own.isEmpty()) {
            return Optional.empty();
        }
        if (own.stream().anyMatch(c -> !c.handedIn())) {
            return Optional.of(Phrases.say("count.own-open"));
        }
        boolean alone = shop.people().values().stream().filter(p -> p.active() && !p.roles().isEmpty()).count() == 1;
        if (!alone) {
            return Optional.of(Phrases.say("count.another-person", own.get(0).ordinal()));
        }
        boolean sameDay = own.stream().anyMatch(c -> c.at() == null
                || LocalDate.ofInstant(c.at(), zone).equals(LocalDate.ofInstant(now, zone)));
        return sameDay ? Optional.of(Phrases.say("count.another-day")) : Optional.empty();
    }
}
