package org.copperbook.inspection;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.inspection.before.HereBefore;
import org.copperbook.inspection.customer.ContactEntry;
import org.copperbook.inspection.customer.RegisterCustomers;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Hazard;
import org.copperbook.jobs.booking.MachineKind;
import org.eclipse.swt.widgets.Composite;

/** Booking in: who brought which machine, with what, wanting what. */
public final class BookingPage extends PartPage {

    private static final List<String> LOOSE_PARTS =
            List.of("regulator", "terminalBox", "coupling", "fan", "keys", "guards", "feet");

    private static final String BY = "/bookedBy";

    private HereBefore before;
    private RegisterCustomers customers;
    private Optional<String> who = Optional.empty();

    @Override
    protected Words words() {
        return Words.of(BookingPage.class);
    }

    @Override
    protected void build(Form here) {
        here.section("booking.who")
                .offered("/customer", "booking.customer", "/customerKey", () -> customers.focus())
                .listTakingOff("/contactKey", "/contact", "booking.contact", new ContactEntry(() -> customers.contacts(),
                        this::contactOfKey));
        Composite offers = here.area();
        here.section("booking.arrival")
                .text("/orderNo", "booking.orderNo")
                .text("/arrivedBy", "booking.arrivedBy")
                .moment("/bookedAt", "booking.at")
                .person(BY, "booking.by")
                .text("/tag", "booking.tag");
        // Behind the fields: whoever goes on typing with Tab must not press it with a blank.
        Composite keeping = here.area();
        who = site().who();
        customers = new RegisterCustomers(offers, keeping, site(), words(), form()::reveal);
        before = new HereBefore(here.area("before.title"), site(), words(),
                () -> form().reveal("/reportedFault"));
        here.section("booking.machineTitle")
                .choice("/machineKind", "booking.machineKind", MachineKind.class)
                .text("/machine", "booking.machine")
                .longText("/reportedFault", "booking.fault")
                .text("/transportDamage", "booking.damage")
                .text("/earlierJob", "booking.earlierJob");
        here.section("booking.promise")
                .date("/promised", "booking.promised")
                .choice("/priority", "booking.priority", Booking.Priority.class)
                .price("/spendLimit", "booking.spendLimit");
        here.section("booking.hazardTitle")
                .checks("/hazards", "booking.hazards", Hazard.class)
                .text("/hazardNote", "booking.hazardNote")
                .number("/liftingMassKg", "booking.lifting", FieldUnit.KILOGRAM);
        here.words("booking.liftingCaution");
        here.grid("booking.parts", "/parts", columns -> columns
                .text("/name", "booking.part")
                .answer("/received", "booking.received", "booking.came", "booking.missing")
                .text("/note", "booking.note"))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.photos("booking.photos", "/photos");
    }

    @Override
    protected void changed() {
        customers.follow();
        before.follow();
        whoWorks();
    }

    /** Somebody who says who works here after a booking was begun has booked it in, unless it names somebody or is saved. */
    private void whoWorks() {
        Optional<String> now = site().who();
        boolean said = !now.equals(who);
        who = now;
        if (!said || now.isEmpty() || !document().number().isEmpty() || site().blocked().isPresent()
                || !document().value(key(), BY).isMissingNode() || document().typed(key(), BY).isPresent()) {
            return;
        }
        if (document().part(key()).isEmpty()) {
            document().beginWith(key(), beginning());
            form().refresh();
        } else {
            document().change(key(), BY, tree -> tree.put("bookedBy", now.get()));
        }
    }

    /** The name of a contact whom an older booking names by a key. */
    private String contactOfKey() {
        return document().part(key(), Booking.class).filter(b -> b.contactKey() != null)
                .map(b -> b.contactName(site().shop()::nameOf)).orElse("");
    }

    @Override
    protected ObjectNode beginning() {
        ObjectNode tree = super.beginning();
        if (!tree.has("bookedAt")) {
            tree.put("bookedAt", Instant.now().truncatedTo(ChronoUnit.MINUTES).toString());
        }
        if (!tree.has("bookedBy")) {
            site().who().ifPresent(w -> tree.put("bookedBy", w));
        }
        if (!tree.has("parts")) {
            ArrayNode parts = tree.putArray("parts");
            LOOSE_PARTS.forEach(name -> parts.addObject().put("name", words().text("booking.part." + name)));
        }
        return tree;
    }
}
