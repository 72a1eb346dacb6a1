package org.copperbook.sheets.copy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
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
                Map<String, String> cells = CopyContents.of(workbook);
                return new RecordCopy(marks, CopyContents.digest(cells), cells);
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

    /** Places at which another copy says something else, with what both say; "" where one says nothing. */
    public Map<String, Difference> differences(RecordCopy other) {
        return CopyContents.differences(cells, other.cells);
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
