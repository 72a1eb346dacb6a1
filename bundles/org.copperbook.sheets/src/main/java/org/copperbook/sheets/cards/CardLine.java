package org.copperbook.sheets.cards;

import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.winding.OldCard;

/**
 * What a row of the table turned out to be.
 *
 * @param number   row number in the file
 * @param card     the card, empty when the row is refused
 * @param problems why it is refused; empty when it is not
 */
public record CardLine(int number, Optional<OldCard> card, List<Problem> problems) {

    public CardLine {
        problems = List.copyOf(problems);
    }

    /**
     * What is wrong with a row.
     *
     * @param column title of the column, empty for the row as a whole
     * @param text   what stands there
     * @param reason what is wrong, in words
     */
    public record Problem(String column, String text, String reason) {

        /** All of it in one line. */
        public String inWords() {
            return column.isEmpty() ? reason : text.isEmpty() ? column + ": " + reason
                    : column + " \"" + text + "\": " + reason;
        }
    }
}
