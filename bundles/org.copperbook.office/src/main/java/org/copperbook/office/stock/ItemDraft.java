package org.copperbook.office.stock;

import java.util.ArrayList;
import java.util.List;

/**
 * What was typed about an item and not kept yet.
 *
 * @param kept  the fields as they stood before somebody typed
 * @param typed the same fields as typed
 */
record ItemDraft(List<String> kept, List<String> typed) {

    ItemDraft {
        kept = List.copyOf(kept);
        typed = List.copyOf(typed);
        if (kept.size() != typed.size()) {
            throw new IllegalArgumentException(kept.size() + " fields, but " + typed.size() + " typed");
        }
    }

    /** Whether nothing was typed. */
    boolean saysNothing() {
        return kept.equals(typed);
    }

    /** The fields with what was typed put over what is kept by now; a field into which nothing was typed follows. */
    List<String> over(List<String> now) {
        List<String> all = new ArrayList<>(now);
        for (int i = 0; i < all.size(); i++) {
            if (!typed.get(i).equals(kept.get(i))) {
                all.set(i, typed.get(i));
            }
        }
        return all;
    }

    /** Places of the fields that were typed into here and kept otherwise by somebody else. */
    List<Integer> contested(List<String> now) {
        List<Integer> both = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            if (!typed.get(i).equals(kept.get(i)) && !now.get(i).equals(kept.get(i)) && !now.get(i).equals(typed.get(i))) {
                both.add(i);
            }
        }
        return both;
    }
}
