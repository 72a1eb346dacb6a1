package org.copperbook.sheets.copy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFPictureData;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.seal.IssuedCopies;

/**
 * A record workbook read back: which record it claims to show, and everything that it says.
 *
 * @param marks  job and fingerprint that it carries
 * @param digest SHA-256 over all cells and pictures, lower-case hex; how they look makes no difference
 * @param cells  contents by place, as "Cover!B3"; pictures as "picture 1"
 */
public record RecordCopy(CopyMarks marks, String digest, Map<String, String> cells) {

    private static final long LARGEST = 64L * 1024 * 1024;

    /**
     * Reads a workbook.
     *
     * @throws UnreadableCopy when the file is missing, too large, no workbook, or no job record
     */
    public static RecordCopy read(Path file) throws UnreadableCopy {
        try {
            if (!Files.isRegularFile(file)) {
                throw new UnreadableCopy(UnreadableCopy.Reason.MISSING, file, null);
            }
            if (Files.size(file) > LARGEST) {
                throw new UnreadableCopy(UnreadableCopy.Reason.TOO_LARGE, file, null);
            }
            try (InputStream in = Files.newInputStream(file); XSSFWorkbook workbook = new XSSFWorkbook(in)) {
                CopyMarks marks = CopyMarks.of(workbook).orElseThrow(
                        () -> new UnreadableCopy(UnreadableCopy.Reason.NO_RECORD, file, null));
                Map<String, String> cells = contents(workbook);
                return new RecordCopy(marks, digest(cells), cells);
            }
        } catch (IOException | RuntimeException e) {
            throw new UnreadableCopy(UnreadableCopy.Reason.NO_WORKBOOK, file, e);
        }
    }

    /**
     * The issued copies of a job with this one among them; empty when one that says the same stands there already.
     *
     * @param fileName name it was written under
     * @param at       when
     */
    public Optional<IssuedCopies> addedTo(Job job, String fileName, Instant at) {
        IssuedCopies issued = job.part(PartKind.ISSUED_COPIES, IssuedCopies.class).orElse(IssuedCopies.none());
        return issued.holds(digest) ? Optional.empty()
                : Optional.of(issued.with(new IssuedCopies.Copy(fileName, marks.fingerprint(), digest, at, null)));
    }

    private static Map<String, String> contents(XSSFWorkbook workbook) throws IOException {
        Map<String, String> cells = new TreeMap<>();
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    String said = said(cell);
                    if (!said.isEmpty()) {
                        cells.put(sheet.getSheetName() + "!" + cell.getAddress().formatAsString(), said);
                    }
                }
            }
        }
        int number = 1;
        for (XSSFPictureData picture : workbook.getAllPictures()) {
            cells.put("picture " + number, sha256(picture.getData()));
            number++;
        }
        return cells;
    }

    private static String said(Cell cell) {
        return switch (cell.getCellType()) {
            case STRING -> cell.getStringCellValue();
            case NUMERIC -> Double.toString(cell.getNumericCellValue());
            case BOOLEAN -> Boolean.toString(cell.getBooleanCellValue());
            case FORMULA -> "=" + cell.getCellFormula();
            case ERROR -> "#" + cell.getErrorCellValue();
            default -> "";
        };
    }

    private static String digest(Map<String, String> cells) {
        StringBuilder all = new StringBuilder();
        cells.forEach((place, said) -> all.append(place.length()).append(' ').append(place).append(said.length())
                .append(' ').append(said).append('\n'));
        return sha256(all.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Places at which another copy says something else, with what both say; "" where one says nothing. */
    public Map<String, Difference> differences(RecordCopy other) {
        Map<String, Difference> found = new TreeMap<>();
        Map<String, String> places = new TreeMap<>(cells);
        places.putAll(other.cells);
        for (String place : places.keySet()) {
            String here = cells.getOrDefault(place, "");
            String there = other.cells.getOrDefault(place, "");
            if (!here.equals(there)) {
                found.put(place, new Difference(here, there));
            }
        }
        return found;
    }

    /**
     * What two copies say at one place.
     *
     * @param here  this copy
     * @param there the other copy
     */
    public record Difference(String here, String there) {
    }
}
