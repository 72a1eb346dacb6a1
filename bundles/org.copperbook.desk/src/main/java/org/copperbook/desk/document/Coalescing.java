package org.copperbook.desk.document;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Computes something from the newest input off the calling thread. While one computation runs at most one input waits;
 * a newer one replaces it, so that fast typing never queues up work.
 *
 * @param <I> input, immutable
 * @param <O> outcome
 */
public final class Coalescing<I, O> {

    private final Function<I, O> compute;
    private final Executor background;
    private final Consumer<O> sink;
    private I waiting;
    private boolean running;

    /**
     * @param compute    the computation
     * @param background where it runs
     * @param sink       gets each outcome, on the background thread
     */
    public Coalescing(Function<I, O> compute, Executor background, Consumer<O> sink) {
        this.compute = compute;
        this.background = background;
        this.sink = sink;
    }

    /** Asks for the outcome of an input. */
    public void ask(I input) {
        synchronized (this) {
            waiting = input;
            if (running) {
                return;
            }
            running = true;
        }
        background.execute(this::run);
    }

    private void run() {
        while (true) {
            I next;
            synchronized (this) {
                next = waiting;
                waiting = null;
                if (next == null) {
                    running = false;
                    return;
                }
            }
            try {
                sink.accept(compute.apply(next));
            } catch (RuntimeException | Error e) {
                synchronized (this) {
                    running = false;
                }
                throw e;
            }
        }
    }
}
