package org.copperbook.desk.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSlice;
import org.copperbook.store.RegisterSort;
import org.junit.jupiter.api.Test;

class RegisterRowsTest {

    private static final int JOBS = 1000;
    private final Deque<Runnable> background = new ArrayDeque<>();
    private final List<RegisterQuery> asked = new ArrayList<>();
    private final List<Optional<RuntimeException>> told = new ArrayList<>();
    private final RegisterRows rows = new RegisterRows(this::answer, background::add, Runnable::run, told::add);

    @Test
    void rowsAreFetchedPageByPageWhenTheyAreLookedAt() {
        rows.reload();
        work();
        assertEquals(JOBS, rows.total());
        assertEquals("job 5", rows.row(5).orElseThrow().number());
        assertEquals(1, asked.size());
        assertTrue(rows.row(950).isEmpty());
        assertTrue(rows.row(951).isEmpty());
        work();
        assertEquals("job 950", rows.row(950).orElseThrow().number());
        assertEquals(2, asked.size(), "one page, one question");
    }

    @Test
    void anAnswerToAnEarlierFilterIsDropped() {
        rows.query("a", RegisterSort.NEWEST_FIRST);
        rows.query("ab", RegisterSort.NEWEST_FIRST);
        work();
        assertEquals(2, asked.size());
        assertEquals("ab", rows.row(0).orElseThrow().customer());
        assertEquals(1, told.size());
    }

    @Test
    void aFailureIsToldAndTheRowsKnownStay() {
        rows.reload();
        work();
        rows.query("boom", RegisterSort.NEWEST_FIRST);
        work();
        assertTrue(told.get(1).isPresent());
        assertEquals("job 5", rows.row(5).orElseThrow().number());
    }

    private RegisterSlice answer(RegisterQuery q) {
        asked.add(q);
        if (q.text().equals("boom")) {
            throw new IllegalStateException("the disk is gone");
        }
        return new RegisterSlice(JOBS, IntStream.range(q.offset(), Math.min(JOBS, q.offset() + q.limit()))
                .mapToObj(i -> new RegisterRow("id" + i, "job " + i, q.text(), "", "", "", null, null, false)).toList());
    }

    private void work() {
        while (!background.isEmpty()) {
            background.poll().run();
        }
    }
}
