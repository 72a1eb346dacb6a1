package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;

/** Holds counts of an old winding to who counted: nobody adds, changes or takes out a count in somebody else's name. */
public final class CountsGuard {

    private CountsGuard() {
    }

    /**
     * Whose count a save would touch without being theirs.
     *
     * @param before the winding as kept, or null
     * @param next   the winding to be kept instead
     * @param who    key of the person who is signed in
     * @return key of that person, empty text when the count names nobody; nothing when the save may be made
     */
    public static Optional<String> touched(WindingData before, WindingData next, String who) {
        List<TurnCount> changed = new ArrayList<>();
        List<TurnCount> was = before == null ? List.of() : before.counts();
        without(was, next.counts()).forEach(changed::add);
        without(next.counts(), was).forEach(changed::add);
        return changed.stream().map(c -> c.by() == null ? "" : c.by()).filter(by -> !by.equals(who)).findFirst();
    }

    private static List<TurnCount> without(List<TurnCount> all, List<TurnCount> others) {
        List<TurnCount> left = new ArrayList<>(all);
        others.forEach(left::remove);
        return left;
    }
}
