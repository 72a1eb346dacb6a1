package org.copperbook.sheets.copy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties.CustomProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A quote workbook read back: which offer it claims to show, and everything that it says.
 *
 * @param job         job number that it carries
 * @param quote       which quote of the job
 * @param fingerprint fingerprint of the offer, SHA-256, lower-case hex
 * @param template    true when it was made from a template of the workshop's own
 * @param cells       contents by place
 */
public record QuoteCopy(String job, String quote, String fingerprint, boolean template, Map<String, String> cells) {

    private static final String JOB = "Job";
    private static final String QUOTE = "Quote";
    private static final String FINGERPRINT = "Quote fingerprint";
    private static final String FROM_TEMPLATE = "Quote from template";
    private static final long LARGEST = 64L * 1024 * 1024;

    /** Puts the marks of an offer into a workbook, in place of those of another. */
    public static void mark(XSSFWorkbook workbook, String job, String quote, String fingerprint) {
        CustomProperties properties = workbook.getProperties().getCustomProperties();
        Map.of(JOB, job, QUOTE, quote, FINGERPRINT, fingerprint).forEach((name, value) -> {
            if (properties.contains(name)) {
                properties.getProperty(name).setLpwstr(value);
            } else {
                properties.addProperty(name, value);
            }
        });
    }

    /** The same for a workbook made from a template, whose cells nobody can write anew. */
    public static void markTemplate(XSSFWorkbook workbook, String job, String quote, String fingerprint) {
        mark(workbook, job, quote, fingerprint);
        CustomProperties properties = workbook.getProperties().getCustomProperties();
        if (!properties.contains(FROM_TEMPLATE)) {
            properties.addProperty(FROM_TEMPLATE, true);
        }
    }

    /**
     * Reads a workbook.
     *
     * @return empty when the file is no quote workbook written here; what else it is, is not said
     */
    public static Optional<QuoteCopy> read(Path file) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
                return Optional.empty();
            }
            try (InputStream in = Files.newInputStream(file); XSSFWorkbook workbook = new XSSFWorkbook(in)) {
                CustomProperties properties = workbook.getProperties().getCustomProperties();
                if (!properties.contains(JOB) || !properties.contains(QUOTE) || !properties.contains(FINGERPRINT)) {
                    return Optional.empty();
                }
                return Optional.of(new QuoteCopy(properties.getProperty(JOB).getLpwstr(),
                        properties.getProperty(QUOTE).getLpwstr(), properties.getProperty(FINGERPRINT).getLpwstr(),
                        properties.contains(FROM_TEMPLATE), CopyContents.of(workbook)));
            }
        } catch (IOException | RuntimeException noWorkbook) {
            return Optional.empty();
        }
    }
}
