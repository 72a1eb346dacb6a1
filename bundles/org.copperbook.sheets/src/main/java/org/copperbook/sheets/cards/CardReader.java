package org.copperbook.sheets.cards;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.jobs.winding.WindingData;

/** Makes cards of rows by a mapping. A row with anything in it that is not understood is refused and never guessed. */
public final class CardReader {

    private static final PartKey KEY = new PartKey(PartKind.OLD_CARD, "read");

    private final CardMapping mapping;
    private final String source;
    private final PartJson json;
    private final CellReading cells;

    /**
     * @param mapping which column is what
     * @param decimal decimal mark of numbers written as text
     * @param source  name of the file, kept with each card
     */
    public CardReader(CardMapping mapping, DecimalMark decimal, String source, PartJson json) {
        this.mapping = mapping;
        this.source = source;
        this.json = json;
        cells = new CellReading(decimal);
    }

    /** What the row says. */
    public CardLine read(TableRow row) {
        ObjectNode card = json.mapper().createObjectNode().put("schema", OldCard.SCHEMA);
        ObjectNode plate = json.mapper().createObjectNode().put("schema", 1);
        ObjectNode winding = json.mapper().createObjectNode().put("schema", WindingData.SCHEMA)
                .put("role", mapping.role().word()).put("asWound", false);
        List<CardLine.Problem> problems = new ArrayList<>();
        CardFields to = new CardFields(card, plate, winding);
        int filled = 0;
        for (int i = 0; i < mapping.columns().size(); i++) {
            CardMapping.Column column = mapping.columns().get(i);
            TableCell cell = row.cell(i);
            boolean says = !cell.text().isBlank() || cell.kind() == TableCell.Kind.BROKEN;
            if (column.field() != null && says) {
                filled++;
                try {
                    cells.read(column, cell, to);
                } catch (CellReading.NotUnderstood e) {
                    problems.add(new CardLine.Problem(column.header(), cell.kind() == TableCell.Kind.BROKEN ? ""
                            : shortened(cell.text()), e.getMessage()));
                }
            }
        }
        if (filled == 0) {
            problems.add(new CardLine.Problem("", "", CardWords.text("row.empty")));
        } else if (problems.isEmpty()) {
            to.finish();
            problems.addAll(CardSense.problems(winding));
        }
        if (!problems.isEmpty()) {
            return new CardLine(row.number(), Optional.empty(), problems);
        }
        if (plate.size() > 1) {
            card.set("plate", plate);
        }
        card.set("winding", winding);
        card.put("source", source).put("line", row.number());
        try {
            return new CardLine(row.number(), Optional.of((OldCard) json.read(KEY, card)), List.of());
        } catch (BadRecordException e) {
            return new CardLine(row.number(), Optional.empty(),
                    List.of(new CardLine.Problem("", "", e.getMessage())));
        }
    }

    private static String shortened(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "\u2026" : text;
    }
}
