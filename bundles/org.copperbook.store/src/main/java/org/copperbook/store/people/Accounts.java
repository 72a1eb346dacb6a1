package org.copperbook.store.people;

import java.util.Optional;
import java.util.Set;

/**
 * Who is signed in, and the secrets of the people of the shop. While nobody has a secret everybody works by name as
 * before. From the moment an owner has one, every change needs somebody who is signed in and may make it; the store
 * itself refuses the rest, whichever program asks.
 *
 * <p>Hashing takes a good part of a second: none of this for a thread that must not wait. Every secret handed in is wiped
 * before the method returns or throws.
 *
 * <p>This keeps people of one workshop apart who work with this program; it is no encryption. Who can write the store's file
 * with other means is not held back, and the audit tells only what does not fit the chain.
 */
public interface Accounts {

    /** Fewest characters of a secret: NIST SP 800-63B, 5.1.1.2. */
    int SHORTEST = 8;

    /** Most characters, so that nobody keeps the machine busy with a book. */
    int LONGEST = 256;

    /** Whether changes need a sign-in: somebody has a secret. */
    boolean inForce();

    /** Keys of the people who have a secret. */
    Set<String> withSecret();

    /** Who is signed in at this store in this program. */
    Optional<String> signedIn();

    /** Signs somebody in, in place of whoever was; a refusal leaves signed in who was. */
    SignIn signIn(String key, char[] secret);

    /** Nobody is signed in any more. */
    void signOut();

    /**
     * Gives the first secret, an owner's, and signs that owner in; from then on changes need a sign-in.
     *
     * @throws org.copperbook.store.StoreException NOT_ALLOWED when somebody has a secret already or the person is no
     *                                             owner; BAD_SECRET when the secret will not do
     */
    void begin(String owner, char[] secret);

    /**
     * Changes the secret of who is signed in. A wrong old one counts as a failed sign-in.
     *
     * @throws org.copperbook.store.StoreException NOT_ALLOWED when nobody is signed in or the old secret is wrong;
     *                                             BAD_SECRET when the new one will not do
     */
    void change(char[] old, char[] fresh);

    /**
     * Gives somebody a new secret, ends a wait, and needs nobody's old one; for an owner.
     *
     * @throws org.copperbook.store.StoreException NOT_ALLOWED when who is signed in may not; NOT_FOUND when there is no
     *                                             such person of the shop; BAD_SECRET when the secret will not do
     */
    void reset(String key, char[] fresh);
}
