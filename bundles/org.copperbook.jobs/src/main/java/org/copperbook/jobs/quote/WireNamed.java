package org.copperbook.jobs.quote;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.wire.WireSize;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.winding.InsulatedWire;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.jobs.winding.WireInHand;

/**
 * Knows the winding wire among the lines of a quote. Lines written before sizes had a field of their own are known by their
 * words: material in kilograms that names a size of a winding of the job, in millimetres.
 */
public final class WireNamed {

    private static final Pattern MILLIMETRES = Pattern.compile("(?<![\\d.,])(\\d{1,2}(?:[.,]\\d{1,4})?)\\s*mm\\b(?!²)");

    private final Set<WireSize> wound;

    /** @param job whose windings say which sizes are meant */
    public WireNamed(Job job) {
        wound = Arrays.stream(WindingRole.values())
                .flatMap(r -> Stream.concat(job.windingAsFound(r).stream(), job.windingAsWound(r).stream()))
                .flatMap(w -> Stream.concat(w.wire().stream(), w.groups().stream().flatMap(g -> g.wire().stream())))
                .map(WireInHand::size).map(InsulatedWire::round).flatMap(Optional::stream).collect(Collectors.toSet());
    }

    /** Whether a line is winding wire. */
    public boolean isWire(QuoteLine line) {
        if (line.kind() != QuoteLine.Kind.MATERIAL) {
            return false;
        }
        if (line.wire() != null && !line.wire().isBlank()) {
            return true;
        }
        if (line.text() == null || !isByMass(line)) {
            return false;
        }
        Matcher sizes = MILLIMETRES.matcher(line.text());
        return sizes.results().anyMatch(m -> InsulatedWire.round(m.group(1).replace(',', '.') + " mm")
                .filter(wound::contains).isPresent());
    }

    /** Whether a line is winding wire whose quantity is its mass in kilograms. */
    public boolean isKilograms(QuoteLine line) {
        return isByMass(line) && isWire(line);
    }

    private static boolean isByMass(QuoteLine line) {
        return line.unit() != null && line.unit().strip().equalsIgnoreCase("kg");
    }
}
