package org.copperbook.office.registers;

import java.util.Locale;
import java.util.Map;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKind;

/**
 * Fields of parts as people call them: as the register of that kind names them where it does.
 *
 * @param words texts
 * @param kind  kind of the part
 */
record FieldWords(Words words, PartKind kind) {

    private static final Map<PartKind, String> REGISTERS = Map.of(PartKind.INSTRUMENTS, "instruments",
            PartKind.CUSTOMER, "customers", PartKind.LABOUR_RATES, "rates", PartKind.CAPACITIES, "capacities");

    /** The name of a field; what is none, as the name of a row, stays as it is. */
    String of(String field) {
        String own = REGISTERS.getOrDefault(kind, "") + "." + field;
        return words.has("field." + field) ? words.text("field." + field) : words.has(own) ? words.text(own)
                : field.matches("[a-z]+([A-Z][a-z]*)+") ? field.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT) : field;
    }
}
