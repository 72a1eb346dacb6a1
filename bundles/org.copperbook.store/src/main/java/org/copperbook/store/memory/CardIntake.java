package org.copperbook.store.memory;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.winding.OldCard;

/**
 * Takes in many cards in blocks, each whole or not at all, so that other people's saves get their turn between them.
 * Stopped halfway, the blocks done so far are in; taken in again, the same cards are recognised.
 */
public final class CardIntake {

    /** Cards in one transaction. */
    public static final int BLOCK = 250;

    private final WindingMemory memory;
    private final String who;
    private final String why;
    private final SameCard same;

    /**
     * @param who  person key
     * @param why  reason, kept with every card
     * @param same what to do when a number is in with other content
     */
    public CardIntake(WindingMemory memory, String who, String why, SameCard same) {
        this.memory = memory;
        this.who = who;
        this.why = why;
        this.same = same;
    }

    /** Follows the intake. */
    public interface Progress {
        /**
         * @param handled cards handled so far, all of them safe
         * @return whether to go on
         */
        boolean goOn(int handled);

        /** Tells what became of a card. */
        void became(OldCard card, CardTaken taken);
    }

    /**
     * What became of all cards.
     *
     * @param counts  how many of each
     * @param stopped whether it was stopped before the end
     */
    public record Outcome(Map<CardTaken, Integer> counts, boolean stopped) {

        public Outcome {
            counts = Map.copyOf(counts);
        }

        /** How many became this. */
        public int count(CardTaken taken) {
            return counts.getOrDefault(taken, 0);
        }
    }

    /** Takes in the cards in the order given. */
    public Outcome run(Iterator<OldCard> cards, Progress progress) {
        Map<CardTaken, Integer> counts = new EnumMap<>(CardTaken.class);
        int handled = 0;
        while (cards.hasNext()) {
            if (!progress.goOn(handled)) {
                return new Outcome(counts, true);
            }
            List<OldCard> block = new ArrayList<>();
            while (block.size() < BLOCK && cards.hasNext()) {
                block.add(cards.next());
            }
            List<CardTaken> taken = memory.takeIn(block, who, why, same);
            for (int i = 0; i < taken.size(); i++) {
                counts.merge(taken.get(i), 1, Integer::sum);
                progress.became(block.get(i), taken.get(i));
            }
            handled += block.size();
        }
        progress.goOn(handled);
        return new Outcome(counts, false);
    }
}
