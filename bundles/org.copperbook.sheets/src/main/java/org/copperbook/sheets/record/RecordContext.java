package org.copperbook.sheets.record;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.page.Words;

/**
 * What all sheets of one job record share.
 *
 * @param zone time zone of every time in the workbook
 * @param seal fingerprint of the technical record as written
 */
public record RecordContext(Job job, VerdictIndex verdicts, List<HoldPointState> holdPoints, Shop shop, ZoneId zone,
        Words words, Seal seal) {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    public boolean demo() {
        return Boolean.TRUE.equals(shop.workshop().demo());
    }

    public String title() {
        return words.get("title", job.number().isEmpty() ? words.get("title.unnumbered") : job.number());
    }

    String say(String key, Object... filled) {
        return words.get(key, filled);
    }

    /** A moment in the record's time zone, "" when not stated. */
    String time(Instant at) {
        return at == null ? "" : MINUTE.format(at.atZone(zone));
    }

    /** The hour and minute of a moment. */
    String hour(Instant at) {
        return at == null ? "" : time(at).substring(11);
    }

    /** A person's name, "" when not stated. */
    String name(String key) {
        return key == null ? "" : shop.nameOf(key);
    }

    /** Who and when, in two lines. */
    String whoAndWhen(String key, Instant at) {
        return joined("\n", time(at), name(key));
    }

    /** Id and name of an instrument. */
    String instrument(String id) {
        return id == null ? "" : shop.instruments().find(id).map(i -> id + " " + i.name()).orElse(id);
    }

    String yesNo(Boolean answer) {
        return answer == null ? "" : say(answer ? "yes" : "no");
    }

    /** Those texts that say something, with a mark between. */
    static String joined(String mark, String... texts) {
        StringBuilder all = new StringBuilder();
        for (String text : texts) {
            if (text != null && !text.isBlank()) {
                all.append(all.length() == 0 ? "" : mark).append(text);
            }
        }
        return all.toString();
    }
}
