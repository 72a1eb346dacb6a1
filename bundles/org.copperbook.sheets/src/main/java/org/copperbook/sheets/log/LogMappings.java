package org.copperbook.sheets.log;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.page.AtomicFile;

/**
 * Mappings remembered from one log to the next, one file for each set of column titles.
 *
 * @param folder where they are kept
 * @param json   reader and writer
 */
public record LogMappings(Path folder, PartJson json) {

    private static final System.Logger LOG = System.getLogger(LogMappings.class.getName());

    /** The mapping last used for a log of these titles. One that cannot be read is as good as none. */
    public Optional<LogMapping> of(List<String> titles) {
        Path file = file(titles);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            LogMapping found = json.mapper().readValue(Files.readAllBytes(file), LogMapping.class);
            return found.titles().equals(titles) ? Optional.of(found) : Optional.empty();
        } catch (IOException | RuntimeException e) {
            LOG.log(System.Logger.Level.WARNING, "the mapping " + file + " cannot be read and is left aside", e);
            return Optional.empty();
        }
    }

    /**
     * Remembers a mapping for logs of its titles.
     *
     * @throws IOException when it cannot be kept
     */
    public void keep(LogMapping mapping) throws IOException {
        Files.createDirectories(folder);
        try {
            new AtomicFile(file(mapping.titles())).write(out -> out.write(
                    json.mapper().writerWithDefaultPrettyPrinter().writeValueAsBytes(mapping)));
        } catch (WorkbookNotWrittenException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    private Path file(List<String> titles) {
        String signature = String.join("\n", titles);
        return folder.resolve(UUID.nameUUIDFromBytes(signature.getBytes(StandardCharsets.UTF_8)) + ".json");
    }
}
