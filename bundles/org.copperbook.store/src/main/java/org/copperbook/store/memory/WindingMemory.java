package org.copperbook.store.memory;

import java.util.List;
import org.copperbook.jobs.winding.OldCard;

/**
 * Finds past windings, and takes in cards of old ones. The list behind it is derived from the revisions. Every method
 * may throw {@link org.copperbook.store.StoreException}; none may be called from a thread that must not wait for a disk.
 */
public interface WindingMemory {

    /** How many windings of any kind are remembered. */
    int size();

    /**
     * The windings nearest to what is asked: first those of the same serial number, then by distance of the figures,
     * then the newest. Memory use does not grow with the number of windings kept.
     *
     * @param wanted how many, 1 to 1000
     */
    List<FoundWinding> nearest(Asked asked, int wanted);

    /**
     * Takes in cards in one transaction: all of the list or none. A card is known by its number, or by its content when
     * it has no number; one that is in already is left as it is, so that a file can be taken in twice.
     *
     * @param who  person key
     * @param same what to do when a number is in with other content
     * @return what became of each, in the order given
     */
    List<CardTaken> takeIn(List<OldCard> cards, String who, String why, SameCard same);

    /** Makes the derived list anew. */
    void rebuild();
}
