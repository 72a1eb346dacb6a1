package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.copperbook.jobs.rights.Right;
import org.copperbook.jobs.shop.Person;
import org.copperbook.store.Change;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.jdbc.AccountTable.Account;
import org.copperbook.store.people.Accounts;
import org.copperbook.store.people.LockOut;
import org.copperbook.store.people.SecretHash;
import org.copperbook.store.people.SignIn;

/** Accounts over their table. Secrets are hashed outside any transaction, so that nobody waits for it. */
final class JdbcAccounts implements Accounts {

    private final Database database;
    private final ChangeWatch watch;
    private final Listeners listeners;
    private final Tables tables;
    private final Guard guard;
    private final StaffRecord staff;
    private final Writing writing;

    JdbcAccounts(Database database, ChangeWatch watch, Listeners listeners, Tables tables, Guard guard,
            StaffRecord staff, Writing writing) {
        this.database = database;
        this.watch = watch;
        this.listeners = listeners;
        this.tables = tables;
        this.guard = guard;
        this.staff = staff;
        this.writing = writing;
    }

    @Override
    public boolean inForce() {
        return database.read(guard::inForce);
    }

    @Override
    public Set<String> withSecret() {
        return database.read(tables.accounts()::keys);
    }

    @Override
    public Optional<String> signedIn() {
        return guard.signedIn();
    }

    @Override
    public void signOut() {
        guard.signedIn(null);
    }

    @Override
    public SignIn signIn(String key, char[] secret) {
        try {
            SignIn result = tried(key, secret).said();
            if (result instanceof SignIn.Done) {
                guard.signedIn(key);
            }
            return result;
        } finally {
            Arrays.fill(secret, '\0');
        }
    }

    @Override
    public void begin(String owner, char[] secret) {
        try {
            fits(secret);
            SecretHash hash = SecretHash.of(secret);
            keep(c -> {
                if (guard.inForce(c)) {
                    throw Guard.refused(StoreText.of("secret.begun"));
                }
                Person person = tables.people().all(c).get(owner);
                if (person == null || !Guard.owns(person)) {
                    throw Guard.refused(StoreText.of("secret.ownerFirst", person == null ? owner : person.name()));
                }
                tables.accounts().put(c, owner, hash, writing.now());
                note(c, owner, "staff.secretFirst", owner);
            });
            guard.signedIn(owner);
        } finally {
            Arrays.fill(secret, '\0');
        }
    }

    @Override
    public void change(char[] old, char[] fresh) {
        try {
            String key = guard.signedIn().orElseThrow(() -> Guard.refused(StoreText.of("secret.nobody")));
            fits(fresh);
            Tried tried = tried(key, old);
            if (tried.said() instanceof SignIn.Refused refused) {
                throw Guard.refused(refused.message());
            }
            SecretHash hash = SecretHash.of(fresh);
            keep(c -> {
                if (!holds(c, key, tried.secret())) {
                    throw Guard.refused(StoreText.of("secret.changedMeanwhile"));
                }
                tables.accounts().put(c, key, hash, writing.now());
                note(c, key, "staff.secretChanged", key);
            });
        } finally {
            Arrays.fill(old, '\0');
            Arrays.fill(fresh, '\0');
        }
    }

    @Override
    public void reset(String key, char[] fresh) {
        try {
            fits(fresh);
            SecretHash hash = SecretHash.of(fresh);
            keep(c -> {
                if (!guard.inForce(c)) {
                    throw Guard.refused(StoreText.of("secret.ownerBegins"));
                }
                guard.may(c, Right.KEEP_PEOPLE);
                Person person = tables.people().all(c).get(key);
                if (person == null || person.roles().isEmpty()) {
                    throw new StoreException(Kind.NOT_FOUND, StoreText.of("secret.noPerson", key));
                }
                tables.accounts().put(c, key, hash, writing.now());
                note(c, guard.signedIn().orElseThrow(), "staff.secretGiven", key);
            });
        } finally {
            Arrays.fill(fresh, '\0');
        }
    }

