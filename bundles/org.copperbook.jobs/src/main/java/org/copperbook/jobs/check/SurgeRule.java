package org.copperbook.jobs.check;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.runup.SurgeTest;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/**
 * One of the rules by which the level of a surge comparison is set. There is no single one, so a record names the one
 * used; the names are the titles of the limit profile's entries {@code surge.level.*}.
 *
 * @param name      the rule as it is recorded with a test
 * @param peakVolts its level for the winding, V peak; empty when the winding's rated volts are not known
 * @param source    source of the rule
 */
public record SurgeRule(String name, Optional<Double> peakVolts, String source) {

    /** Entries of the limit profile, in the order in which they are offered. */
    private static final List<String> IDS = List.of("surge.level.workshop", "surge.level.new-coil",
            "surge.level.in-service", "surge.level.impulse");
    /** How far below the level the indicated volts may lie: setting of the tester, common practice, no source. */
    static final double SETTING = 0.03;

    /** The rules for a winding, those without a level (its rated volts are not known) included. */
    public static List<SurgeRule> forWinding(WindingRole role, Job job, Shop shop) {
        return levels(role, new Machine(job, shop), new LimitBook(job, shop)).stream()
                .map(l -> new SurgeRule(l.limit().title(), l.lower(), l.source())).toList();
    }

    /** The level of the rule that a test names; empty when it names none of the profile's, or its level is not known. */
    static Optional<LimitBook.Applied> level(SurgeTest test, Machine machine, LimitBook limits) {
        if (test.levelRule() == null || test.winding() == null) {
            return Optional.empty();
        }
        String named = plain(test.levelRule());
        return levels(test.winding(), machine, limits).stream()
                .filter(l -> l.isSet() && named.startsWith(plain(l.limit().title()))).findFirst();
    }

    private static List<LimitBook.Applied> levels(WindingRole role, Machine machine, LimitBook limits) {
        Map<String, Double> volts = machine.ratedVolts(role).map(u -> Map.of("U", u)).orElse(Map.of());
        return IDS.stream().map(id -> limits.find(id, volts)).filter(l -> l.limit() != null).toList();
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
    }
}
