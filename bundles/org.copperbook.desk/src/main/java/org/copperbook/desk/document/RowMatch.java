package org.copperbook.desk.document;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.copperbook.jobs.PartKind;

/** Which row of a changed list was which row of the list that it began as. */
final class RowMatch {

    private static final int NONE = -1;

    private final int[] nowOf;
    private final int[] wasOf;

    private RowMatch(int was, int now) {
        nowOf = new int[was];
        wasOf = new int[now];
        Arrays.fill(nowOf, NONE);
        Arrays.fill(wasOf, NONE);
    }

    /**
     * Rows with a name are matched by it. Others are matched when they are equal and in the same order; a row changed between two
     * such rows is the one that stood there.
     */
    static RowMatch of(PartKind kind, String list, JsonNode was, JsonNode now) {
        RowMatch match = new RowMatch(was.size(), now.size());
        Optional<Map<String, Integer>> before = RowKeys.named(kind, list, was);
        Optional<Map<String, Integer>> after = RowKeys.named(kind, list, now);
        if (before.isPresent() && after.isPresent()) {
            before.get().forEach((name, i) -> {
                Integer j = after.get().get(name);
                if (j != null) {
                    match.pair(i, j);
                }
            });
        } else {
            match.inOrder(was, now);
        }
        return match;
    }

    /** Where a row stands now; nothing when it was taken out. */
    Optional<Integer> now(int was) {
        return nowOf[was] == NONE ? Optional.empty() : Optional.of(nowOf[was]);
    }

    /** Every row that came, in order. */
    List<Integer> came() {
        return IntStream.range(0, wasOf.length).filter(j -> wasOf[j] == NONE).boxed().toList();
    }

    /** The rows that came, by the row of the beginning after which they stand (-1: before all). */
    List<Integer> cameAfter(int was) {
        List<Integer> came = new ArrayList<>();
        int last = NONE;
        for (int j = 0; j < wasOf.length; j++) {
            if (wasOf[j] != NONE) {
                last = wasOf[j];
            } else if (last == was) {
                came.add(j);
            }
        }
        return came;
    }

    private void pair(int was, int now) {
        nowOf[was] = now;
        wasOf[now] = was;
    }

    /** The longest run of equal rows in the same order, then what is left between them by its place. */
    private void inOrder(JsonNode was, JsonNode now) {
        int[][] length = new int[was.size() + 1][now.size() + 1];
        for (int i = was.size() - 1; i >= 0; i--) {
            for (int j = now.size() - 1; j >= 0; j--) {
                length[i][j] = was.get(i).equals(now.get(j)) ? length[i + 1][j + 1] + 1
                        : Math.max(length[i + 1][j], length[i][j + 1]);
            }
        }
        int i = 0;
        int j = 0;
        int openWas = 0;
        int openNow = 0;
        while (i < was.size() && j < now.size()) {
            if (was.get(i).equals(now.get(j))) {
                between(openWas, i, openNow, j);
                pair(i++, j++);
                openWas = i;
                openNow = j;
            } else if (length[i + 1][j] >= length[i][j + 1]) {
                i++;
            } else {
                j++;
            }
        }
        between(openWas, was.size(), openNow, now.size());
    }

    private void between(int was, int wasEnd, int now, int nowEnd) {
        for (int k = 0; was + k < wasEnd && now + k < nowEnd; k++) {
            pair(was + k, now + k);
        }
    }
}
