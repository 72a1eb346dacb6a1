package org.copperbook.jobs.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import java.util.Set;

/** Says in plain words what the reader of JSON stumbled over. */
final class JsonProblem {

    private static final Set<Class<?>> WHOLE = Set.of(int.class, Integer.class, long.class, Long.class);
    private static final int LONGEST_QUOTE = 60;

    private JsonProblem() {
    }

    static String of(JsonProcessingException e) {
        if (e instanceof ValueInstantiationException v && v.getCause() != null && v.getCause().getMessage() != null) {
            return firstLine(v.getCause().getMessage());
        }
        if (e instanceof InvalidFormatException f && f.getTargetType() != null) {
            return "is " + quoted(f.getValue()) + ", but must be " + wanted(f.getTargetType());
        }
        if (e instanceof StreamConstraintsException) {
            return "is longer or nested deeper than any record (" + firstLine(e.getOriginalMessage()) + ")";
        }
        if (e instanceof MismatchedInputException m && m.getTargetType() != null) {
            return e.getOriginalMessage().startsWith("Cannot map `null`") ? "is missing"
                    : "must be " + wanted(m.getTargetType());
        }
        return firstLine(e.getOriginalMessage());
    }

    private static String wanted(Class<?> type) {
        if (WHOLE.contains(type)) {
            return "a whole number";
        }
        if (Number.class.isAssignableFrom(type) || type == double.class) {
            return "a number";
        }
        if (type == Boolean.class || type == boolean.class) {
            return "true or false";
        }
        if (type == String.class) {
            return "text";
        }
        if (type == Instant.class) {
            return "a moment like 2026-03-02T08:15:00Z";
        }
        if (type == LocalDate.class) {
            return "a date like 2026-03-02";
        }
        if (type.isEnum()) {
            return "one of " + String.join(", ", Arrays.stream(type.getEnumConstants()).map(Object::toString).toList());
        }
        if (Collection.class.isAssignableFrom(type) || type.isArray()) {
            return "a list";
        }
        return type.isRecord() || Map.class.isAssignableFrom(type) ? "an object with its fields" : "of another kind";
    }

    private static String quoted(Object value) {
        String text = String.valueOf(value);
        return "\"" + (text.length() > LONGEST_QUOTE ? text.substring(0, LONGEST_QUOTE) + "..." : text) + "\"";
    }

    /** First line only, without the names of classes. */
    private static String firstLine(String text) {
        if (text == null) {
            return "cannot be read";
        }
        return text.lines().findFirst().orElse(text)
                .replaceAll("`?(?:org\\.copperbook|java|com\\.fasterxml)\\.[\\w.$]*?(\\w+)`?(?=[\\s,:)\\]]|$)", "$1")
                .replaceAll(" \\(start marker at .*", "");
    }
}
