package org.copperbook.calc;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the semicolon-separated tables that travel inside this library. */
public final class Tables {
    private Tables() {
    }

    /**
     * Rows of a table, without comment lines (begun by #) and without the heading.
     *
     * @param owner class beside which the table lies
     * @param name file name
     * @return cells by row, trimmed
     */
    public static List<List<String>> rows(Class<?> owner, String name) {
        try (InputStream in = owner.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the table " + name + " is missing from this library");
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            return reader.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).skip(1)
                    .map(line -> List.of(line.split(";", -1)).stream().map(String::trim).toList()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
