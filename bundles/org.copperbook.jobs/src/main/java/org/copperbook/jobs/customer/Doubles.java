package org.copperbook.jobs.customer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.IntPredicate;

/**
 * Finds customers who may be one and the same. Only those who share a mark (name, name with one letter less, telephone,
 * mail, tax number) are held against each other, so that the work grows with the number of customers and not with that of
 * their pairs. What counts as alike is common practice, no source.
 */
public final class Doubles {

    /** Why two may be one, the strongest first. */
    public enum Why { SAME_TAX_ID, SAME_NAME, SAME_MAIL, SAME_PHONE, NEAR_NAME }

    /**
     * Two customers who may be one.
     *
     * @param first  key of the one whose key comes first
     * @param second key of the other
     * @param why    what they share
     */
    public record Pair(String first, String second, Set<Why> why) {
        public Pair {
            if (first.compareTo(second) >= 0) {
                throw new IllegalArgumentException(first + " does not come before " + second);
            }
            why = Set.copyOf(why);
        }
    }

    /** Names shorter than this are not held to be near: too many short names differ by a letter. */
    private static final int NEAR_FROM = 6;
    /** A mark that more customers share than this tells little: each is paired with the first of them only. */
    private static final int CROWD = 30;
    private static final int PHONE_FROM = 7;
    private static final int PHONE_END = 8;

    private Doubles() {
    }

    /** What two customers share; nothing when they are not alike. The same whichever comes first. */
    public static Set<Why> alike(Customer a, Customer b) {
        EnumSet<Why> why = EnumSet.noneOf(Why.class);
        CustomerName x = CustomerName.of(a.name());
        CustomerName y = CustomerName.of(b.name());
        if (!x.words().isEmpty() && (x.sorted().equals(y.sorted()) || x.run().equals(y.run()))) {
            why.add(Why.SAME_NAME);
        } else if (near(x.sorted(), y.sorted()) || near(x.run(), y.run())) {
            why.add(Why.NEAR_NAME);
        }
        if (shared(taxIds(a), taxIds(b))) {
            why.add(Why.SAME_TAX_ID);
        }
        if (shared(mails(a), mails(b))) {
            why.add(Why.SAME_MAIL);
        }
        if (shared(phones(a), phones(b))) {
            why.add(Why.SAME_PHONE);
        }
        return why;
    }

    /**
     * Every pair that is alike, the likeliest first. Who is merged into another already is left out.
     *
     * @param customers customers by key
     * @param goOn      asked with the number of customers looked at so far; false stops
     * @throws CancellationException when it was stopped
     */
    public static List<Pair> find(Map<String, Customer> customers, IntPredicate goOn) {
        Map<String, List<String>> byMark = new HashMap<>();
        int looked = 0;
        for (Map.Entry<String, Customer> e : new TreeMap<>(customers).entrySet()) {
            if (!goOn.test(looked++)) {
                throw new CancellationException();
            }
            if (e.getValue().mergedInto() == null) {
                marks(e.getValue()).forEach(m -> byMark.computeIfAbsent(m, k -> new ArrayList<>()).add(e.getKey()));
            }
        }
        Set<List<String>> seen = new HashSet<>();
        List<Pair> found = new ArrayList<>();
        for (List<String> sharing : byMark.values()) {
            int firsts = sharing.size() > CROWD ? 1 : sharing.size();
            for (int i = 0; i < firsts; i++) {
                if (!goOn.test(looked)) {
                    throw new CancellationException();
                }
                for (int j = i + 1; j < sharing.size(); j++) {
                    if (seen.add(List.of(sharing.get(i), sharing.get(j)))) {
                        Set<Why> why = alike(customers.get(sharing.get(i)), customers.get(sharing.get(j)));
                        if (!why.isEmpty()) {
                            found.add(new Pair(sharing.get(i), sharing.get(j), why));
                        }
                    }
                }
            }
        }
        found.sort(Comparator.comparing((Pair p) -> -p.why().size())
                .thenComparing(p -> p.why().stream().min(Comparator.naturalOrder()).orElseThrow())
                .thenComparing(Pair::first).thenComparing(Pair::second));
        return found;
    }

    /** Customers who are alike share at least one of these. */
    private static Set<String> marks(Customer c) {
        Set<String> marks = new LinkedHashSet<>();
        CustomerName name = CustomerName.of(c.name());
        for (String text : name.words().isEmpty() ? List.<String>of() : List.of(name.sorted(), name.run())) {
            String kind = text.equals(name.run()) ? "r" : "s";
            marks.add(kind + text);
            // Two texts that differ by one letter have one in common with at most one letter taken out.
            for (int i = 0; text.length() >= NEAR_FROM - 1 && i < text.length(); i++) {
                marks.add(kind + text.substring(0, i) + text.substring(i + 1));
            }
        }
        if (name.words().size() == 1) {
            // Of a single word both texts are the same; of several words written as one they are not.
            new ArrayList<>(marks).forEach(m -> marks.add("s" + m.substring(1)));
        }
        taxIds(c).forEach(t -> marks.add("t" + t));
        mails(c).forEach(m -> marks.add("m" + m));
        phones(c).forEach(p -> marks.add("p" + p));
        return marks;
    }

    private static boolean shared(Set<String> a, Set<String> b) {
        return a.stream().anyMatch(b::contains);
    }

    private static Set<String> taxIds(Customer c) {
        String id = c.taxId() == null ? "" : c.taxId().replaceAll("[^\\p{L}\\p{N}]+", "").toUpperCase(Locale.ROOT);
        return id.length() < PHONE_FROM - 2 ? Set.of() : Set.of(id);
    }

    private static Set<String> mails(Customer c) {
        Set<String> all = new HashSet<>();
        all.add(c.mail() == null ? "" : c.mail());
        c.contacts().forEach(k -> all.add(k.mail()));
        Set<String> mails = new HashSet<>();
        all.stream().map(m -> m.strip().toLowerCase(Locale.ROOT)).filter(m -> m.contains("@")).forEach(mails::add);
        return mails;
    }

    /** The last digits, since the same number is written with and without its country and area. */
    private static Set<String> phones(Customer c) {
        Set<String> all = new HashSet<>();
        all.add(c.phone() == null ? "" : c.phone());
        c.contacts().forEach(k -> all.add(k.phone()));
        Set<String> phones = new HashSet<>();
        all.stream().map(p -> p.replaceAll("\\D+", "")).filter(p -> p.length() >= PHONE_FROM)
                .map(p -> p.substring(Math.max(0, p.length() - PHONE_END))).forEach(phones::add);
        return phones;
    }

    /** Whether one letter put in, taken out or changed, or two neighbours swapped, makes one of the other. */
    static boolean near(String a, String b) {
        if (a.length() > b.length()) {
            return near(b, a);
        }
        if (a.length() < NEAR_FROM || b.length() - a.length() > 1 || a.equals(b)) {
            return false;
        }
        int same = 0;
        while (same < a.length() && a.charAt(same) == b.charAt(same)) {
            same++;
        }
        if (b.length() > a.length()) {
            return a.substring(same).equals(b.substring(same + 1));
        }
        boolean changed = a.substring(same + 1).equals(b.substring(same + 1));
        boolean swapped = same + 1 < a.length() && a.charAt(same) == b.charAt(same + 1) && a.charAt(same + 1) == b.charAt(same)
                && a.substring(same + 2).equals(b.substring(same + 2));
        return changed || swapped;
    }
}
