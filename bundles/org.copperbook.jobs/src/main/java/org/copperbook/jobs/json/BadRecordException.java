package org.copperbook.jobs.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import java.io.IOException;
import java.util.stream.Collectors;

/** A record that cannot be read: says which part, which place in it, and what is wrong there. */
public class BadRecordException extends Exception {

    private static final long serialVersionUID = 1L;

    private final String part;
    private final String place;
    private final String problem;

    public BadRecordException(String part, String place, String problem) {
        super(part + (place.isEmpty() ? "" : " at " + place) + ": " + problem);
        this.part = part;
        this.place = place;
        this.problem = problem;
    }

    /** Turns a reader's exception into one line that names the place. */
    public static BadRecordException from(String part, IOException e) {
        String place = "";
        String problem = e.getMessage();
        if (e instanceof JsonProcessingException j) {
            problem = JsonProblem.of(j);
            JsonLocation at = j.getLocation();
            if (j instanceof JsonMappingException m && !m.getPath().isEmpty()) {
                place = m.getPath().stream()
                        .map(r -> r.getFieldName() != null ? r.getFieldName() : "[" + r.getIndex() + "]")
                        .collect(Collectors.joining("."))
                        .replace(".[", "[");
            } else if (at != null && at.getLineNr() > 0) {
                place = "line " + at.getLineNr() + " column " + at.getColumnNr();
            }
        }
        BadRecordException bad = new BadRecordException(part, place, problem == null ? "cannot be read" : problem);
        bad.initCause(e);
        return bad;
    }

    /** The part that could not be read. */
    public String part() {
        return part;
    }

    /** Path inside it, or line and column; empty when the whole part is meant. */
    public String place() {
        return place;
    }

    /** What is wrong. */
    public String problem() {
        return problem;
    }
}
