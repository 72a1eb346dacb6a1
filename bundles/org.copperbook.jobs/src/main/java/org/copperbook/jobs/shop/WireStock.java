package org.copperbook.jobs.shop;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.util.List;
import org.copperbook.jobs.Part;

/** The wire on the shelf. */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record WireStock(int schema, List<Spool> spools, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public WireStock {
        spools = spools == null ? List.of() : List.copyOf(spools);
        more = more == null ? Map.of() : more;
    }

    /** One size on the shelf: size as the trade writes it, grade, kilograms on hand, price per kilogram. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Spool(String size, Integer grade, Double onHandKg, BigDecimal pricePerKg,
            @KeepUnknown Map<String, JsonNode> more) {
        public Spool {
            more = more == null ? Map.of() : more;
        }
    }
}
