package org.copperbook.store.mirror;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.people.Accounts;
import org.copperbook.store.people.SignIn;

/**
 * Who is signed in at the server's store. Nobody can sign in without it, because secrets are not copied; who is signed in
 * when it goes stays so. A file beside the copy notes whether people sign in at all, so that a start without the server does
 * not take everybody for somebody.
 */
final class MirroredAccounts implements Accounts {

    private static final System.Logger LOG = System.getLogger(MirroredAccounts.class.getName());

    private final MirroredStore store;

    MirroredAccounts(MirroredStore store) {
        this.store = store;
    }

    @Override
    public boolean inForce() {
        if (store.unreachable().isEmpty()) {
            try {
                boolean now = store.onServer(s -> s.accounts().inForce());
                note(now);
                return now;
            } catch (StoreException e) {
                if (e.kind() != Kind.UNREACHABLE) {
                    throw e;
                }
            }
        }
        return Files.exists(noted());
    }

    private Path noted() {
        return store.copyFile().resolveSibling(store.copyFile().getFileName() + ".secrets");
    }

    private void note(boolean now) {
        try {
            if (!now) {
                Files.deleteIfExists(noted());
            } else if (!Files.exists(noted())) {
                Files.createFile(noted());
            }
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "whether people sign in could not be noted", e);
        }
    }

    @Override
    public Set<String> withSecret() {
        return store.onServer(s -> s.accounts().withSecret());
    }

    @Override
    public Optional<String> signedIn() {
        return store.server().map(JobStore::accounts).flatMap(Accounts::signedIn);
    }

    @Override
    public SignIn signIn(String key, char[] secret) {
        try {
            return store.onServer(s -> s.accounts().signIn(key, secret));
        } finally {
            Arrays.fill(secret, '\0');
        }
    }

    @Override
    public void signOut() {
        store.server().map(JobStore::accounts).ifPresent(Accounts::signOut);
    }

    @Override
    public void begin(String owner, char[] secret) {
        wiping(() -> store.onServer(s -> {
            s.accounts().begin(owner, secret);
            return owner;
        }), secret);
    }

    @Override
    public void change(char[] old, char[] fresh) {
        wiping(() -> store.onServer(s -> {
            s.accounts().change(old, fresh);
            return s;
        }), old, fresh);
    }

    @Override
    public void reset(String key, char[] fresh) {
        wiping(() -> store.onServer(s -> {
            s.accounts().reset(key, fresh);
            return key;
        }), fresh);
    }

    /** A secret is wiped also when the server could not be asked. */
    private static void wiping(Runnable work, char[]... secrets) {
        try {
            work.run();
        } finally {
            for (char[] secret : secrets) {
                Arrays.fill(secret, '\0');
            }
        }
    }
}
