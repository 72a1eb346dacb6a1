package org.copperbook.sheets.copy;

import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties.CustomProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.sheets.page.Book;

/**
 * What a record workbook carries in its file properties so that it can be held against the store: the job, and the
 * fingerprint of the record that it shows. The fingerprint is printed on the cover and at the foot of every page too.
 *
 * @param job         job number
 * @param fingerprint SHA-256 of the record, lower-case hex
 */
public record CopyMarks(String job, String fingerprint) {

    private static final String JOB = "Job";
    private static final String FINGERPRINT = "Record fingerprint";

    /** Puts the marks into a workbook. */
    public void mark(Book book) {
        CustomProperties properties = book.workbook().getProperties().getCustomProperties();
        properties.addProperty(JOB, job);
        properties.addProperty(FINGERPRINT, fingerprint);
    }

    /** The marks of a workbook; empty when it is no record workbook. */
    static Optional<CopyMarks> of(XSSFWorkbook workbook) {
        CustomProperties properties = workbook.getProperties().getCustomProperties();
        if (!properties.contains(JOB) || !properties.contains(FINGERPRINT)) {
            return Optional.empty();
        }
        return Optional.of(new CopyMarks(properties.getProperty(JOB).getLpwstr(),
                properties.getProperty(FINGERPRINT).getLpwstr()));
    }
}
