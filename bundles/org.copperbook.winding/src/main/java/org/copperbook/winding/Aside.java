package org.copperbook.winding;

import java.util.concurrent.ForkJoinPool;
import java.util.function.Consumer;
import java.util.function.Function;
import org.copperbook.desk.document.Coalescing;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;

/** What a section works out beside the window's thread: only the newest question is answered, and shown on the thread. */
public final class Aside {

    private Aside() {
    }

    /**
     * @param area    where the answer is shown; the one who shows it asks whether it is still there
     * @param compute answers a question, outside the window's thread
     * @param show    shows an answer, on the window's thread
     */
    public static <Q, A> Coalescing<Q, A> of(Composite area, Function<Q, A> compute, Consumer<A> show) {
        Display display = area.getDisplay();
        return new Coalescing<>(compute, ForkJoinPool.commonPool(), answer -> {
            if (!display.isDisposed()) {
                display.asyncExec(() -> show.accept(answer));
            }
        });
    }
}
