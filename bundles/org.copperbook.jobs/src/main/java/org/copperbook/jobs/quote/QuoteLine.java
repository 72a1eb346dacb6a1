package org.copperbook.jobs.quote;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;

/**
 * One line of a quote.
 *
 * @param kind            labour, material, diode set, bearing, outside work
 * @param text            what it is
 * @param trade           trade that does the work, for labour
 * @param quantity        how much
 * @param unit            of what (h, kg, pc)
 * @param unitPrice       price per unit before mark-up
 * @param discountPercent discount on this line, percent; null for none
 * @param tax             code of the tax kind; null for none
 * @param wire            size of winding wire as the shelf writes it, for a line of wire in kilograms; its copper counts
 *                        towards the mass of copper
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record QuoteLine(Kind kind, String text, String trade, BigDecimal quantity, String unit,
        BigDecimal unitPrice, BigDecimal discountPercent, String tax, String wire,
        @KeepUnknown Map<String, JsonNode> more) {

    /** Kinds of line. */
    public enum Kind { LABOUR, MATERIAL, DIODE_SET, BEARING, OUTSIDE_WORK, OTHER }

    /** A line that is no wire. */
    public QuoteLine(Kind kind, String text, String trade, BigDecimal quantity, String unit, BigDecimal unitPrice,
            BigDecimal discountPercent, String tax, Map<String, JsonNode> more) {
        this(kind, text, trade, quantity, unit, unitPrice, discountPercent, tax, null, more);
    }

    public QuoteLine {
        more = more == null ? Map.of() : more;
    }
}
