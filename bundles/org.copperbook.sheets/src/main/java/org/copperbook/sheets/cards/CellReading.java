package org.copperbook.sheets.cards;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.Parsed;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.calc.quantity.UnitTable;
import org.copperbook.calc.wire.WireSize;
import org.copperbook.jobs.winding.WindingData;

/** Reads one cell as one field. */
final class CellReading {

    /** The cell does not hold what its column should; the message says why. */
    static final class NotUnderstood extends Exception {
        private static final long serialVersionUID = 1L;

        NotUnderstood(String key, Object... args) {
            super(CardWords.say(key, args));
        }
    }

    private static final Pattern WHOLE = Pattern.compile("(\\d{1,7})(?:[.,]0+)?");
    private static final Pattern PAIR = Pattern.compile("(\\d{1,4}) *(?:-|\u2013|/|to|bis) *(\\d{1,4})");
    private static final Pattern SEQUENCE = Pattern.compile("\\d{1,2}(?:[ ,;/-]+\\d{1,2})*");
    private static final Pattern STRANDS_OF = Pattern.compile("(\\d{1,3}) *(?:[xX\u00d7*]|of) *(.+)");
    private static final Pattern BARE = Pattern.compile("[0-9]+(?:[.,][0-9]+)?");
    private static final int LONGEST = 2_000;

    private final DecimalMark decimal;

    CellReading(DecimalMark decimal) {
        this.decimal = decimal;
    }

    void read(CardMapping.Column column, TableCell cell, CardFields to) throws NotUnderstood {
        if (cell.kind() == TableCell.Kind.BROKEN) {
            throw new NotUnderstood("cell.broken", cell.text());
        }
        String text = cell.text().strip();
        switch (column.field()) {
            case CARD -> to.card().put("card", text(text));
            case DATE -> to.card().put("date", text(text));
            case MAKER -> to.plate().put("maker", text(text));
            case TYPE -> to.plate().put("type", text(text));
            case SERIAL -> to.plate().put("serial", text(text));
            case YEAR -> to.plate().put("year", cell.kind() == TableCell.Kind.DATE
                    ? LocalDate.parse(text).getYear() : whole(cell, 1850, 2200));
            case APPARENT_POWER -> to.plate().put("apparentPowerVA", quantity(column, cell));
            case POWER -> to.plate().put("powerW", quantity(column, cell));
            case VOLTAGE -> to.plate().put("voltageV", quantity(column, cell));
            case CURRENT -> to.plate().put("currentA", quantity(column, cell));
            case FREQUENCY -> to.plate().put("frequencyHz", quantity(column, cell));
            case SPEED -> to.plate().put("speedRpm", Math.rint(quantity(column, cell) * 60 * 1e6) / 1e6);
            case POLES -> to.winding().put("poles", whole(cell, 2, 200));
            case PHASES -> to.winding().put("phases", whole(cell, 0, 3));
            case SLOTS -> to.winding().put("slots", whole(cell, 3, 1000));
            case LAYERS -> to.winding().put("layers", whole(cell, 1, 99));
            case COIL_TYPE -> to.winding().put("coilType", word(WindingData.CoilType.values(), text).name());
            case SPAN -> to.winding().put("span", span(cell));
            case GROUP_SEQUENCE -> to.winding().put("groupSequence", sequence(cell));
            case COILS_PER_GROUP -> to.winding().put("coilsPerGroup", whole(cell, 1, 200));
            case TURNS -> to.winding().put("turnsPerCoil", whole(cell, 1, 100_000));
            case WIRE -> to.wires(wires(column, cell));
            case STRANDS -> to.strands(whole(cell, 1, 999));
            case CIRCUITS -> to.winding().put("circuits", whole(cell, 1, 100));
            case CONNECTION -> to.winding().put("connection", word(WindingData.Connection.values(), text).name());
            case LEADS -> to.winding().put("leads", whole(cell, 1, 48));
            case MEAN_TURN -> length(column, cell, to.winding(), "meanTurnM");
            case CORE_LENGTH -> length(column, cell, to.winding(), "coreLengthM");
            case BORE -> length(column, cell, to.winding(), "boreM");
            case OUTSIDE -> length(column, cell, to.winding(), "outsideM");
            case SLOT_DEPTH -> length(column, cell, to.winding(), "slotDepthM");
            case TOOTH_WIDTH -> length(column, cell, to.winding(), "toothWidthM");
            case YOKE_DEPTH -> length(column, cell, to.winding(), "yokeDepthM");
            case COPPER_MASS -> to.winding().put("copperRemovedKg", quantity(column, cell));
            case THERMAL_CLASS -> to.winding().put("thermalClass", text(text));
            case NOTE -> to.winding().put("note", text(text));
        }
    }

    private void length(CardMapping.Column column, TableCell cell, ObjectNode to, String name) throws NotUnderstood {
        to.put(name, quantity(column, cell));
    }

    private static String text(String text) throws NotUnderstood {
        if (text.length() > LONGEST) {
            throw new NotUnderstood("cell.long", text.length(), LONGEST);
        }
        return text;
    }

