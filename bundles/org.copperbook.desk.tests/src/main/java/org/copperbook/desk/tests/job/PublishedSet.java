package org.copperbook.desk.tests.job;

import com.fasterxml.jackson.core.type.TypeReference;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Instruments;
import org.copperbook.jobs.shop.Person;
import org.copperbook.store.Intake;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;

/**
 * The 60 kW brushless set of the checks' tests: winding-resistance limits of US Army TM 9-6115-645-24, table 4-3, at
 * 25 degrees Celsius; readings and everything else invented.
 */
final class PublishedSet {

    private static final String FOLDER = "/real-input/";
    private static final PartKey INSTRUMENTS = PartKey.of(PartKind.INSTRUMENTS);

    private final PartJson json = new PartJson();
    private final Desktop desktop;
    private final Job whole;

    PublishedSet(Desktop desktop) {
        this.desktop = desktop;
        try (InputStream in = open("60kw-brushless-set.json")) {
            whole = new JobFile(json).read(in);
        } catch (IOException | BadRecordException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The set as its file holds it. */
    Job whole() {
        return whole;
    }

    /** Puts the people and instruments into the shop that the set names. */
    void shop() {
        take(List.of());
    }

    /** Takes the set in with some of its parts only, and with the people and instruments it names. */
    String takeIn(PartKind... kinds) {
        Map<PartKey, Part> parts = new TreeMap<>(whole.parts());
        parts.keySet().removeIf(key -> !Set.of(kinds).contains(key.kind()));
        return take(List.of(new Job(UUID.randomUUID().toString(), "", parts))).get(0).number();
    }

    private List<JobHandle> take(List<Job> jobs) {
        JobStore store = desktop.session().store();
        List<Instrument> instruments = new ArrayList<>(desktop.session().shop().instruments().instruments());
        Instruments own = own();
        own.instruments().stream().filter(i -> instruments.stream().noneMatch(j -> j.id().equals(i.id())))
                .forEach(instruments::add);
        var taken = store.takeIn(new Intake(Map.of(INSTRUMENTS, new Instruments(Instruments.SCHEMA, instruments, null)),
                people(), List.of(), jobs), "foreman-1", "taken in by a test", NumberTaken.GIVE_NEW_NUMBER);
        desktop.until("the shop knows the people and instruments of the set",
                () -> desktop.session().shop().people().containsKey("checker-1")
                        && desktop.session().shop().instruments().instruments().stream()
                                .anyMatch(i -> i.id().equals("bridge-1")));
        return taken;
    }

    private List<Person> people() {
        try (InputStream in = open("shop/people.json")) {
            return json.mapper().readValue(in, new TypeReference<List<Person>>() { });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Instruments own() {
        try (InputStream in = open("shop/instruments.json")) {
            return json.mapper().readValue(in, Instruments.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String name) {
        InputStream in = PublishedSet.class.getResourceAsStream(FOLDER + name);
        if (in == null) {
            throw new IllegalStateException(FOLDER + name + " is not in the bundle");
        }
        return in;
    }
}
