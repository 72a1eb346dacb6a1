package org.copperbook.sheets.tag;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.JobCode;
import org.copperbook.jobs.booking.ProvisionalTag;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.picture.Scene;

/**
 * The printed tag and job card of a job that is booked in, each with a QR code of the job number. One unit of a scene is a
 * ninety-sixth of an inch on paper.
 */
public final class JobTag {

    /** Units of a scene to an inch of paper. */
    public static final double UNITS_PER_INCH = 96;

    private static final double MM = UNITS_PER_INCH / 25.4;
    private static final double TAG_WIDTH = 100 * MM;
    private static final double TAG_HEIGHT = 50 * MM;
    private static final double CARD_WIDTH = 210 * MM;
    private static final double CARD_HEIGHT = 297 * MM;
    private static final double CARD_MARGIN = 12 * MM;
    private static final double CARD_CODE = 40 * MM;
    private static final double CARD_NAMES = 46 * MM;
    private static final double CARD_SIZE = 15;
    private static final int NOTE_LINES = 8;

    private final TagFacts facts;
    private final String code;
    private final boolean provisional;

    /**
     * @param job  a job that has a number and a booking
     * @param zone time zone of the times on the card
     * @throws IllegalArgumentException when it has none
     */
    public JobTag(Job job, Shop shop, Locale locale, ZoneId zone) {
        this(new TagFacts(job, shop, locale, zone), JobCode.of(job.number()), false);
    }

    private JobTag(TagFacts facts, String code, boolean provisional) {
        this.facts = facts;
        this.code = code;
        this.provisional = provisional;
        facts.booking();
    }

    /**
     * Tag and card of a job that has a booking and no number yet; its code still leads to the job when it has one.
     *
     * @throws IllegalArgumentException when it has no booking
     */
    public static JobTag provisional(ProvisionalTag tag, Job job, Shop shop, Locale locale, ZoneId zone) {
        return new JobTag(new TagFacts(new Job(job.id(), tag.name(), job.parts()), shop, locale, zone),
                JobCode.of(tag.inCode()), true);
    }

    /** The tag for a label of 100 by 50 mm. */
    public Scene tag() {
        QrCode code = QrCode.of(this.code);
        int module = code.moduleFor(TAG_HEIGHT);
        int width = code.size(module);
        TagPen pen = new TagPen(width, TAG_WIDTH - 8, 8);
        pen.add(code.marks(0, (int) ((TAG_HEIGHT - width) / 2), module));
        pen.fitted(facts.number(), 34, 12);
        if (provisional) {
            pen.text(facts.say("tag.provisional"), 14, 2);
        }
        if (facts.isVoid()) {
            pen.text(facts.stage(), 14, 3);
        }
        pen.text(TagFacts.plain(facts.booking().customer()), 14, 2);
        pen.text(facts.machine(), 13, 2);
        pen.text(promised(facts.booking().promised()), 13, 1);
        if (!facts.hazards().isEmpty()) {
            hazards(pen);
        }
        return new Scene(facts.say("tag.title", facts.number()), TAG_WIDTH, TAG_HEIGHT, pen.marks());
    }

    private void hazards(TagPen pen) {
        double room = TAG_HEIGHT - 8 - pen.y();
        pen.down(3);
        pen.text(facts.say("tag.hazards", facts.hazards()), 13, Math.max(1, (int) ((room - 3) / (13 * 1.32))));
    }

    private String promised(LocalDate day) {
        return day == null ? "" : facts.say("tag.promised", facts.day(day));
    }

    /** The job card, A4 upright. */
    public Scene card() {
        double right = CARD_WIDTH - CARD_MARGIN;
        QrCode code = QrCode.of(this.code);
        int module = code.moduleFor(CARD_CODE);
        int width = code.size(module);
        TagPen pen = new TagPen(CARD_MARGIN, right - width - 10, CARD_MARGIN);
        pen.add(code.marks((int) (right - width), (int) CARD_MARGIN, module));
        pen.text(facts.shopName(), CARD_SIZE, 2);
        pen.text(facts.say("tag.card"), CARD_SIZE, 1);
        pen.fitted(facts.number(), 56, 16);
        if (provisional) {
            pen.text(facts.say("tag.provisional"), 22, 2);
        }
        pen.text(facts.stage(), facts.isVoid() ? 22 : CARD_SIZE, 3);
        pen.to(Math.max(pen.y(), CARD_MARGIN + width) + 8);
        pen.between(CARD_MARGIN, right);
        if (!facts.hazards().isEmpty()) {
            framed(pen, right);
        }
        pen.rule();
        pen.down(8);
        pairs(pen);
        notes(pen);
        return new Scene(facts.say("tag.cardTitle", facts.number()), CARD_WIDTH, CARD_HEIGHT, pen.marks());
    }

    private void framed(TagPen pen, double right) {
        double top = pen.y();
        pen.between(CARD_MARGIN + 10, right - 10);
        pen.down(6);
        pen.text(facts.say("tag.hazards", facts.hazards()), 20, 4);
        pen.down(6);
        pen.frame(CARD_MARGIN, top, right - CARD_MARGIN, pen.y() - top, 3);
        pen.between(CARD_MARGIN, right);
        pen.down(10);
    }

    private void pairs(TagPen pen) {
        var b = facts.booking();
        List<String> rows = new ArrayList<>(List.of("booking.customer", TagFacts.plain(b.customer()),
                "booking.order", TagFacts.plain(b.orderNo()), "booking.machine", TagFacts.plain(b.machine()),
                "booking.kind", facts.kind(), "tag.plate", facts.plate(), "booking.promised", facts.day(b.promised()),
                "booking.priority", facts.priority(), "tag.spendLimit", facts.spendLimit(), "booking.mass", facts.mass(),
                "booking.at", facts.bookedIn(), "booking.arrived", TagFacts.plain(b.arrivedBy()),
                "booking.tag", TagFacts.plain(b.tag()), "booking.earlier", TagFacts.plain(b.earlierJob()),
                "booking.fault", TagFacts.plain(b.reportedFault()), "booking.damage", TagFacts.plain(b.transportDamage()),
                "tag.came", facts.parts(true), "tag.missing", facts.parts(false), "tag.notLooked", facts.parts(null)));
        for (int i = 0; i < rows.size(); i += 2) {
            pen.pair(facts.say(rows.get(i)), rows.get(i + 1), CARD_NAMES, CARD_SIZE, 5);
        }
    }

    /** Lines to write on, as many as the paper has room for. */
    private void notes(TagPen pen) {
        pen.down(8);
        pen.text(facts.say("tag.notes"), CARD_SIZE, 1);
        for (int i = 0; i < NOTE_LINES && pen.y() + 34 < CARD_HEIGHT - CARD_MARGIN; i++) {
            pen.down(34);
            pen.rule();
        }
    }
}
