package org.copperbook.desk.tests.job;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.store.NumberTaken;

/** The rewind of the demo workshop as it stood before its new winding, or before its release, under a number of its own. */
final class WindingWorkshop {

    static final PartKey FOUND = PartKey.windingAsFound(WindingRole.MAIN_STATOR);
    static final PartKey WOUND = PartKey.windingAsWound(WindingRole.MAIN_STATOR);

    private final Desktop desktop;

    WindingWorkshop(Desktop desktop) {
        this.desktop = desktop;
    }

    /** Captured, stripped, core proved; nothing wound yet. */
    JobEditor beforeWinding() throws Exception {
        return open(List.of(HoldPoint.CAPTURE_COMPLETE, HoldPoint.CORE_PROVED), false);
    }

    /** Wound and measured, not released. */
    JobEditor wound() throws Exception {
        return open(List.of(HoldPoint.CAPTURE_COMPLETE, HoldPoint.CORE_PROVED, HoldPoint.WINDING_PROVED), true);
    }

    private JobEditor open(List<HoldPoint> signed, boolean wound) throws Exception {
        Job demo = desktop.session().store().load(desktop.session().store().idOf("2026-0001").orElseThrow());
        Map<PartKey, Part> parts = new TreeMap<>();
        demo.parts().forEach((key, part) -> {
            boolean later = key.kind() == PartKind.RUN_UP || key.kind() == PartKind.IMPREGNATION
                    || key.kind() == PartKind.RECTIFIER
                    || !wound && (key.equals(WOUND) || key.kind() == PartKind.IN_PROCESS);
            if (!later) {
                parts.put(key, part);
            }
        });
        SignOffs all = demo.signOffs().orElseThrow();
        parts.put(PartKey.of(PartKind.SIGN_OFFS), new SignOffs(all.schema(),
                all.signatures().stream().filter(s -> signed.contains(s.point())).toList(), all.concessions(),
                all.judgements(), all.reopenings(), all.cautions(), all.more()));
        String number = "W-" + UUID.randomUUID().toString().substring(0, 8);
        desktop.session().store().takeIn(new Job(UUID.randomUUID().toString(), number, parts), desktop.beSomebody(),
                "for a test", NumberTaken.REFUSE);
        return desktop.open(number);
    }
}
