package org.copperbook.winding.memory;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import java.util.Optional;
import java.util.stream.Collectors;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.NumberEntry;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.sheets.cards.CardLine;
import org.copperbook.sheets.cards.CardMapping;
import org.copperbook.sheets.cards.TableRow;
import org.copperbook.calc.quantity.Dimension;

/**
 * A row in the preview: what was understood of it, with its unit; what stands in the file where it was refused.
 *
 * @param line what the row turned out to be
 * @param row  what stands in the file
 */
record RowText(CardLine line, TableRow row) {

    private static final FieldUnit KVA = new FieldUnit(Dimension.APPARENT_POWER, "VA", "VA", null);

    String of(CardMapping.Column column, int place) {
        Optional<OldCard> card = line.card();
        if (card.isEmpty() || row.cell(place).text().isBlank()) {
            return row.cell(place).text();
        }
        WindingData w = card.get().winding();
        Nameplate p = card.get().plate();
        return switch (column.field()) {
            case APPARENT_POWER -> number(p.apparentPowerVA(), KVA);
            case POWER -> number(p.powerW(), FieldUnit.WATT);
            case VOLTAGE -> number(p.voltageV(), FieldUnit.VOLT);
            case CURRENT -> number(p.currentA(), FieldUnit.AMPERE);
            case FREQUENCY -> number(p.frequencyHz(), FieldUnit.HERTZ);
            case SPEED -> number(p.speedRpm(), FieldUnit.RPM);
            case SPAN -> w.span();
            case GROUP_SEQUENCE -> w.groupSequence();
            case WIRE -> w.wire().stream().map(x -> x.strands() + " \u00d7 " + x.size())
                    .collect(Collectors.joining(", "));
            case MEAN_TURN -> number(w.meanTurnM(), FieldUnit.METRE_AS_MM);
            case CORE_LENGTH -> number(w.coreLengthM(), FieldUnit.METRE_AS_MM);
            case BORE -> number(w.boreM(), FieldUnit.METRE_AS_MM);
            case OUTSIDE -> number(w.outsideM(), FieldUnit.METRE_AS_MM);
            case SLOT_DEPTH -> number(w.slotDepthM(), FieldUnit.METRE_AS_MM);
            case TOOTH_WIDTH -> number(w.toothWidthM(), FieldUnit.METRE_AS_MM);
            case YOKE_DEPTH -> number(w.yokeDepthM(), FieldUnit.METRE_AS_MM);
            case COPPER_MASS -> number(w.copperRemovedKg(), FieldUnit.KILOGRAM);
            default -> row.cell(place).text();
        };
    }

    private static String number(Double value, FieldUnit unit) {
        JsonNode node = value == null ? com.fasterxml.jackson.databind.node.MissingNode.getInstance()
                : DoubleNode.valueOf(value);
        return new NumberEntry(unit).show(node);
    }
}
