package org.copperbook.sheets.registers;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * One row of a table, understood.
 *
 * @param number row in the file, from 1
 * @param values what stands in each column by its key: a String (text, or the value of a choice), a BigDecimal or a
 *               LocalDate; empty cells are not there
 */
public record RegisterRow(int number, Map<String, Object> values) {

    public RegisterRow {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /** A text, or the value of a choice. */
    public Optional<String> text(String key) {
        return Optional.ofNullable((String) values.get(key));
    }

    /** A number, with or without decimals. */
    public Optional<BigDecimal> number(String key) {
        return Optional.ofNullable((BigDecimal) values.get(key));
    }

    /** A date. */
    public Optional<LocalDate> date(String key) {
        return Optional.ofNullable((LocalDate) values.get(key));
    }
}
