package org.copperbook.sheets.cards;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.page.AtomicFile;

/**
 * Mappings remembered from one import to the next, one file for each set of column titles.
 *
 * @param folder where they are kept
 * @param json   reader and writer
 */
public record CardMappings(Path folder, PartJson json) {

    private static final System.Logger LOG = System.getLogger(CardMappings.class.getName());

    /** The mapping last used for a table of these titles. One that cannot be read is as good as none. */
    public Optional<CardMapping> of(List<String> headers) {
        Path file = file(headers);
        try {
            CardMapping found = read(file, json);
            return found.headers().equals(headers) ? Optional.of(found) : Optional.empty();
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "the mapping " + file + " cannot be read and is left aside", e);
            return Optional.empty();
        }
    }

    /**
     * Remembers a mapping for tables of its titles.
     *
     * @throws WorkbookNotWrittenException when it cannot be kept
     */
    public void keep(CardMapping mapping) throws WorkbookNotWrittenException {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new WorkbookNotWrittenException(WorkbookNotWrittenException.Reason.DISK, e.getMessage(), e);
        }
        write(mapping, file(mapping.headers()), json);
    }

    private Path file(List<String> headers) {
        return folder.resolve(CardMapping.signature(headers) + ".json");
    }

    /** @throws IOException when the file is not a mapping */
    public static CardMapping read(Path file, PartJson json) throws IOException {
        return json.mapper().readValue(Files.readAllBytes(file), CardMapping.class);
    }

    /** Writes a mapping, whole or not at all. */
    public static void write(CardMapping mapping, Path file, PartJson json) throws WorkbookNotWrittenException {
        new AtomicFile(file).write(out -> out.write(
                json.mapper().writerWithDefaultPrettyPrinter().writeValueAsBytes(mapping)));
    }
}
