package org.copperbook.jobs.shop;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.copperbook.jobs.Part;

/**
 * Settings of the workshop.
 *
 * @param schema             layout version
 * @param name               the workshop's name
 * @param address            address lines for the head of workbooks
 * @param currency           ISO 4217 code
 * @param units              units shown
 * @param referenceCelsius   temperature to which resistances are brought, degrees Celsius (20, 25 or 40)
 * @param copperConstant     k of the resistance correction: 235 (IEC 60034-1) or 234.5 (IEEE practice)
 * @param temperatureU       standard uncertainty of a winding temperature when none is stated, kelvin
 * @param numberSeries       job number pattern: {year} and {n:4} are filled in
 * @param demo               true for the invented demo workshop, which every screen and workbook says
 * @param keepNamesMonths    names of customers and contacts are due to be erased this many months after the last change
 *                           of a job that mentions them; null for no limit
 * @param more               fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Workshop(int schema, String name, String address, String currency, Units units,
        Double referenceCelsius, Double copperConstant, Double temperatureU, String numberSeries, Boolean demo,
        Integer keepNamesMonths,
        @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    /** Units shown at the edge; inside everything is SI. */
    public enum Units { METRIC, INCH }

    public Workshop {
        currency = currency == null ? "EUR" : currency;
        units = units == null ? Units.METRIC : units;
        referenceCelsius = referenceCelsius == null ? 20.0 : referenceCelsius;
        copperConstant = copperConstant == null ? 235.0 : copperConstant;
        temperatureU = temperatureU == null ? 1.0 : temperatureU;
        numberSeries = numberSeries == null ? "{year}-{n:4}" : numberSeries;
        more = more == null ? Map.of() : more;
    }
}
