package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.IntNode;
import org.copperbook.desk.text.DeskWords;

/** A whole number in a range. */
public final class IntegerEntry implements Entry {

    private final int least;
    private final int greatest;

    public IntegerEntry(int least, int greatest) {
        this.least = least;
        this.greatest = greatest;
    }

    @Override
    public String show(JsonNode value) {
        return value.isNumber() ? value.asText() : "";
    }

    @Override
    public Typed read(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return new Typed.Blank();
        }
        if (!t.matches("[+-]?\\d{1,9}")) {
            return new Typed.Wrong(DeskWords.text("entry.notWhole", t));
        }
        int n = Integer.parseInt(t);
        if (n < least || n > greatest) {
            return new Typed.Wrong(DeskWords.text("entry.outside", t, Integer.toString(least),
                    Integer.toString(greatest)));
        }
        return new Typed.Understood(IntNode.valueOf(n), Integer.toString(n));
    }

    @Override
    public boolean isNumeric() {
        return true;
    }
}
