package org.copperbook.desk.photo;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.store.JobStore;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;

/**
 * Small pictures of photos, made once in the background when they are first looked at. The last ones stay in memory;
 * they go with the display.
 */
final class Thumbnails {

    /** Edge of the box that a small picture fits into, pixels. */
    static final int EDGE = 160;
    private static final int KEPT = 240;
    private static final String KEY = "org.copperbook.photo.thumbnails";

    private final Display display;
    private final Map<String, Optional<Image>> made = new LinkedHashMap<>(16, 0.75f, true);
    private final Map<String, Runnable> waiting = new LinkedHashMap<>();
    private final Set<String> working = new HashSet<>();
    private boolean scheduled;

    private Thumbnails(Display display) {
        this.display = display;
        display.disposeExec(() -> made.values().forEach(i -> i.ifPresent(Image::dispose)));
    }

    static Thumbnails of(Display display) {
        if (display.getData(KEY) instanceof Thumbnails t) {
            return t;
        }
        Thumbnails t = new Thumbnails(display);
        display.setData(KEY, t);
        return t;
    }

    /**
     * The small picture of a photo.
     *
     * @param then told when it has been made, if it is not there yet
     * @return null while it is being made; empty when the photo cannot be shown
     */
    Optional<Image> get(JobStore store, String hash, Runnable then) {
        Optional<Image> there = made.get(hash);
        if (there == null && !working.contains(hash)) {
            waiting.put(hash, then);
            if (!scheduled) {
                scheduled = true;
                display.asyncExec(() -> make(store));
            }
        }
        return there;
    }

    /** All that was asked for meanwhile is made in one job, so that a strip of photos makes one and not a hundred. */
    private void make(JobStore store) {
        scheduled = false;
        Map<String, Runnable> now = new LinkedHashMap<>(waiting);
        waiting.clear();
        working.addAll(now.keySet());
        new DeskJob(DeskWords.text("photo.making"), monitor -> now.forEach((hash, then) -> {
            Optional<ImageData> small = monitor.isCanceled() ? Optional.empty()
                    : store.photo(hash).flatMap(bytes -> Pixels.shown(bytes, EDGE, EDGE));
            if (!display.isDisposed()) {
                display.asyncExec(() -> made(hash, small, then));
            }
        })).schedule();
    }

    private void made(String hash, Optional<ImageData> small, Runnable then) {
        working.remove(hash);
        made.put(hash, small.map(d -> new Image(display, d)));
        if (made.size() > KEPT) {
            made.remove(made.keySet().iterator().next()).ifPresent(Image::dispose);
        }
        then.run();
    }
}