    /**
     * Tries a secret. It is counted as wrong before it is looked at, and taken back when it was right: several programs
     * trying at once, or one killed in between, win no attempt.
     */
    private Tried tried(String key, char[] secret) {
        Attempt attempt = watch.write(c -> attempt(c, key));
        if (attempt.refusal() != null) {
            return new Tried(new SignIn.Refused(attempt.refusal()), null);
        }
        SecretHash kept = attempt.account().secret();
        if (secret.length > LONGEST || !kept.matches(secret)) {
            int failures = attempt.account().lockOut().failures() + 1;
            Duration wait = new LockOut(failures, null).left(writing.now());
            return new Tried(new SignIn.Refused(wait.isZero() ? StoreText.of("signIn.wrong", attempt.name())
                    : StoreText.of("signIn.wrongWait", attempt.name(), failures, inWords(wait))), null);
        }
        SecretHash now = kept.outdated() ? renewed(key, kept, SecretHash.of(secret)) : kept;
        watch.write(c -> {
            tables.accounts().succeeded(c, key);
            return key;
        });
        return new Tried(new SignIn.Done(key), now);
    }

    /** Keeps a stronger hash of the same secret, unless the server lets this workstation's login change none. */
    private SecretHash renewed(String key, SecretHash kept, SecretHash fresh) {
        try {
            return watch.write(c -> {
                if (!holds(c, key, kept)) {
                    return kept;
                }
                tables.accounts().put(c, key, fresh, writing.now());
                return fresh;
            });
        } catch (StoreException e) {
            if (e.kind() != Kind.FORBIDDEN) {
                throw e;
            }
            return kept;
        }
    }

    /** What became of an attempt, and the secret that was proved. */
    private record Tried(SignIn said, SecretHash secret) {
    }

    /** Whether a secret is still the one kept: while it was hashed anew, an owner may have set another or erased it. */
    private boolean holds(Connection c, String key, SecretHash secret) throws SQLException {
        return tables.accounts().find(c, key).map(Account::secret).filter(secret::equals).isPresent();
    }

    /** An attempt that may be made, or why not. */
    private record Attempt(Account account, String name, String refusal) {
    }

    private Attempt attempt(Connection c, String key) throws SQLException {
        Person person = tables.people().all(c).get(key);
        if (person == null || !person.active() || person.roles().isEmpty()) {
            return new Attempt(null, key, StoreText.of("signIn.notHere", person == null ? key : person.name()));
        }
        Optional<Account> account = tables.accounts().find(c, key);
        if (account.isEmpty()) {
            return new Attempt(null, key, StoreText.of("signIn.noSecret", person.name()));
        }
        LockOut lock = account.get().lockOut();
        Instant now = writing.now();
        Duration left = lock.left(now);
        if (!left.isZero()) {
            if (lock.clockSetBack(now)) {
                tables.accounts().failed(c, key, lock.failures(), now);
            }
            return new Attempt(null, key, StoreText.of(lock.clockSetBack(now) ? "signIn.clock" : "signIn.wait",
                    person.name(), lock.failures(), inWords(left)));
        }
        tables.accounts().failed(c, key, lock.failures() + 1, now);
        return new Attempt(account.get(), person.name(), null);
    }

    private static String inWords(Duration wait) {
        long seconds = wait.plusMillis(999).toSeconds();
        return seconds < 120 ? StoreText.of("signIn.seconds", seconds)
                : StoreText.of("signIn.minutes", (seconds + 59) / 60);
    }

    private static void fits(char[] secret) {
        if (secret.length < SHORTEST) {
            throw new StoreException(Kind.BAD_SECRET, StoreText.of("secret.short", SHORTEST));
        }
        if (secret.length > LONGEST) {
            throw new StoreException(Kind.BAD_SECRET, StoreText.of("secret.long", LONGEST));
        }
    }

    private void note(Connection c, String who, String what, String key) throws SQLException {
        staff.note(c, who, StoreText.of(what, key), writing.now());
    }

    private interface Step {
        void on(Connection c) throws SQLException;
    }

    private void keep(Step step) {
        watch.write(c -> {
            step.on(c);
            tables.people().changed(c);
            return null;
        });
        listeners.tell(new Change(JobStore.SHOP, Change.PEOPLE, false));
    }
}
