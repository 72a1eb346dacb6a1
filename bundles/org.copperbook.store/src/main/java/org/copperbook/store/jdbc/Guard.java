package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.CountsGuard;
import org.copperbook.jobs.check.SignOffsGuard;
import org.copperbook.jobs.rights.Right;
import org.copperbook.jobs.rights.Rights;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.store.Intake;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;

/**
 * Refuses what the person who is signed in may not do. To be asked inside the writing transaction, so that a right taken
 * away elsewhere counts at once. While nobody of the shop has a secret nothing is refused.
 */
final class Guard {

    private final Tables tables;
    private final Reading reading;
    private volatile String signedIn;

    Guard(Tables tables, Reading reading) {
        this.tables = tables;
        this.reading = reading;
    }

    Optional<String> signedIn() {
        return Optional.ofNullable(signedIn);
    }

    void signedIn(String key) {
        signedIn = key;
    }

    boolean inForce(Connection c) throws SQLException {
        return tables.accounts().any(c);
    }

    /** Refuses while nobody is signed in: a photo alone says nothing, and the part that names it asks for the right. */
    void somebody(Connection c) throws SQLException {
        if (inForce(c)) {
            person(c, Right.COPY_NAMEPLATE);
        }
    }

    /** Refuses unless who is signed in has the right. */
    void may(Connection c, Right right) throws SQLException {
        if (inForce(c)) {
            Optional<String> refused = Rights.refusal(person(c, right), right);
            if (refused.isPresent()) {
                throw refused(refused.get());
            }
        }
    }

    /** The same for a save in somebody's name, which must be that of who is signed in. */
    void may(Connection c, Right right, String who) throws SQLException {
        if (inForce(c)) {
            Person person = person(c, right);
            if (!person.key().equals(who)) {
                Person other = tables.people().all(c).get(who);
                throw refused(StoreText.of("rights.notYours", person.name(), other == null ? who : other.name()));
            }
            may(c, right);
        }
    }

    /** Refuses a part that who is signed in may not save; sign-offs are held to the rules of signing as well. */
    void maySave(Connection c, String jobId, PartKey key, Part part, String who) throws SQLException {
        may(c, Right.toSave(key.kind()), who);
        if (part instanceof SignOffs next && inForce(c)) {
            Job job = reading.load(c, jobId);
            List<String> reasons = SignOffsGuard.refusals(job, reading.shop(c), next, who);
            if (!reasons.isEmpty()) {
                throw refused(StoreText.of("rights.signing", String.join(" ", reasons)));
            }
        }
        if (part instanceof WindingData next && inForce(c)) {
            WindingData before = reading.current(c, jobId, key).map(s -> (WindingData) s.part()).orElse(null);
            Optional<String> whose = CountsGuard.touched(before, next, who);
            if (whose.isPresent()) {
                Person other = tables.people().all(c).get(whose.get());
                throw refused(StoreText.of("rights.counts", other == null ? whose.get() : other.name()));
            }
        }
    }

    /** Refuses an intake in which there is anything that who is signed in may not take in. */
    void mayTakeIn(Connection c, Intake intake, String who) throws SQLException {
        if (!intake.jobs().isEmpty()) {
            may(c, Right.TAKE_IN_JOBS, who);
        }
        if (!intake.photos().isEmpty()) {
            somebody(c);
        }
        for (PartKey key : intake.shopParts().keySet()) {
            may(c, key.kind() == PartKind.STOCK_ITEM ? Right.KEEP_STOCK : Right.toSave(key.kind()), who);
        }
        if (!intake.stockMoves().isEmpty()) {
            may(c, Right.KEEP_STOCK, who);
        }
        for (Person p : intake.people()) {
            may(c, Right.KEEP_PEOPLE, who);
            stillAnOwner(c, p);
        }
    }

    /**
     * Refuses a change of a person: contacts and the shop's own people are two rights.
     *
     * @return whether it changes the shop's own people
     */
    boolean mayKeep(Connection c, Person person, String who) throws SQLException {
        Person before = tables.people().all(c).get(person.key());
        boolean staff = !person.roles().isEmpty() || before != null && !before.roles().isEmpty();
        if (inForce(c)) {
            may(c, staff ? Right.KEEP_PEOPLE : Right.KEEP_CONTACTS, who);
            stillAnOwner(c, person);
        }
        return staff;
    }

    /** Refuses the erasure of the only owner who could let others in; nobody could then. */
    void mayErase(Connection c, String key) throws SQLException {
        may(c, Right.ERASE);
        Person person = tables.people().all(c).get(key);
        if (person != null) {
            stillAnOwner(c, new Person(key, person.name(), Set.of(), null, null, false));
        }
    }

    /** Refuses to make the only owner with a secret into somebody who is none. */
    private void stillAnOwner(Connection c, Person changed) throws SQLException {
        Set<String> secrets = tables.accounts().keys(c);
        if (!secrets.contains(changed.key()) || owns(changed)) {
            return;
        }
        boolean another = tables.people().all(c).values().stream()
                .anyMatch(p -> !p.key().equals(changed.key()) && owns(p) && secrets.contains(p.key()));
        if (!another) {
            throw refused(StoreText.of("rights.lastOwner", changed.name()));
        }
    }

    static boolean owns(Person p) {
        return p.active() && p.roles().contains(Role.OWNER);
    }

    private Person person(Connection c, Right right) throws SQLException {
        String key = signedIn;
        Person person = key == null ? null : tables.people().all(c).get(key);
        if (person == null) {
            throw refused(Rights.signInFirst(right));
        }
        return person;
    }

    static StoreException refused(String message) {
        return new StoreException(Kind.NOT_ALLOWED, message);
    }
}
