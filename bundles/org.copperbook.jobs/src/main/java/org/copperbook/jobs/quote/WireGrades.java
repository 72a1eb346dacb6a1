package org.copperbook.jobs.quote;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.winding.InsulatedWire;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.jobs.winding.WireInHand;

/** Grades of enamel (IEC 60317) that windings name for their wire. */
public final class WireGrades {

    private WireGrades() {
    }

    /** The grades that the windings of a job name for a size, as wound where that is captured; none when they name none. */
    public static Set<Integer> of(Job job, String size) {
        return Arrays.stream(WindingRole.values())
                .flatMap(r -> job.windingAsWound(r).filter(w -> !w.wire().isEmpty()).or(() -> job.windingAsFound(r)).stream())
                .flatMap(w -> of(w, size).stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The grades that a winding names for a size; none when it names none. */
    static Set<Integer> of(WindingData winding, String size) {
        return Stream.concat(winding.wire().stream(), winding.groups().stream().flatMap(g -> g.wire().stream()))
                .filter(w -> w.grade() != null && InsulatedWire.isSame(size, w.size())).map(WireInHand::grade)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Whether wire of a grade may be wound where one of some grades is named: nothing speaks against what names no grade. */
    public static boolean fits(Integer grade, Set<Integer> named) {
        return named.isEmpty() || grade == null || named.contains(grade);
    }
}
