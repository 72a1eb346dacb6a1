package org.copperbook.calc.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of a comma-separated file with a heading line (RFC 4180), UTF-8. */
final class CsvRows {

    private CsvRows() {
    }

    static List<Map<String, String>> read(String resource) {
        try (InputStream in = CsvRows.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("no resource " + resource);
            }
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), resource);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Map<String, String>> parse(String text, String resource) {
        List<List<String>> lines = split(text);
        List<String> heading = lines.get(0);
        List<Map<String, String>> rows = new ArrayList<>();
        for (List<String> line : lines.subList(1, lines.size())) {
            if (line.size() != heading.size()) {
                throw new IllegalStateException(resource + ": " + line.size() + " cells in " + line);
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < heading.size(); i++) {
                row.put(heading.get(i), line.get(i));
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<List<String>> split(String text) {
        List<List<String>> lines = new ArrayList<>();
        List<String> line = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted) {
                if (c != '"') {
                    cell.append(c);
                } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    cell.append(c);
                    i++;
                } else {
                    quoted = false;
                }
            } else if (c == '"') {
                quoted = true;
            } else if (c == ',' || c == '\n') {
                line.add(cell.toString());
                cell.setLength(0);
                if (c == '\n') {
                    lines.add(line);
                    line = new ArrayList<>();
                }
            } else {
                cell.append(c);
            }
        }
        return lines;
    }
}
