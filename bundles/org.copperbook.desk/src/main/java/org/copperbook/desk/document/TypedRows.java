package org.copperbook.desk.document;

import java.util.Map;
import java.util.TreeMap;

/** Keeps texts not understood beside their rows when rows of a list come or go. */
final class TypedRows {

    private TypedRows() {
    }

    /** The draft with its typed texts moved along with a row that goes to another place. */
    static Draft moved(Draft draft, String list, int from, int to) {
        Map<String, String> moved = new TreeMap<>();
        String prefix = list + "/";
        draft.asTyped().forEach((pointer, text) -> {
            if (!pointer.startsWith(prefix)) {
                moved.put(pointer, text);
                return;
            }
            String rest = pointer.substring(prefix.length());
            int slash = rest.indexOf('/');
            int row = Integer.parseInt(slash < 0 ? rest : rest.substring(0, slash));
            moved.put(prefix + placeOf(row, from, to) + (slash < 0 ? "" : rest.substring(slash)), text);
        });
        return new Draft(draft.part(), moved);
    }

    private static int placeOf(int row, int from, int to) {
        if (row == from) {
            return to;
        }
        int without = row > from ? row - 1 : row;
        return without >= to ? without + 1 : without;
    }

    /**
     * The draft with its typed texts moved.
     *
     * @param by 1 when a row came before the index, -1 when the row at the index went
     */
    static Draft shifted(Draft draft, String list, int index, int by) {
        Map<String, String> moved = new TreeMap<>();
        String prefix = list + "/";
        for (Map.Entry<String, String> e : draft.asTyped().entrySet()) {
            String pointer = e.getKey();
            if (!pointer.startsWith(prefix)) {
                moved.put(pointer, e.getValue());
                continue;
            }
            String rest = pointer.substring(prefix.length());
            int slash = rest.indexOf('/');
            int row = Integer.parseInt(slash < 0 ? rest : rest.substring(0, slash));
            String tail = slash < 0 ? "" : rest.substring(slash);
            if (row == index && by < 0) {
                continue;
            }
            moved.put(row >= index ? prefix + (row + by) + tail : pointer, e.getValue());
        }
        return new Draft(draft.part(), moved);
    }
}
