package org.copperbook.jobs.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.ReceivedPart;
import org.copperbook.jobs.booking.Standing.How;
import org.copperbook.jobs.booking.Standing.WaitingFor;
import org.copperbook.jobs.handback.HandBack;

/** What came is what goes back: the differences, what is still out, and what keeps a job from being closed. */
public final class HandingBack {

    /** Something that the job waits for. */
    public record Open(WaitingFor waitingFor, String words) {
    }

    private final Job job;
    private final HandBack record;

    public HandingBack(Job job) {
        this.job = job;
        this.record = job.part(PartKind.HAND_BACK, HandBack.class)
                .orElseGet(() -> new HandBack(HandBack.SCHEMA, null, null, null, null, null, null, null, null, null));
    }

    /** What is to go back: the machine under its name, then the loose parts that came. */
    public static List<HandBack.Item> expected(Job job) {
        List<HandBack.Item> items = new ArrayList<>();
        String machine = job.booking().map(Booking::machine).filter(m -> !m.isBlank())
                .orElseGet(() -> Phrases.say("handback.machine"));
        items.add(new HandBack.Item(machine, true, null, null, null));
        job.booking().stream().flatMap(b -> b.parts().stream()).filter(p -> Boolean.TRUE.equals(p.received()))
                .map(ReceivedPart::name).filter(n -> n != null && !n.isBlank())
                .forEach(n -> items.add(new HandBack.Item(n.strip(), null, null, null, null)));
        return items;
    }

    private static boolean isSame(HandBack.Item a, HandBack.Item b) {
        boolean machine = Boolean.TRUE.equals(a.machine());
        return machine == Boolean.TRUE.equals(b.machine()) && (machine || key(a).equals(key(b)));
    }

    private static String key(HandBack.Item item) {
        return item.name() == null ? "" : item.name().strip().toLowerCase(Locale.ROOT);
    }

    /**
     * Which row stands for which item that is to go back: each row for one, so that of two things of one name both have to be there.
     * Rows that go back are taken first.
     *
     * @return for each item of the list expected, the place of its row, or -1
     */
    public static int[] rowsOf(List<HandBack.Item> expected, List<HandBack.Item> rows) {
        int[] places = new int[expected.size()];
        Arrays.fill(places, -1);
        boolean[] taken = new boolean[rows.size()];
        for (boolean goes : new boolean[] {true, false}) {
            for (int e = 0; e < places.length; e++) {
                for (int r = 0; r < taken.length && places[e] < 0; r++) {
                    if (!taken[r] && Boolean.TRUE.equals(rows.get(r).back()) == goes && isSame(rows.get(r), expected.get(e))) {
                        places[e] = r;
                        taken[r] = true;
                    }
                }
            }
        }
        return places;
    }

    /** Where what goes back is not what came, in words; empty when they agree. */
    public List<String> differences() {
        List<String> words = new ArrayList<>();
        List<HandBack.Item> expected = expected(job);
        List<HandBack.Item> going = new ArrayList<>(record.items().stream().filter(i -> Boolean.TRUE.equals(i.back())).toList());
        int[] places = rowsOf(expected, going);
        for (int e = 0; e < places.length; e++) {
            if (places[e] < 0) {
                words.add(Phrases.say("handback.stays", expected.get(e).name()));
            } else {
                going.set(places[e], null);
            }
        }
        going.stream().filter(Objects::nonNull)
                .forEach(i -> words.add(Phrases.say("handback.not-received", i.name() == null ? "" : i.name())));
        return words;
    }

    /** What is out or has not come, as reasons for which the job may wait. */
    public List<Open> open() {
        List<Open> all = new ArrayList<>();
        record.outside().stream().filter(HandBack.OutsideWork::away).forEach(o -> all.add(new Open(
                WaitingFor.OUTSIDE_WORK, joined(o.what(), o.firm(), o.orderNo(), expected(o.expected())))));
        record.deliveries().stream().filter(d -> d.missing().signum() > 0 && (d.what() != null || d.ordered() != null))
                .forEach(d -> all.add(new Open(WaitingFor.PARTS, joined(Phrases.say("handback.missing",
                        d.missing().stripTrailingZeros().toPlainString(), d.what() == null ? "" : d.what()),
                        d.supplier(), d.orderNo()))));
        return all;
    }

    private static String expected(LocalDate day) {
        return day == null ? "" : Phrases.say("handback.expected", day.toString());
    }

    private static String joined(String... texts) {
        return Stream.of(texts).map(t -> t == null ? "" : t.strip()).filter(t -> !t.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** What has to be written down before the job may end so; empty when nothing is missing. */
    public Optional<String> refused(How how) {
        return refused(how, null);
    }

    /**
     * The same with a reason given on the way.
     *
     * @param reason why the job ends so, which also says why a machine goes back that was not released; may be null
     */
    public Optional<String> refused(How how, String reason) {
        if (!Set.of(How.COLLECTED, How.DECLINED, How.SCRAPPED).contains(how)) {
            return Optional.empty();
        }
        List<String> out = record.outside().stream().filter(HandBack.OutsideWork::away)
                .map(o -> joined(o.what(), o.firm())).toList();
        if (!out.isEmpty()) {
            return Optional.of(Phrases.say("handback.still-out", String.join("; ", out)));
        }
        if (how == How.COLLECTED && !released() && !said(reason) && !said(record.unreleased())) {
            return Optional.of(Phrases.say("handback.not-released", Stage.of(job).words()));
        }
        return how == How.SCRAPPED ? withoutConsent() : unexplained();
    }

    /** Why a machine that was not released goes back as done, as far as anybody said; empty when it was released. */
    public Optional<String> unreleased() {
        return released() || !said(record.unreleased()) ? Optional.empty() : Optional.of(record.unreleased().strip());
    }

    private boolean released() {
        return Stage.of(job).at() == Stage.At.RELEASED;
    }

    private Optional<String> withoutConsent() {
        HandBack.Scrapping s = record.scrapping();
        boolean consent = s != null && said(s.consentBy()) && said(s.how()) && s.at() != null && said(s.copper());
        return consent ? Optional.empty() : Optional.of(Phrases.say("handback.no-consent"));
    }

    private Optional<String> unexplained() {
        List<String> differences = differences();
        return differences.isEmpty() || said(record.difference()) ? Optional.empty()
                : Optional.of(Phrases.say("handback.unexplained", String.join(" ", differences)));
    }

    private static boolean said(String text) {
        return text != null && !text.isBlank();
    }
}
