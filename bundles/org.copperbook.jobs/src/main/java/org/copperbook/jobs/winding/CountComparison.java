package org.copperbook.jobs.winding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Independent counts of one winding held against each other, coil by coil. A figure stands when two people found it; a
 * third count needs to recount only what the first two differ in, and settles it where it agrees with one of them.
 *
 * @param standing    where the counts stand as a whole
 * @param differences every place at which the counts do not all say the same, in the order of the groups
 * @param agreed      turns of each coil, group by group, of the groups in which every coil is agreed
 * @param strands     strands in hand that two people found; null when they differ or nobody counted them
 */
public record CountComparison(Standing standing, List<Difference> differences, Map<Integer, List<Integer>> agreed,
        Integer strands) {

    /** Where counts stand. */
    public enum Standing {
        /** Fewer than two are handed in. */
        WAITING,
        /** Two people found the same everywhere. */
        AGREE,
        /** The first two differ, and a further count settles every difference. */
        SETTLED,
        /** They agree, but at some place only because one person counted twice. */
        ONE_PERSON,
        /** They differ. */
        DIFFER
    }

    /** The coil of a difference in the strands in hand. */
    public static final int STRANDS = 0;

    /**
     * One place at which the counts part.
     *
     * @param group  number of the group; 0 for the strands in hand
     * @param coil   coil of the group from 1, or {@link #STRANDS}
     * @param said   what each count says, in the order of the counts: turns, 0 for a coil that it does not have, null
     *               where it says nothing
     * @param agreed what stands, or null while it is open
     */
    public record Difference(int group, int coil, List<Integer> said, Integer agreed) {
        public Difference {
            said = Collections.unmodifiableList(new ArrayList<>(said));
        }

        /** Whether no two people found the same here. */
        public boolean isOpen() {
            return agreed == null;
        }
    }

    public CountComparison {
        differences = List.copyOf(differences);
        agreed = Collections.unmodifiableMap(new TreeMap<>(agreed));
    }

    /** Compares the counts of a winding that are handed in. */
    public static CountComparison of(WindingData winding) {
        return of(winding.counts());
    }

    /** Compares those counts of a list that are handed in. */
    public static CountComparison of(List<TurnCount> all) {
        List<TurnCount> counts = all.stream().filter(TurnCount::handedIn).toList();
        if (counts.size() < 2) {
            return new CountComparison(Standing.WAITING, List.of(), Map.of(), null);
        }
        return new Comparing(counts).result();
    }

    /** Differences that no count has settled. */
    public List<Difference> open() {
        return differences.stream().filter(Difference::isOpen).toList();
    }

    /** Whether the figures stand: two people found each. */
    public boolean stands() {
        return standing == Standing.AGREE || standing == Standing.SETTLED;
    }

    private static final class Comparing {

        private final List<TurnCount> counts;
        private final List<Difference> differences = new ArrayList<>();
        private final Map<Integer, List<Integer>> agreed = new TreeMap<>();
        private boolean alone;

        Comparing(List<TurnCount> counts) {
            this.counts = counts;
        }

        CountComparison result() {
            TreeSet<Integer> groups = new TreeSet<>();
            counts.forEach(c -> c.groups().forEach(g -> groups.add(g.group())));
            groups.forEach(this::group);
            List<Integer> said = new ArrayList<>();
            counts.forEach(c -> said.add(c.strands()));
            boolean counted = said.stream().anyMatch(Objects::nonNull);
            Integer strands = counted ? place(0, STRANDS, said) : null;
            return new CountComparison(standing(), differences, agreed, strands);
        }

        private Standing standing() {
            if (differences.stream().anyMatch(Difference::isOpen)) {
                return Standing.DIFFER;
            }
            return alone ? Standing.ONE_PERSON : differences.isEmpty() ? Standing.AGREE : Standing.SETTLED;
        }

        private void group(int number) {
            List<Optional<List<Integer>>> said = counts.stream().map(c -> c.groups().stream()
                    .filter(g -> g.group() == number).findFirst().map(TurnCount.GroupTurns::turns)).toList();
            int coils = said.stream().flatMap(Optional::stream).mapToInt(List::size).max().orElse(0);
            List<Integer> turns = new ArrayList<>();
            for (int i = 0; i < coils; i++) {
                int coil = i;
                List<Integer> here = new ArrayList<>();
                said.forEach(s -> here.add(s.map(t -> coil < t.size() ? t.get(coil) : Integer.valueOf(0)).orElse(null)));
                turns.add(place(number, coil + 1, here));
            }
            if (!turns.isEmpty() && turns.stream().allMatch(Objects::nonNull)) {
                agreed.put(number, turns.stream().filter(t -> t > 0).toList());
            }
        }

        /** What stands at a place; a place at which not all say the same is a difference. */
        private Integer place(int group, int coil, List<Integer> said) {
            Integer byTwo = found(said, true);
            Integer stands = byTwo == null ? found(said, false) : byTwo;
            alone |= byTwo == null && stands != null;
            boolean alike = said.stream().limit(2).distinct().count() == 1
                    && said.stream().skip(2).allMatch(s -> s == null || s.equals(said.get(0)));
            if (!alike || stands == null) {
                differences.add(new Difference(group, coil, said, stands));
            }
            return stands;
        }

        /** What two counts found alike; null when no two did. */
        private Integer found(List<Integer> said, boolean byTwoPeople) {
            for (int i = 0; i < said.size(); i++) {
                for (int j = i + 1; j < said.size(); j++) {
                    if (said.get(i) != null && said.get(i).equals(said.get(j))
                            && (!byTwoPeople || differentPeople(counts.get(i), counts.get(j)))) {
                        return said.get(i);
                    }
                }
            }
            return null;
        }

        private static boolean differentPeople(TurnCount a, TurnCount b) {
            return a.by() != null && b.by() != null && !a.by().equals(b.by());
        }
    }
}
