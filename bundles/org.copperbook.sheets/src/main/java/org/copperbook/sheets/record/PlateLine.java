package org.copperbook.sheets.record;

import org.copperbook.jobs.nameplate.Nameplate;

/** The rating plate in one line. */
final class PlateLine {

    private PlateLine() {
    }

    static String of(Nameplate p, Amounts a, RecordContext c) {
        return RecordContext.joined(", ", p.maker(), p.type(), p.serial() == null ? "" : c.say("plate.no", p.serial()),
                a.with(p.apparentPowerVA(), 1000, "kVA"), a.with(p.powerW(), 1000, "kW"), a.with(p.voltageV(), "V"),
                a.with(p.frequencyHz(), "Hz"), a.with(p.speedRpm(), "r/min"));
    }
}
