package org.copperbook.jobs.check;

import com.fasterxml.jackson.core.type.TypeReference;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.limits.DefaultLimits;
import org.copperbook.jobs.limits.LimitProfile;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Instruments;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.shop.Workshop;

/** The test shop with its instruments and people, and jobs put together from short JSON. */
final class Bench {

    static final PartJson JSON = new PartJson();

    private Bench() {
    }

    static Shop shop() {
        Map<String, Person> people = new LinkedHashMap<>();
        try {
            List<Person> list = JSON.mapper().readValue(text("/real-input/shop/people.json"),
                    new TypeReference<List<Person>>() { });
            list.forEach(p -> people.put(p.key(), p));
            return new Shop((Workshop) JSON.read(PartKey.of(PartKind.WORKSHOP), text("/real-input/shop/workshop.json")),
                    (Instruments) JSON.read(PartKey.of(PartKind.INSTRUMENTS),
                            text("/real-input/shop/instruments.json")),
                    new WireStock(1, null, null), DefaultLimits.load(JSON), people);
        } catch (IOException | BadRecordException e) {
            throw new IllegalStateException(e);
        }
    }

    static Shop shop(LimitProfile limits) {
        Shop s = shop();
        return new Shop(s.workshop(), s.instruments(), s.stock(), limits, s.people());
    }

    static Shop withCopperConstant(double k) {
        Shop s = shop();
        Workshop w = s.workshop();
        return new Shop(new Workshop(w.schema(), w.name(), w.address(), w.currency(), w.units(), w.referenceCelsius(), k,
                w.temperatureU(), w.numberSeries(), w.demo(),
                w.keepNamesMonths(), w.more()), s.instruments(), s.stock(), s.limits(),
                s.people());
    }

    static Shop withInstrument(Shop s, String instrument) {
        try {
            List<Instrument> all = new ArrayList<>(s.instruments().instruments());
            all.add(JSON.mapper().readValue(instrument.replace('\'', '"'), Instrument.class));
            return new Shop(s.workshop(), new Instruments(1, all, null), s.stock(), s.limits(), s.people());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The 60 kW set of the army manual, booked in, repaired and released. */
    static Job realInput() {
        try (InputStream in = Bench.class.getResourceAsStream("/real-input/60kw-brushless-set.json")) {
            return new JobFile(JSON).read(in);
        } catch (IOException | BadRecordException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A job of some parts: key, JSON with single quotes, key, JSON ... */
    static Job job(String... keysAndParts) {
        Job job = new Job("test", "2026-0001", Map.of());
        for (int i = 0; i < keysAndParts.length; i += 2) {
            job = with(job, keysAndParts[i], keysAndParts[i + 1]);
        }
        return job;
    }

    static Job with(Job job, String key, String part) {
        try {
            PartKey k = PartKey.parse(key);
            return job.with(k, JSON.read(k, part.replace('\'', '"')));
        } catch (BadRecordException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A reading as JSON: quantity, winding, kind of place, mark, observed, temperature, instrument, state, more fields. */
    static String reading(String id, String quantity, String winding, String kind, String mark, String observed,
            String celsius, String instrument, String state, String more) {
        String seen = observed.matches("[A-Z_]+") ? "{'kind':'" + observed + "'}"
                : "{'kind':'VALUE','value':" + observed + "}";
        return "{'id':'" + id + "','quantity':'" + quantity + "','place':{'winding':'" + winding + "','kind':'" + kind
                + "','mark':'" + mark + "'},'observed':" + seen
                + (celsius.isEmpty() ? "" : ",'windingCelsius':" + celsius + ",'temperatureU':0.5")
                + (instrument.isEmpty() ? "" : ",'instrument':'" + instrument + "'") + ",'state':'" + state + "'"
                + ",'at':'2026-03-03T09:00:00Z'" + (more.isEmpty() ? "" : "," + more) + "}";
    }

    static String inspection(String... readings) {
        return "{'schema':1,'readings':[" + String.join(",", readings) + "]}";
    }

    static Verdict verdict(Job job, Shop shop, String id) {
        List<Verdict> all = JobChecks.verdicts(job, shop);
        return all.stream().filter(v -> v.id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError("no verdict " + id + " among "
                        + all.stream().map(Verdict::id).toList()));
    }

    static Outcome outcome(Job job, Shop shop, String id) {
        return verdict(job, shop, id).outcome();
    }

    private static String text(String resource) throws IOException {
        try (InputStream in = Bench.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
