package org.copperbook.sheets.registers;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The columns of a register.
 *
 * @param name   name of the register, for the sheet of a workbook
 * @param fields its columns in order
 * @param unique keys of the columns that together tell a row from others; empty when rows may be alike
 */
public record RegisterShape(String name, List<RegisterField> fields, List<String> unique) {

    /** @throws IllegalArgumentException when two columns have one key, or a unique column is not among them */
    public RegisterShape {
        fields = List.copyOf(fields);
        unique = List.copyOf(unique);
        Set<String> keys = new HashSet<>();
        for (RegisterField f : fields) {
            if (!keys.add(f.key())) {
                throw new IllegalArgumentException("two columns have the key " + f.key());
            }
        }
        if (!keys.containsAll(unique)) {
            throw new IllegalArgumentException("rows are told apart by " + unique + ", but there are only " + keys);
        }
    }

    /** The column with a key. */
    public Optional<RegisterField> field(String key) {
        return fields.stream().filter(f -> f.key().equals(key)).findFirst();
    }
}
