package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/** What became of a text that was typed into a field. */
public sealed interface Typed {

    /** Nothing typed: the field is taken out of the record. */
    record Blank() implements Typed {
    }

    /**
     * Understood.
     *
     * @param node value as it goes into the record (SI units)
     * @param echo the value written back, normalised
     */
    record Understood(JsonNode node, String echo) implements Typed {
    }

    /**
     * Could mean several things; asked beside the field, never guessed.
     *
     * @param question the question in words
     * @param answers  what it may mean
     */
    record Ambiguous(String question, List<Understood> answers) implements Typed {
        public Ambiguous {
            answers = List.copyOf(answers);
        }
    }

    /**
     * Not understood; the text stays and this is said beside it.
     *
     * @param why what is wrong and what would be right, in words
     */
    record Wrong(String why) implements Typed {
    }
}
