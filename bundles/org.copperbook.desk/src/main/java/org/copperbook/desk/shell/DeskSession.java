package org.copperbook.desk.shell;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.store.Change;
import org.copperbook.store.JobStore;
import org.copperbook.store.postgres.ServerConnection;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.prefs.BackingStoreException;
import org.copperbook.desk.Desk;
import org.eclipse.core.runtime.ILog;

/**
 * One window's work on one store: the store, the shop as last read, and who works here. The workbench holds it; parts
 * get it with {@link #ofWorkbench()}.
 */
public final class DeskSession implements AutoCloseable {

    private static final String WHO = "who";

    private final JobStore store;
    private final boolean demo;
    private final DeskArguments arguments;
    private final Optional<ServerConnection> server;
    private final PartJson json = new PartJson();
    private final ExecutorService background = Executors.newSingleThreadExecutor(r -> {
        Thread t = new Thread(r, "copperbook-checks");
        t.setDaemon(true);
        return t;
    });
    private final List<Runnable> shopListeners = new CopyOnWriteArrayList<>();
    private final List<Consumer<String>> sayings = new CopyOnWriteArrayList<>();
    private final JobStore.Listening listening;
    private volatile Shop shop;
    private volatile boolean begun;
    private final Set<String> waiting = ConcurrentHashMap.newKeySet();
    private volatile boolean secrets;

    /**
     * Begins work on a store.
     *
     * @param demo   whether it is the invented demo workshop, which every part of the window then says
     * @param server the server the store is on; empty when it is a file
     */
    public DeskSession(JobStore store, boolean demo, DeskArguments arguments, Optional<ServerConnection> server) {
        this.store = store;
        this.demo = demo;
        this.arguments = arguments;
        this.server = server;
        readShop();
        this.listening = store.onChange(this::changed);
    }

    /** The session of the running workbench. */
    public static DeskSession ofWorkbench() {
        return PlatformUI.getWorkbench().getService(DeskSession.class);
    }

    public JobStore store() {
        return store;
    }

    /** The server the store is on; empty when it is a file on this computer. */
    public Optional<ServerConnection> server() {
        return server;
    }

    public PartJson json() {
        return json;
    }

    public DeskArguments arguments() {
        return arguments;
    }

    /** The shop as last read; read anew in the background when somebody changes it. */
    public Shop shop() {
        return shop;
    }

    /** Whether this is the invented demo workshop. */
    public boolean isDemo() {
        return demo || Boolean.TRUE.equals(shop.workshop().demo());
    }

    /** Whether the workshop has been set up: its settings were saved once. */
    public boolean isBegun() {
        return begun;
    }

    /** How many jobs of this window wait for the server to be saved. */
    public int waiting() {
        return waiting.size();
    }

    /** Notes that a job waits for the server, or no longer; for the window's thread. */
    public void waits(String jobId, boolean now) {
        if (now ? waiting.add(jobId) : waiting.remove(jobId)) {
            shopListeners.forEach(Runnable::run);
        }
    }

    /** Where short computations run; one thread, so that they never crowd the machine. */
    public ExecutorService background() {
        return background;
    }

    /** Whether people sign in with a secret; otherwise they say by name who works here. */
    public boolean hasSecrets() {
        return secrets;
    }

    /** Person key of who works here: who is signed in or, without secrets, who said so and is known. */
    public Optional<String> who() {
        if (secrets) {
            return store.accounts().signedIn().filter(shop.people()::containsKey);
        }
        String key = preferences().get(whoKey(), "");
        return shop.people().containsKey(key) ? Optional.of(key) : Optional.empty();
    }

    /**
     * Says who works here; remembered for this store.
     *
     * @throws IllegalStateException when people sign in with a secret
     */
    public void who(String key) {
        if (secrets) {
            throw new IllegalStateException("who works here signs in, and is not just named");
        }
        preferences().put(whoKey(), key);
        try {
            preferences().flush();
        } catch (BackingStoreException e) {
            ILog.of(DeskSession.class).warn("who works here could not be remembered", e);
        }
        shopListeners.forEach(Runnable::run);
    }

    /** Says something in the window's status line, whichever part is active; for the window's thread. */
    public void say(String words) {
        sayings.forEach(s -> s.accept(words));
    }

    void onSaid(Consumer<String> listener) {
        sayings.add(listener);
    }

    void removeOnSaid(Consumer<String> listener) {
        sayings.remove(listener);
    }

    /** Tells the listener, from any thread, when the shop or who works here changed. */
    public void onShop(Runnable listener) {
        shopListeners.add(listener);
    }

    public void removeOnShop(Runnable listener) {
        shopListeners.remove(listener);
    }

    /** Tells everybody that somebody signed in or out, or that secrets came into force; for background threads. */
    public void signedInOrOut() {
        readShop();
        shopListeners.forEach(Runnable::run);
    }

    /** Reads the shop now; for background threads. */
    public void readShop() {
        secrets = store.accounts().inForce();
        shop = store.shop();
        begun = store.current(JobStore.SHOP, PartKey.of(PartKind.WORKSHOP)).isPresent();
    }

    @Override
    public void close() {
        listening.close();
        background.shutdownNow();
        store.close();
    }

    private void changed(Change change) {
        if (JobStore.SHOP.equals(change.jobId()) && !background.isShutdown()) {
            background.execute(() -> {
                readShop();
                shopListeners.forEach(Runnable::run);
            });
        }
    }

    private String whoKey() {
        return WHO + "." + Integer.toHexString(store.file().toString().hashCode());
    }

    private static IEclipsePreferences preferences() {
        return InstanceScope.INSTANCE.getNode(Desk.BUNDLE);
    }
}
