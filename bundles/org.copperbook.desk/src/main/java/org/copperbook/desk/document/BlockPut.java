package org.copperbook.desk.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;

/**
 * Puts a block of cells into the tree of a record. All of it is tried at once, since a block seldom has a cell that the
 * record cannot hold; where it has one, the halves are tried, so that a large block with few such cells needs few
 * readings of the record.
 */
final class BlockPut {

    private final PartJson json;
    private final PartKey key;
    private final List<CellEdit> refused = new ArrayList<>();
    private ObjectNode tree;
    private Part part;

    BlockPut(PartJson json, PartKey key, ObjectNode tree, Part part) {
        this.json = json;
        this.key = key;
        this.tree = tree;
        this.part = part;
    }

    /** Puts the cells; those that the record cannot hold are left out and named by {@link #refused}. */
    void put(List<CellEdit> cells) {
        if (cells.isEmpty()) {
            return;
        }
        ObjectNode next = tree.deepCopy();
        try {
            for (CellEdit cell : cells) {
                PartTree.putInto(next, cell.pointer(), cell.value());
            }
            part = json.read(key, next);
            tree = next;
        } catch (BadRecordException e) {
            if (cells.size() == 1) {
                refused.add(cells.get(0));
            } else {
                put(cells.subList(0, cells.size() / 2));
                put(cells.subList(cells.size() / 2, cells.size()));
            }
        }
    }

    /** The record as it is now. */
    Part part() {
        return part;
    }

    /** Cells that the record cannot hold. */
    List<CellEdit> refused() {
        return refused;
    }
}
