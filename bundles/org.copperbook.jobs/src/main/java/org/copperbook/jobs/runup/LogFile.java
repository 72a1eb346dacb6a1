package org.copperbook.jobs.runup;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * A logger's file from which points were taken. The file itself is kept beside the record where it is small enough; the
 * record holds what identifies it, what was wrong with it, and a thinned trace of every column used.
 *
 * @param name     file name
 * @param hash     SHA-256 of its bytes, lower-case hex
 * @param kept     key under which its bytes, packed with gzip, are kept with the photos; null when it is kept elsewhere
 * @param bytes    size
 * @param rows     rows of readings in it
 * @param used     rows that were read without a problem
 * @param begins   first moment as the file writes it
 * @param seconds  seconds from the first row to the last
 * @param columns  which column was taken for what, as "title = quantity in unit"
 * @param problems what was wrong, with row numbers
 * @param rule     how points were made out of rows, in words
 * @param points   points taken over
 * @param traces   the columns used, thinned
 * @param by       person key of who took the points over
 * @param at       when
 * @param more     fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record LogFile(String name, String hash, String kept, Long bytes, Long rows, Long used, String begins,
        Double seconds, List<String> columns, List<String> problems, String rule, Integer points, List<Trace> traces,
        String by, Instant at, @KeepUnknown Map<String, JsonNode> more) {

    /**
     * One column, thinned: the lowest and the highest value of each of some stretches of equal length.
     *
     * @param quantity what it is
     * @param lows     lowest values, unit of the quantity; null where a stretch holds none
     * @param highs    highest values
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Trace(LogQuantity quantity, List<Double> lows, List<Double> highs,
            @KeepUnknown Map<String, JsonNode> more) {
        public Trace {
            lows = lows == null ? List.of() : java.util.Collections.unmodifiableList(new java.util.ArrayList<>(lows));
            highs = highs == null ? List.of() : java.util.Collections.unmodifiableList(new java.util.ArrayList<>(highs));
            more = more == null ? Map.of() : more;
        }
    }

    public LogFile {
        columns = columns == null ? List.of() : List.copyOf(columns);
        problems = problems == null ? List.of() : List.copyOf(problems);
        traces = traces == null ? List.of() : List.copyOf(traces);
        more = more == null ? Map.of() : more;
    }
}
