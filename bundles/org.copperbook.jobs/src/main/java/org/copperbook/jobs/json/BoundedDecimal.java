package org.copperbook.jobs.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.deser.std.NumberDeserializers;
import java.io.IOException;
import java.math.BigDecimal;

/** Refuses decimals whose exponent alone would make arithmetic run out of memory, such as 1e999999999. */
final class BoundedDecimal extends NumberDeserializers.BigDecimalDeserializer {

    private static final long serialVersionUID = 1L;
    private static final int MOST_DIGITS = 100;

    @Override
    public BigDecimal deserialize(JsonParser p, DeserializationContext context) throws IOException {
        BigDecimal value = super.deserialize(p, context);
        if (value != null && (value.scale() > MOST_DIGITS || value.precision() - (long) value.scale() > MOST_DIGITS)) {
            throw JsonMappingException.from(p, PartJson.BEYOND);
        }
        return value;
    }
}
