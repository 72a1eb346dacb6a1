package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.desk.document.FieldDifference;
import org.copperbook.desk.editor.DifferenceWords;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.history.FieldChange;

/** What two people changed in a register at once: the row by its name, and of it the columns that differ. */
final class RegisterDifferences implements DifferenceWords {

    private static final String BETWEEN = " \u2013 ";

    private final Words words;

    RegisterDifferences(Words words) {
        this.words = words;
    }

    @Override
    public String place(PartKey part, FieldDifference d) {
        FieldWords fields = new FieldWords(words, part.kind());
        List<String> said = new ArrayList<>();
        String[] steps = d.pointer().substring(1).split("/");
        for (int i = 0; i < steps.length; i++) {
            if (!steps[i].matches("\\d+")) {
                said.add(fields.of(steps[i].replace("~1", "/").replace("~0", "~")));
            } else {
                String place = Integer.toString(Integer.parseInt(steps[i]) + 1);
                said.add(i < steps.length - 1 ? place
                        : FieldChange.name(d.mine()).or(() -> FieldChange.name(d.theirs())).orElse(place));
            }
        }
        return String.join(BETWEEN, said);
    }

    @Override
    public String value(PartKey part, FieldDifference d, JsonNode side) {
        JsonNode other = side == d.mine() ? d.theirs() : d.mine();
        if (!side.isObject() || !other.isObject()) {
            return DifferenceWords.super.value(part, d, side);
        }
        FieldWords fields = new FieldWords(words, part.kind());
        return FieldChange.between(side, other).stream().map(c -> words.text("difference.column",
                        c.path().stream().map(fields::of).collect(Collectors.joining(BETWEEN)), DifferenceWords.plain(c.before())))
                .collect(Collectors.joining("; "));
    }
}
