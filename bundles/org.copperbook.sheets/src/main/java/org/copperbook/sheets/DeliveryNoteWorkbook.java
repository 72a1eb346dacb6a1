package org.copperbook.sheets;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.check.HandingBack;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Letterhead;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Table;
import org.copperbook.sheets.page.Words;

/**
 * The delivery note of a job as a workbook: for whom, which machine, what goes back and what does not, and room to sign.
 * The language is the one of the page, else the customer's (English or German; English for any other).
 */
public final class DeliveryNoteWorkbook {

    private static final int[] WIDTHS = {34, 16, 40};
    private static final int TO_SIGN = 6;
    /** More items than these may go on to another page, and the headings with them. */
    private static final int ONE_PAGE = 20;

    /**
     * Writes the note over the target, as a whole or not at all.
     *
     * @throws WorkbookNotWrittenException when the target cannot be replaced
     */
    public void write(Job job, HandBack back, Shop shop, Locale language, Path target) throws WorkbookNotWrittenException {
        Words words = new Words(DeliveryNoteWorkbook.class, "delivery", language);
        String title = words.get("delivery.title", job.number());
        boolean demo = Boolean.TRUE.equals(shop.workshop().demo());
        try (Book book = new Book(new Letterhead(shop.workshop().name(), title, words.raw("page.of"),
                demo ? words.get("demo.short") : ""), title)) {
            SheetPage page = book.portrait(words.get("delivery.sheet"), WIDTHS);
            page.row(Look.STRONG, Entry.text(shop.workshop().name()).over(page.columns()));
            page.paragraph(shop.workshop().address());
            page.gap();
            page.title(title);
            if (demo) {
                page.warning(words.get("demo.long"));
            }
            job.booking().ifPresent(b -> parties(page, words, b, shop));
            page.pair(1, words.get("delivery.serial"), job.nameplate().map(Nameplate::serial).orElse(""));
            page.pair(1, words.get("delivery.day"), Entry.day(back.handedOver()));
            items(page, words, back);
            List<String> differences = new HandingBack(job).differences();
            if (!differences.isEmpty() && back.difference() != null && !back.difference().isBlank()) {
                page.heading(words.get("delivery.difference"));
                page.paragraph(back.difference());
            }
            page.keepTogether(TO_SIGN);
            page.heading(words.get("delivery.received"));
            page.pair(1, words.get("delivery.takenBy"), back.takenBy());
            for (String blank : List.of("delivery.date", "delivery.signature")) {
                page.gap();
                page.row(Look.WRITE_HERE, Entry.text(words.get(blank)).looks(Look.LABEL),
                        Entry.text(" ").over(page.columns() - 1));
            }
            book.evaluate();
            book.writeTo(target);
        }
    }

    /** The record of a job's handing back, if there is one. */
    public static HandBack of(Job job) {
        return job.part(PartKind.HAND_BACK, HandBack.class).orElse(null);
    }

    private static void parties(SheetPage page, Words words, Booking b, Shop shop) {
        page.pair(1, words.get("delivery.customer"), b.customer());
        page.pair(1, words.get("delivery.contact"), b.contactName(shop::nameOf));
        page.pair(1, words.get("delivery.order"), b.orderNo());
        page.pair(1, words.get("delivery.machine"), b.machine());
    }

    private static void items(SheetPage page, Words words, HandBack back) {
        page.heading(words.get("delivery.items"));
        Table table = new Table(page, 1, 1, 1).head(words.get("delivery.what"), words.get("delivery.goes"),
                words.get("delivery.note"));
        if (back.items().size() > ONE_PAGE) {
            page.repeat(1);
        }
        for (HandBack.Item item : back.items()) {
            if (item.back() != null) {
                table.texts(item.name(), words.get(item.back() ? "delivery.yes" : "delivery.no"), item.note());
            }
        }
    }

    /** The language that the page asks for, else the customer's, else English. */
    public static Locale language(HandBack back, Optional<Customer> customer) {
        return Stream.of(back.language(), customer.map(Customer::language).orElse(null))
                .filter(tag -> tag != null && !tag.isBlank()).map(tag -> Locale.forLanguageTag(tag.strip()))
                .filter(l -> !l.getLanguage().isEmpty()).findFirst().orElse(Locale.ENGLISH);
    }

    /** Whether anything is ticked as going back; before that there is no note. */
    public static boolean isReady(HandBack back) {
        return back != null && back.items().stream().anyMatch(i -> Boolean.TRUE.equals(i.back()));
    }
}
