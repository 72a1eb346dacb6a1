package org.copperbook.jobs.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;

/**
 * Parts to JSON and back. The text written is canonical for one version of the records: fields in record order,
 * unknown ones after them in the order they were read, ISO dates, no blanks.
 */
public final class PartJson {

    private static final int LONGEST_TEXT = 1_000_000;
    private static final int DEEPEST = 100;

    /** The library lets some numbers beyond any range through to where Java makes them. */
    static final String BEYOND = "holds a number beyond any that can be kept";

    private final ObjectMapper mapper;
    private final Map<PartKind, ObjectReader> kept = new EnumMap<>(PartKind.class);

    public PartJson() {
        mapper = JsonMapper.builder()
                .addModule(new JavaTimeModule())
                .addModule(new SimpleModule().addDeserializer(BigDecimal.class, new BoundedDecimal()))
                .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS, MapperFeature.AUTO_DETECT_IS_GETTERS)
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION, StreamReadFeature.USE_FAST_DOUBLE_PARSER)
                .defaultPropertyInclusion(JsonInclude.Value.construct(JsonInclude.Include.NON_NULL,
                        JsonInclude.Include.NON_NULL))
                .build();
        mapper.getFactory().setStreamReadConstraints(StreamReadConstraints.builder()
                .maxStringLength(LONGEST_TEXT).maxNestingDepth(DEEPEST).build());
        // A reader's own setting comes too late for the library: only the maker of its parsers can leave the search out.
        ObjectMapper once = mapper.copy();
        once.getFactory().disable(StreamReadFeature.STRICT_DUPLICATE_DETECTION.mappedFeature());
        for (PartKind kind : PartKind.values()) {
            kept.put(kind, once.readerFor(kind.type()));
        }
    }

    /** The mapper, for callers that stream or need trees; it is thread-safe and must not be reconfigured. */
    public ObjectMapper mapper() {
        return mapper;
    }

    /** A part as one line of JSON. */
    public String write(Part part) {
        try {
            return mapper.writeValueAsString(part);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a " + part.getClass().getSimpleName() + " could not be written as JSON", e);
        }
    }

    /** A part as a tree, for field-by-field work. */
    public ObjectNode tree(Part part) {
        return mapper.valueToTree(part);
    }

    /**
     * Reads a part.
     *
     * @throws BadRecordException when the text is not JSON or does not fit the record; the message names the place
     */
    public Part read(PartKey key, String json) throws BadRecordException {
        try (JsonParser p = mapper.createParser(json)) {
            return checked(key, mapper.readValue(p, key.kind().type()));
        } catch (java.io.IOException e) {
            throw BadRecordException.from(key.toString(), e);
        } catch (NumberFormatException e) {
            throw new BadRecordException(key.toString(), "", BEYOND);
        }
    }

    /**
     * Reads a part that this store wrote itself and keeps under a hash, a little faster: a field is not looked for twice in
     * the text.
     *
     * @throws BadRecordException as {@link #read(PartKey, String)}
     */
    public Part readKept(PartKey key, String json) throws BadRecordException {
        try {
            return checked(key, kept.get(key.kind()).readValue(json));
        } catch (JsonProcessingException e) {
            throw BadRecordException.from(key.toString(), e);
        } catch (NumberFormatException e) {
            throw new BadRecordException(key.toString(), "", BEYOND);
        }
    }

    /**
     * Reads a part from a tree.
     *
     * @throws BadRecordException when the tree does not fit the record; the message names the place
     */
    public Part read(PartKey key, JsonNode tree) throws BadRecordException {
        try {
            return checked(key, mapper.treeToValue(tree, key.kind().type()));
        } catch (JsonMappingException e) {
            throw BadRecordException.from(key.toString(), e);
        } catch (JsonProcessingException e) {
            throw BadRecordException.from(key.toString(), e);
        }
    }

    private static Part checked(PartKey key, Part part) throws BadRecordException {
        if (part == null) {
            throw new BadRecordException(key.toString(), "", "is null; leave the part out instead");
        }
        if (part.schema() < 1) {
            throw new BadRecordException(key.toString(), "schema", "must be 1 or more, but is " + part.schema());
        }
        return part;
    }
}
