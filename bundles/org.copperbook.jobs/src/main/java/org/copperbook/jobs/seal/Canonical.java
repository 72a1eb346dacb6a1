package org.copperbook.jobs.seal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;

/**
 * SHA-256 of JSON by what it says: the order of fields and the spelling of a number (0.30, 3e-1) make no difference, so
 * that a field which a later version learns to name does not break an old seal.
 */
final class Canonical {

    private Canonical() {
    }

    static String digest(JsonNode tree) {
        return digest(sorted(tree).toString());
    }

    static String digest(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256")
                    .digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static JsonNode sorted(JsonNode node) {
        if (node.isObject()) {
            Map<String, JsonNode> fields = new TreeMap<>();
            node.properties().forEach(f -> fields.put(f.getKey(), f.getValue()));
            ObjectNode next = JsonNodeFactory.instance.objectNode();
            fields.forEach((name, value) -> next.set(name, sorted(value)));
            return next;
        }
        if (node.isArray()) {
            var next = JsonNodeFactory.instance.arrayNode();
            node.forEach(item -> next.add(sorted(item)));
            return next;
        }
        if (node.isNumber()) {
            BigDecimal plain = node.decimalValue().stripTrailingZeros();
            return JsonNodeFactory.instance.textNode("#" + plain.unscaledValue() + "e" + -plain.scale());
        }
        return node;
    }
}
