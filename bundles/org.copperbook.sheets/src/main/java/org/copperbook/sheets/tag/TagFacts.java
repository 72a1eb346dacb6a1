package org.copperbook.sheets.tag;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.check.Stage;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.JobRecordWorkbook;
import org.copperbook.sheets.page.Words;

/** What tag and card say of a job, in words; "" where nothing is on record. */
final class TagFacts {

    private final Job job;
    private final Shop shop;
    private final Locale locale;
    private final ZoneId zone;
    private final Words words;

    TagFacts(Job job, Shop shop, Locale locale, ZoneId zone) {
        this.job = job;
        this.shop = shop;
        this.locale = locale;
        this.zone = zone;
        this.words = new Words(JobRecordWorkbook.class, "record", locale);
    }

    String say(String key, Object... filled) {
        return words.get(key, filled);
    }

    String number() {
        return job.number();
    }

    boolean isVoid() {
        return job.standing().map(Standing::isVoid).orElse(false);
    }

    /** Where the job stands; with the reason when its number is void. */
    String stage() {
        return Stage.of(job).words();
    }

    String shopName() {
        String name = shop.workshop().name();
        return Boolean.TRUE.equals(shop.workshop().demo()) ? joined(", ", name, say("tag.demo")) : plain(name);
    }

    Booking booking() {
        return job.booking().orElseThrow(() -> new IllegalArgumentException("job " + job.number() + " is not booked in"));
    }

    String machine() {
        return joined(", ", booking().machine(), plate());
    }

    String kind() {
        return words.of(booking().machineKind());
    }

    String priority() {
        return words.of(booking().priority());
    }

    String plate() {
        return job.nameplate().map(p -> joined(" ", p.maker(), p.type(), serial())).orElse("");
    }

    String serial() {
        return job.nameplate().map(Nameplate::serial).filter(s -> !s.isBlank()).map(s -> say("tag.serial", s)).orElse("");
    }

    String hazards() {
        Booking b = booking();
        return joined("; ", b.hazards().stream().map(words::of).collect(Collectors.joining(", ")), b.hazardNote());
    }

    String spendLimit() {
        Booking b = booking();
        return b.spendLimit() == null ? "" : say("tag.money", shop.workshop().currency(), b.spendLimit().toPlainString());
    }

    String mass() {
        Double mass = booking().liftingMassKg();
        return mass == null ? "" : say("tag.kilogram", mass);
    }

    String bookedIn() {
        Booking b = booking();
        return joined(", ", moment(b.bookedAt()), b.bookedBy() == null ? "" : shop.nameOf(b.bookedBy()));
    }

    String day(LocalDate day) {
        return day == null ? "" : DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale).format(day);
    }

    /** Loose parts of a kind: those that came, those that are missing, those nobody looked for. */
    String parts(Boolean received) {
        return booking().parts().stream().filter(p -> Objects.equals(p.received(), received))
                .map(p -> p.note() == null || p.note().isBlank() ? plain(p.name()) : say("tag.noted", plain(p.name()), p.note()))
                .filter(s -> !s.isBlank()).collect(Collectors.joining(", "));
    }

    private String moment(Instant at) {
        return at == null ? "" : DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(locale).format(at.atZone(zone));
    }

    static String plain(String text) {
        return text == null ? "" : text.strip();
    }

    static String joined(String mark, String... texts) {
        return Stream.of(texts).map(TagFacts::plain).filter(s -> !s.isEmpty()).collect(Collectors.joining(mark));
    }
}
