package org.copperbook.office;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** What a page does behind the window, one after the other on a thread of its own, and how the page hears of it. */
public final class Behind {

    private final Control page;
    private final Display display;
    private final Consumer<RuntimeException> failed;
    private final ExecutorService thread;

    /**
     * @param name   of the thread
     * @param page   nothing is told once it is disposed
     * @param failed told in the window's thread why something could not be done
     */
    public Behind(String name, Control page, Consumer<RuntimeException> failed) {
        this.page = page;
        // Asked now, for a page that was closed meanwhile does not tell its display any more.
        this.display = page.getDisplay();
        this.failed = failed;
        thread = Executors.newSingleThreadExecutor(r -> {
            Thread t = new Thread(r, name);
            t.setDaemon(true);
            return t;
        });
    }

    /** The thread, for parts of the page that tell of their failures by themselves. */
    public ExecutorService thread() {
        return thread;
    }

    /** Does something behind the window. */
    public void run(Runnable work) {
        try {
            thread.execute(() -> {
                try {
                    work.run();
                } catch (RuntimeException e) {
                    later(() -> failed.accept(e));
                }
            });
        } catch (RejectedExecutionException closed) {
            ILog.of(Behind.class).info("a page was closed before it was read");
        }
    }

    /** Does something in the window's thread, unless the page is gone by then; from any thread. */
    public void later(Runnable then) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!page.isDisposed()) {
                    then.run();
                }
            });
        }
    }

    /** The page is closed. */
    public void close() {
        thread.shutdownNow();
    }
}
