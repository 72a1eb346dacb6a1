package org.copperbook.jobs.limits;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * One limit. Values are in the SI unit named; a percentage is held as a fraction.
 *
 * @param id        stable id the checks ask for, e.g. "resistance.unbalance.random"
 * @param title     what it limits, in words
 * @param lower     lower bound, or null
 * @param upper     upper bound, or null
 * @param unit      unit of the bounds ("ohm", "1", "K", "V", "mm/s")
 * @param formula   where the bound is computed: "at least" or "at most" and an expression, see {@link Formula}; or null
 * @param appliesTo where it applies, in words
 * @param source    standard and clause, handbook, or "common practice, no source"
 * @param edition   edition of the source
 * @param standing  whether it is a standard, a maker's figure or common practice
 * @param decides   true when this entry decides where several limits exist for one thing
 * @param atCelsius temperature to which a resistance limit belongs, degrees Celsius; null for the workshop's reference
 * @param original  the entry this one overrides, or null
 * @param why       reason of the override
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Limit(String id, String title, Double lower, Double upper, String unit, String formula,
        String appliesTo, String source, String edition, Standing standing, Boolean decides, Double atCelsius,
        Limit original, String why, @KeepUnknown Map<String, JsonNode> more) {

    /** What kind of authority a limit has. */
    public enum Standing { STANDARD, MAKER, CUSTOMER, COMMON_PRACTICE, WORKSHOP }

    public Limit {
        if (id == null || id.isBlank()) {
            throw new IllegalArgumentException("a limit needs an id");
        }
        more = more == null ? Map.of() : more;
    }

    /** This limit with the entry it replaces kept beside it. */
    public Limit inPlaceOf(Limit replaced) {
        return new Limit(id, title, lower, upper, unit, formula, appliesTo, source, edition, standing, decides,
                atCelsius, replaced, why, more);
    }
}
