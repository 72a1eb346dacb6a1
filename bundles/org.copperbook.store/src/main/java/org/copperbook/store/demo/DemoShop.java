package org.copperbook.store.demo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.customer.CustomerFile;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.store.Intake;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.StoreText;
import org.copperbook.store.stock.StockFile;
import org.copperbook.store.stock.StockMove;

/**
 * The invented demo workshop in a folder: {@code shop/people.json} (a list of people), {@code shop/<part>.json} (a part
 * of the shop each), {@code shop/stock.json} ({@link StockFile}), {@code shop/customers.json}
 * ({@link CustomerFile}), {@code photos/} (taken as they are) and {@code jobs/*.json} (job files).
 *
 * @param folder where it lies
 */
public record DemoShop(Path folder) {

    /** Under whose key the demo is taken in. */
    public static final String WHO = "demo";

    private static final PartJson JSON = new PartJson();
    private static final String PEOPLE = "people";

    /**
     * Fills an empty store with the demo; one that holds jobs already is left alone.
     *
     * @return the jobs taken in, empty when the store held some
     * @throws BadRecordException when a file does not hold what it should; the store is then as it was
     * @throws IOException        when a file cannot be read; the store is then as it was
     */
    public List<JobHandle> load(JobStore store) throws IOException, BadRecordException {
        if (store.register(RegisterQuery.first(0)).total() > 0) {
            return List.of();
        }
        return store.takeIn(read(), WHO, StoreText.of("demo.why"), NumberTaken.REFUSE);
    }

    /** Everything in the folder, without touching a store. */
    public Intake read() throws IOException, BadRecordException {
        Map<PartKey, Part> parts = new TreeMap<>();
        List<Person> people = new ArrayList<>();
        List<StockMove> moves = new ArrayList<>();
        for (Path file : files("shop", ".json")) {
            String name = file.getFileName().toString();
            String word = name.substring(0, name.length() - ".json".length());
            if (word.equals(PEOPLE)) {
                people.addAll(people(file));
            } else if (name.equals(StockFile.NAME)) {
                StockFile stock = StockFile.read(JSON, Files.readAllBytes(file));
                parts.putAll(stock.before());
                moves.addAll(stock.moves());
            } else if (name.equals(CustomerFile.NAME)) {
                parts.putAll(customers(file));
            } else {
                PartKey key = key(name, word);
                parts.put(key, part(file, key));
            }
        }
        Part workshop = parts.get(PartKey.of(PartKind.WORKSHOP));
        if (!(workshop instanceof Workshop w) || !Boolean.TRUE.equals(w.demo())) {
            throw new BadRecordException("workshop.json", "demo", StoreText.of("demo.unmarked", folder));
        }
        List<byte[]> photos = new ArrayList<>();
        for (Path file : files("photos", "")) {
            photos.add(Files.readAllBytes(file));
        }
        List<Job> jobs = new ArrayList<>();
        for (Path file : files("jobs", ".json")) {
            jobs.add(job(file));
        }
        return new Intake(parts, people, photos, jobs, moves);
    }

    private List<Path> files(String name, String end) throws IOException {
        Path inside = folder.resolve(name);
        if (!Files.isDirectory(inside)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(inside)) {
            return all.filter(Files::isRegularFile).filter(f -> f.getFileName().toString().endsWith(end)).sorted()
                    .toList();
        }
    }

    private static PartKey key(String file, String word) throws BadRecordException {
        try {
            PartKey key = PartKey.parse(word);
            if (key.kind().ofShop()) {
                return key;
            }
            throw new BadRecordException(file, "", StoreText.of("demo.notShop", word));
        } catch (IllegalArgumentException e) {
            throw new BadRecordException(file, "", e.getMessage());
        }
    }

    private static Map<PartKey, Part> customers(Path file) throws IOException, BadRecordException {
        try {
            return CustomerFile.read(JSON, Files.readAllBytes(file));
        } catch (BadRecordException e) {
            throw in(file, e);
        }
    }

    private static Part part(Path file, PartKey key) throws IOException, BadRecordException {
        try {
            return JSON.read(key, Files.readString(file, StandardCharsets.UTF_8));
        } catch (BadRecordException e) {
            throw in(file, e);
        }
    }

    private static List<Person> people(Path file) throws IOException, BadRecordException {
        try {
            JsonNode tree = JSON.mapper().readTree(Files.readAllBytes(file));
            return JSON.mapper().readerFor(new TypeReference<List<Person>>() { }).readValue(tree);
        } catch (JsonProcessingException e) {
            throw new BadRecordException(file.getFileName().toString(), "", e.getOriginalMessage());
        }
    }

    private static Job job(Path file) throws IOException, BadRecordException {
        try (InputStream in = Files.newInputStream(file)) {
            return new JobFile(JSON).read(in);
        } catch (BadRecordException e) {
            throw in(file, e);
        }
    }

    private static BadRecordException in(Path file, BadRecordException e) {
        return new BadRecordException(file.getFileName().toString(), e.place(), e.problem());
    }
}
