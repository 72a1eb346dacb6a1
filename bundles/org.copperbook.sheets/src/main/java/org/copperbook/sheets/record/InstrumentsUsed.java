package org.copperbook.sheets.record;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.winding.WindingData;

/** Which instruments a job names, and when each was last used on it (LocalDate.MIN when never stated). */
final class InstrumentsUsed {

    private final ZoneId zone;
    private final Map<String, LocalDate> last = new TreeMap<>();

    InstrumentsUsed(ZoneId zone) {
        this.zone = zone;
    }

    Map<String, LocalDate> of(Job job) {
        job.inspection().ifPresent(i -> {
            i.readings().forEach(this::use);
            i.excitationRuns().forEach(r -> use(r.instrument(), r.at()));
        });
        job.keys(PartKind.WINDING).forEach(k -> winding((WindingData) job.part(k).orElseThrow()));
        job.part(PartKind.CORE, CoreTest.class).ifPresent(t -> t.runs().forEach(r -> use(r.instrument(), r.at())));
        job.rectifier().ifPresent(this::rectifier);
        job.inProcess().ifPresent(p -> {
            p.readings().forEach(this::use);
            p.surges().forEach(s -> use(s.instrument(), s.at()));
            p.polarities().forEach(t -> use(t.instrument(), t.at()));
        });
        job.runUp().ifPresent(this::runUp);
        return last;
    }

    private void winding(WindingData w) {
        w.readings().forEach(this::use);
        w.groups().forEach(g -> use(g.resistance()));
    }

    private void rectifier(RectifierSet set) {
        set.positions().forEach(p -> {
            use(p.asFoundForward());
            use(p.asFoundReverse());
            use(p.asLeftForward());
            use(p.asLeftReverse());
        });
        if (set.suppressor() != null) {
            use(set.suppressor().asFound());
            use(set.suppressor().asLeft());
        }
        if (set.fitted() != null) {
            use(set.fitted().wrench(), set.fitted().at());
        }
    }

    private void runUp(RunUp r) {
        r.readings().forEach(this::use);
        r.points().forEach(p -> use(p.instrument(), p.at()));
        r.surges().forEach(s -> use(s.instrument(), s.at()));
        r.withstands().forEach(w -> use(w.instrument(), w.at()));
        r.vibration().forEach(v -> use(v.instrument(), null));
    }

    private void use(Reading r) {
        if (r != null) {
            use(r.instrument(), r.at());
        }
    }

    private void use(String id, Instant at) {
        if (id != null && !id.isBlank()) {
            LocalDate day = at == null ? LocalDate.MIN : LocalDate.ofInstant(at, zone);
            last.merge(id, day, (a, b) -> a.isAfter(b) ? a : b);
        }
    }
}