    private double quantity(CardMapping.Column column, TableCell cell) throws NotUnderstood {
        CardField field = column.field();
        refuseDate(cell);
        DecimalMark mark = cell.kind() == TableCell.Kind.NUMBER ? DecimalMark.DOT : decimal;
        String unit = column.unit() == null ? field.units().get(0) : column.unit();
        Parsed parsed = QuantityText.parse(cell.text(), field.dimension(), unit, mark);
        if (parsed instanceof Parsed.Ambiguous a) {
            throw new NotUnderstood("cell.ambiguous", a.readings().get(0).normalised(), a.readings().get(1).normalised());
        }
        if (parsed instanceof Parsed.Wrong w) {
            throw new NotUnderstood("cell.wrong", w.explanation());
        }
        double si = ((Parsed.Value) parsed).quantity().si();
        if (!(si >= field.least() && si <= field.most())) {
            throw new NotUnderstood("cell.range", shown(field, unit, field.least()), shown(field, unit, field.most()),
                    unit);
        }
        return si;
    }

    private static String shown(CardField field, String unit, double si) {
        return new BigDecimal(UnitTable.unit(field.dimension(), unit).fromSi(si))
                .round(new java.math.MathContext(4)).stripTrailingZeros().toPlainString();
    }

    private static int whole(TableCell cell, int least, int most) throws NotUnderstood {
        refuseDate(cell);
        Matcher m = WHOLE.matcher(cell.text().strip());
        if (!m.matches()) {
            throw new NotUnderstood("cell.whole");
        }
        int value = Integer.parseInt(m.group(1));
        if (value < least || value > most) {
            throw new NotUnderstood("cell.whole-range", least, most);
        }
        return value;
    }

    private static void refuseDate(TableCell cell) throws NotUnderstood {
        if (cell.kind() == TableCell.Kind.DATE) {
            throw new NotUnderstood("cell.date-number");
        }
    }

    private static String span(TableCell cell) throws NotUnderstood {
        if (cell.kind() == TableCell.Kind.DATE) {
            LocalDate d = LocalDate.parse(cell.text());
            throw new NotUnderstood("cell.date-span", d.getMonthValue() + "-" + d.getDayOfMonth(),
                    d.getDayOfMonth() + "-" + d.getMonthValue());
        }
        List<String> pairs = new ArrayList<>();
        for (String piece : cell.text().strip().toLowerCase(Locale.ROOT).split(" *[,;+] *")) {
            Matcher m = PAIR.matcher(piece);
            if (!m.matches()) {
                throw new NotUnderstood("cell.span");
            }
            pairs.add(m.group(1) + "-" + m.group(2));
        }
        return String.join(", ", pairs);
    }

    private static String sequence(TableCell cell) throws NotUnderstood {
        refuseDate(cell);
        String text = cell.text().strip();
        if (!SEQUENCE.matcher(text).matches()) {
            throw new NotUnderstood("cell.sequence");
        }
        return text.replaceAll("[ ,;/-]+", "-");
    }

    private List<CardFields.Wire> wires(CardMapping.Column column, TableCell cell) throws NotUnderstood {
        refuseDate(cell);
        List<CardFields.Wire> wires = new ArrayList<>();
        String separators = decimal == DecimalMark.COMMA ? " *[;+] *" : " *[;+] *| *, +";
        for (String piece : cell.text().strip().split(separators)) {
            Matcher m = STRANDS_OF.matcher(piece);
            boolean several = m.matches();
            wires.add(new CardFields.Wire(size(column.unit(), several ? m.group(2).strip() : piece.strip()),
                    several ? Integer.valueOf(m.group(1)) : null));
        }
        return wires;
    }

    private static String size(String unit, String text) throws NotUnderstood {
        String written = text;
        if (BARE.matcher(text).matches()) {
            String plain = text.replace(',', '.');
            written = switch (unit == null ? "mm" : unit) {
                case "AWG" -> "AWG " + plain;
                case "SWG" -> plain + " SWG";
                case "in" -> plain + " in";
                default -> plain + " mm";
            };
        }
        try {
            double mm = WireSize.parse(written).bareDiameter() * 1000;
            if (!(mm >= 0.02 && mm <= 10)) {
                throw new NotUnderstood("cell.wire-range", String.format(Locale.getDefault(), "%.3f", mm));
            }
            return written;
        } catch (OutOfRange e) {
            throw new NotUnderstood("cell.wire", e.getMessage());
        }
    }

    private static <E extends Enum<E>> E word(E[] constants, String text) throws NotUnderstood {
        String folded = HeaderGuess.folded(text);
        List<String> known = new ArrayList<>();
        for (E constant : constants) {
            String words = CardWords.text("word." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
            for (String word : words.split("\\|")) {
                if (HeaderGuess.folded(word).equals(folded)) {
                    return constant;
                }
            }
            known.add(words.split("\\|")[0]);
        }
        throw new NotUnderstood("cell.word", String.join(", ", known));
    }
}
