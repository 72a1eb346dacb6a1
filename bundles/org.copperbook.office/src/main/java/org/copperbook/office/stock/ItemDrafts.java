package org.copperbook.office.stock;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.store.JobStore;
import org.copperbook.store.UserFolders;
import org.copperbook.store.journal.CrashJournal;
import org.copperbook.store.journal.JournalEntry;
import org.copperbook.store.journal.LeftBehind;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Display;

/**
 * What was typed about items and not kept yet, by code; an empty code stands for a new item. In memory it outlives the page; in
 * the journal of what is typed and not saved it outlives the program. For the window's thread; the disk is asked on another.
 */
final class ItemDrafts {

    private static final long PAUSE_MILLIS = 250;
    /** No code begins so. */
    private static final String NEW = "-";

    private final DeskSession session;
    private final Display display;
    private final String store;
    private final ObjectMapper mapper;
    private final CrashJournal journal = new CrashJournal(UserFolders.current().journal());
    private final Map<String, ItemDraft> drafts = new HashMap<>();
    private final Map<String, JournalEntry> waiting = new HashMap<>();
    private final ScheduledExecutorService writer = Executors.newSingleThreadScheduledExecutor(r -> {
        Thread t = new Thread(r, "copperbook-item-journal");
        t.setDaemon(true);
        return t;
    });

    private ItemDrafts(Display display, DeskSession session) {
        this.session = session;
        this.display = display;
        store = session.store().file().toString();
        mapper = session.json().mapper();
    }

    /** Those of the window. */
    static ItemDrafts of(Display display, DeskSession session) {
        String name = ItemDrafts.class.getName();
        if (display.getData(name) instanceof ItemDrafts there && there.store.equals(session.store().file().toString())) {
            return there;
        }
        ItemDrafts made = new ItemDrafts(display, session);
        display.setData(name, made);
        return made;
    }

    /** What was typed about an item. */
    Optional<ItemDraft> of(String code) {
        return Optional.ofNullable(drafts.get(name(code)));
    }

    /** Keeps what is typed about an item now; nothing is kept of what is no other than it was. */
    void follow(String code, ItemDraft now) {
        String name = name(code);
        if (!now.saysNothing() && !now.equals(drafts.put(name, now))) {
            later(name, new JournalEntry(store, JobStore.SHOP, key(name).toString(), 0, session.who().orElse(null),
                    Instant.now(), text(now)));
        } else if (now.saysNothing() && drafts.remove(name) != null) {
            later(name, null);
        }
    }

    /** What was typed about an item is kept, or thrown away. */
    void forget(String code) {
        if (drafts.remove(name(code)) != null) {
            later(name(code), null);
        }
    }

    /** Writes at once what waits to be written: the page is closed, and the program may be after it. */
    void write() {
        writer.execute(this::writeWaiting);
    }

    /**
     * Takes over what a program that runs no more has left.
     *
     * @param then told the codes of these items in the window's thread, that of the one typed about last first, if there are any
     */
    void takeOver(Consumer<List<String>> then) {
        writer.execute(() -> {
            Map<String, ItemDraft> left = new HashMap<>();
            List<String> codes = new ArrayList<>();
            try {
                for (LeftBehind l : journal.left(store).entries()) {
                    PartKey key = PartKey.parse(l.entry().part());
                    if (key.kind() == PartKind.STOCK_ITEM && journal.takeOver(l)) {
                        left.put(key.name(), mapper.readValue(l.entry().state(), ItemDraft.class));
                        codes.add(key.name().equals(NEW) ? "" : key.name());
                    }
                }
            } catch (IOException | IllegalArgumentException e) {
                ILog.of(ItemDrafts.class).error("what was typed about items could not be read", e);
            }
            if (!codes.isEmpty() && !display.isDisposed()) {
                display.asyncExec(() -> {
                    left.forEach(drafts::putIfAbsent);
                    then.accept(codes);
                });
            }
        });
    }

    private static String name(String code) {
        return code.isEmpty() ? NEW : code.toLowerCase(Locale.ROOT);
    }

    private static PartKey key(String name) {
        return new PartKey(PartKind.STOCK_ITEM, name);
    }

    private String text(ItemDraft draft) {
        try {
            return mapper.writeValueAsString(draft);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("two lists of texts are always JSON", e);
        }
    }

    /** @param entry null to take it out */
    private void later(String name, JournalEntry entry) {
        boolean asked;
        synchronized (waiting) {
            asked = !waiting.isEmpty();
            waiting.put(name, entry);
        }
        if (!asked) {
            writer.schedule(this::writeWaiting, PAUSE_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    private void writeWaiting() {
        Map<String, JournalEntry> now;
        synchronized (waiting) {
            now = new HashMap<>(waiting);
            waiting.clear();
        }
        now.forEach((name, entry) -> {
            try {
                if (entry == null) {
                    journal.discard(store, JobStore.SHOP, key(name).toString());
                } else {
                    journal.keep(entry);
                }
            } catch (IOException e) {
                ILog.of(ItemDrafts.class).error("what was typed about the item " + name + " could not be kept", e);
            }
        });
    }
}
