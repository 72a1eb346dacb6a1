package org.copperbook.store.stock;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockRules;

/**
 * A file {@code stock.json} among the files of a shop: {@code items} with what is on hand of each, and the
 * {@code movements} that led to it, each with the {@code code} of its item.
 *
 * @param items the items by key, after the movements
 * @param moves the movements, in order
 */
public record StockFile(Map<PartKey, Part> items, List<StockMove> moves) {

    /** Its name. */
    public static final String NAME = "stock.json";

    /** The items before the movements, to be moved then. */
    public Map<PartKey, Part> before() {
        Map<PartKey, Part> before = new LinkedHashMap<>();
        items.forEach((key, part) -> {
            StockItem item = (StockItem) part;
            BigDecimal onHand = item.onHand();
            for (StockMove m : moves) {
                if (m.code().equalsIgnoreCase(item.code())) {
                    onHand = onHand.subtract(StockRules.comes(m.movement()));
                }
            }
            before.put(key, item.beginning(onHand));
        });
        return before;
    }

    /**
     * Reads the file.
     *
     * @throws BadRecordException when it does not hold what it should; the message names the place
     * @throws IOException        when the bytes cannot be read
     */
    public static StockFile read(PartJson json, byte[] bytes) throws BadRecordException, IOException {
        JsonNode tree;
        try {
            tree = json.mapper().readTree(bytes);
        } catch (JsonProcessingException e) {
            throw BadRecordException.from(NAME, e);
        }
        Map<PartKey, Part> items = new LinkedHashMap<>();
        for (JsonNode node : tree.path("items")) {
            String code = node.path("code").asText();
            if (!StockItem.isCode(code)) {
                throw new BadRecordException(NAME, "items", "\"" + code + "\" is no code of an item");
            }
            PartKey key = StockItem.key(code);
            if (items.put(key, json.read(key, node)) != null) {
                throw new BadRecordException(NAME, "items", "two items have the code " + code);
            }
        }
        List<StockMove> moves = new ArrayList<>();
        for (JsonNode node : tree.path("movements")) {
            try {
                StockMovement m = json.mapper().treeToValue(node.path("movement"), StockMovement.class);
                if (m == null || !node.path("code").isTextual()) {
                    throw new BadRecordException(NAME, "movements", "a movement needs the code of its item");
                }
                moves.add(new StockMove(node.path("code").asText(), m));
            } catch (JsonProcessingException e) {
                throw BadRecordException.from(NAME, e);
            }
        }
        return new StockFile(items, moves);
    }
}
