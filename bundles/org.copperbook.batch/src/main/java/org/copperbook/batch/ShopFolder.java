package org.copperbook.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Plausibility;
import org.copperbook.jobs.customer.CustomerFile;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.quote.OwnTemplate;
import org.copperbook.jobs.shop.Person;
import org.copperbook.sheets.template.QuoteTemplate;
import org.copperbook.sheets.template.UnusableTemplate;
import org.copperbook.store.stock.StockFile;

/**
 * The shop's own files in a folder: workshop.json, instruments.json, wire-stock.json, capacities.json, limits.json,
 * labour-rates.json, customers.json, stock.json with items in stock, people.json with a list of people, and quote-template.xlsx
 * that quotes are written into; any of them may be missing.
 */
final class ShopFolder {

    private static final String END = ".json";
    private static final String PEOPLE = "people" + END;
    private static final String TEMPLATE = PartKind.QUOTE_TEMPLATE.word() + ".xlsx";

    private final PartJson json;
    private final Map<PartKey, Part> parts = new TreeMap<>();
    private final List<Person> people = new ArrayList<>();
    private final List<byte[]> kept = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    /** Reads a folder; a bad file is refused in one line. */
    ShopFolder(PartJson json, Path folder) {
        this.json = json;
        if (!Files.isDirectory(folder)) {
            throw new BadUse(BatchText.of("shop.no-folder", folder));
        }
        for (Path file : files(folder)) {
            if (file.getFileName().toString().equals(PEOPLE)) {
                people(file);
            } else if (file.getFileName().toString().equals(StockFile.NAME)) {
                stock(file);
            } else if (file.getFileName().toString().equals(CustomerFile.NAME)) {
                customers(file);
            } else {
                part(file);
            }
        }
        if (Files.exists(folder.resolve(TEMPLATE))) {
            template(folder.resolve(TEMPLATE));
        }
        if (parts.isEmpty() && people.isEmpty()) {
            throw new BadUse(BatchText.of("shop.empty", folder));
        }
    }

    Map<PartKey, Part> parts() {
        return parts;
    }

    /** How many files hold the parts; items of stock stand together in one. */
    long fileCount() {
        return parts.keySet().stream().map(k -> k.kind().many() ? k.kind().word() : k.toString()).distinct().count();
    }

    List<Person> people() {
        return people;
    }

    /** Bytes that the parts name by their hash. */
    List<byte[]> kept() {
        return kept;
    }

    /** What is worth a look, though it was taken in. */
    List<String> notes() {
        return notes;
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(f -> f.getFileName().toString().endsWith(END)).sorted().toList();
        } catch (IOException e) {
            throw new BadUse(BatchText.of("file.unreadable", folder, e.getMessage()));
        }
    }

    private void part(Path file) {
        String name = file.getFileName().toString();
        PartKey key;
        try {
            key = PartKey.parse(name.substring(0, name.length() - END.length()));
        } catch (IllegalArgumentException e) {
            throw new BadUse(BatchText.of("shop.unknown", file));
        }
        if (!key.kind().ofShop() || key.kind() == PartKind.QUOTE_TEMPLATE) {
            throw new BadUse(BatchText.of("shop.unknown", file));
        }
        try {
            Part part = json.read(key, new String(InputFile.read(file), StandardCharsets.UTF_8));
            InputFile.refuse(file, Plausibility.impossible(key, part));
            parts.put(key, part);
        } catch (BadRecordException e) {
            throw InputFile.refused(file, e);
        }
    }

    private void template(Path file) {
        try {
            QuoteTemplate template = QuoteTemplate.of(file);
            List<String> others = template.check();
            if (!others.isEmpty()) {
                notes.add(BatchText.of("shop.template-names", file, String.join(", ", others)));
            }
            parts.put(PartKey.of(PartKind.QUOTE_TEMPLATE), OwnTemplate.of(template.name(), template.bytes()));
            kept.add(template.bytes());
        } catch (UnusableTemplate e) {
            throw new BadUse(e.getMessage());
        }
    }

    private void stock(Path file) {
        try {
            // The movements are for jobs that need not be here; what is on hand is what it is after them.
            parts.putAll(StockFile.read(json, InputFile.read(file)).items());
        } catch (BadRecordException e) {
            throw InputFile.refused(file, e);
        } catch (IOException e) {
            throw new BadUse(BatchText.of("file.unreadable", file, e.getMessage()));
        }
    }

    private void customers(Path file) {
        try {
            parts.putAll(CustomerFile.read(json, InputFile.read(file)));
        } catch (BadRecordException e) {
            throw InputFile.refused(file, e);
        } catch (IOException e) {
            throw new BadUse(BatchText.of("file.unreadable", file, e.getMessage()));
        }
    }

    private void people(Path file) {
        try {
            people.addAll(json.mapper().readValue(InputFile.read(file), new TypeReference<List<Person>>() { }));
        } catch (JsonProcessingException e) {
            throw InputFile.refused(file, BadRecordException.from("people", e));
        } catch (IOException e) {
            throw new BadUse(BatchText.of("file.unreadable", file, e.getMessage()));
        }
        if (people.contains(null)) {
            throw new BadUse(BatchText.of("shop.no-person", file));
        }
    }
}
