package org.copperbook.desk.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;

class CoalescingTest {

    private final Deque<Runnable> background = new ArrayDeque<>();
    private final List<Integer> computed = new ArrayList<>();

    @Test
    void onlyTheNewestInputWaitsWhileOneIsComputed() {
        Coalescing<Integer, Integer> c = new Coalescing<>(i -> i * 10, background::add, computed::add);
        c.ask(1);
        c.ask(2);
        c.ask(3);
        assertEquals(1, background.size());
        background.poll().run();
        assertEquals(List.of(30), computed);
        c.ask(4);
        background.poll().run();
        assertEquals(List.of(30, 40), computed);
    }

    @Test
    void anInputThatComesDuringTheComputationIsComputedAfterIt() {
        List<Coalescing<Integer, Integer>> self = new ArrayList<>();
        Coalescing<Integer, Integer> c = new Coalescing<>(i -> {
            if (i == 1) {
                self.get(0).ask(2);
                self.get(0).ask(3);
            }
            return i;
        }, background::add, computed::add);
        self.add(c);
        c.ask(1);
        background.poll().run();
        assertEquals(List.of(1, 3), computed);
        assertEquals(0, background.size());
    }

    @Test
    void aFailureDoesNotStopWhatComesAfterIt() {
        Coalescing<Integer, Integer> c = new Coalescing<>(i -> 10 / i, background::add, computed::add);
        c.ask(0);
        try {
            background.poll().run();
        } catch (ArithmeticException expected) {
            assertEquals("/ by zero", expected.getMessage());
        }
        c.ask(5);
        background.poll().run();
        assertEquals(List.of(2), computed);
    }
}
