package org.copperbook.sheets.cards;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/** A table in a file. Rows stream by, so that its size does not matter to memory. */
public interface CardTable {

    /** Receives the rows that are not blank, in order. */
    @FunctionalInterface
    interface Rows {
        /** @return whether to go on */
        boolean take(TableRow row) throws UnreadableTableException;
    }

    /** Names of the sheets; empty for a text file. */
    List<String> sheets();

    /** How the file seems to be made, the header row still unknown (0). */
    TableFormat detected();

    /** Whether the file is a workbook. */
    default boolean isWorkbook() {
        return !sheets().isEmpty();
    }

    /**
     * Streams the rows.
     *
     * @return remarks on the whole table, such as merged cells; one plain sentence each
     * @throws UnreadableTableException when the file cannot be read to its end, or exceeds what is allowed
     */
    List<String> read(TableFormat format, Rows rows) throws UnreadableTableException;

    /**
     * Looks at a file and says what it is; by what it holds and not by the end of its name.
     *
     * @throws UnreadableTableException when it is none that can be read
     */
    static CardTable open(Path file) throws UnreadableTableException {
        try {
            long size = Files.size(file);
            if (size == 0) {
                throw new UnreadableTableException(CardWords.say("file.empty", file.getFileName()));
            }
            if (size > TableLimits.FILE_BYTES) {
                throw new UnreadableTableException(CardWords.say("file.large", file.getFileName(), size >> 20,
                        TableLimits.FILE_BYTES >> 20));
            }
            byte[] head;
            try (InputStream in = Files.newInputStream(file)) {
                head = in.readNBytes(8);
            }
            if (starts(head, 'P', 'K', 3, 4)) {
                return new WorkbookTable(file);
            }
            if (starts(head, 0xD0, 0xCF, 0x11, 0xE0)) {
                throw new UnreadableTableException(CardWords.say("file.old", file.getFileName()));
            }
            return new TextTable(file);
        } catch (NoSuchFileException e) {
            throw new UnreadableTableException(CardWords.say("file.missing", file), e);
        } catch (IOException e) {
            throw new UnreadableTableException(CardWords.say("file.unread", file.getFileName(), e.getMessage()), e);
        }
    }

    private static boolean starts(byte[] head, int... bytes) {
        for (int i = 0; i < bytes.length; i++) {
            if (i >= head.length || (head[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }
}
