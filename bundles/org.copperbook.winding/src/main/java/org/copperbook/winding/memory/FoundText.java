package org.copperbook.winding.memory;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.calc.winding.memory.PastWinding;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.Words;
import org.copperbook.store.memory.FoundWinding;
import org.copperbook.store.memory.Remembered;

/** A past winding in words. */
final class FoundText {

    private final Words words;

    FoundText(Words words) {
        this.words = words;
    }

    /** Where it is from: a job or a card. */
    String from(Remembered w) {
        if (w.isCard()) {
            return w.number().isEmpty() ? words.text("memory.cardUnnumbered") : words.text("memory.card", w.number());
        }
        return words.text(w.asWound() ? "memory.jobAsWound" : "memory.jobAsFound", w.number());
    }

    /** The machine as its plate says. */
    String machine(Remembered w) {
        return List.of(w.maker(), w.type(), w.serial()).stream().filter(s -> !s.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** How near it is. */
    String nearness(FoundWinding f) {
        if (f.sameMachine()) {
            return words.text("memory.sameSerial");
        }
        if (Double.isNaN(f.distance())) {
            return "";
        }
        if (f.distance() == 0) {
            return words.text("memory.alike");
        }
        return String.format(Locale.getDefault(), "%.2f", f.distance());
    }

    /** What differs, in words; the most telling first. */
    String differences(FoundWinding f) {
        if (Double.isNaN(f.distance())) {
            return words.text("memory.notCompared");
        }
        String all = f.differences().stream().map(PastWinding.Difference::inWords).collect(Collectors.joining(", "));
        return all.isEmpty() ? words.text("memory.noDifference") : all;
    }

    /** Slots and poles. */
    String slots(MachineFigures m) {
        return (Double.isNaN(m.slots()) ? "\u2013" : Integer.toString((int) m.slots())) + " / "
                + (Double.isNaN(m.poles()) ? "\u2013" : Integer.toString((int) m.poles()));
    }

    /** Everything about it that helps to choose. */
    String detail(FoundWinding f) {
        Remembered w = f.winding();
        List<String> lines = new ArrayList<>();
        lines.add(from(w) + (machine(w).isEmpty() ? "" : "   " + machine(w)));
        lines.add(words.text("memory.differs", differences(f)));
        if (w.proposed()) {
            lines.add(words.text("memory.isProposal"));
        }
        lines.add(words.text("memory.recorded", Days.ofLocale().day(LocalDate.ofInstant(w.recordedAt(), ZoneId.systemDefault()))));
        return String.join("\n", lines);
    }

    /** Name of its connection. */
    String connection(Remembered w) {
        String key = "Connection." + w.connection();
        return w.connection().isEmpty() || !words.has(key) ? w.connection() : words.text(key);
    }
}
