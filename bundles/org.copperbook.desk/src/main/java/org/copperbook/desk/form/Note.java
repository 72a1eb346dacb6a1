package org.copperbook.desk.form;

import java.util.List;
import org.copperbook.desk.entry.Typed;

/** What stands beside a field. */
public sealed interface Note {

    /** Nothing to say. */
    record None() implements Note {
    }

    /** What is wrong with the text typed. */
    record Problem(String text) implements Note {
    }

    /** A question with the possible meanings of the text. */
    record Question(String text, List<Typed.Understood> answers) implements Note {
        public Question {
            answers = List.copyOf(answers);
        }
    }

    /** What the field means, asked for with F1. */
    record Explained(String text) implements Note {
    }
}
