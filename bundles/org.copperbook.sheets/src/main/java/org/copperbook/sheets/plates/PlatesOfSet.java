package org.copperbook.sheets.plates;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.DiodePosition.Plate;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.rectifier.Suppressor;

/** What the picture shows of a rectifier record and its verdicts. */
public final class PlatesOfSet {

    private final List<Verdict> verdicts;
    private final PlateWords words;

    private PlatesOfSet(List<Verdict> verdicts, PlateWords words) {
        this.verdicts = verdicts.stream().filter(v -> v.part().kind() == PartKind.RECTIFIER).toList();
        this.words = words;
    }

    /** The view of a set with the verdicts of its job. */
    public static PlatesView view(RectifierSet set, List<Verdict> verdicts, PlateWords words) {
        return new PlatesOfSet(verdicts, words).view(set);
    }

    /** The id under which a position is picked. */
    public static String id(int index) {
        return "positions/" + index;
    }

    private PlatesView view(RectifierSet set) {
        List<PlatesView.Stud> studs = new ArrayList<>();
        for (int i = 0; i < set.positions().size(); i++) {
            studs.add(stud(set.positions().get(i), i));
        }
        boolean two = set.circuit() != RectifierSet.Circuit.HALF_WAVE
                || set.positions().stream().anyMatch(p -> p.plate() == Plate.NEGATIVE);
        return new PlatesView(words.title(), words.plate(Plate.POSITIVE), two ? words.plate(Plate.NEGATIVE) : "", studs,
                box(set.suppressor()));
    }

    private PlatesView.Stud stud(DiodePosition p, int index) {
        String place = "/positions/" + index;
        Optional<Outcome> read = beside(place + "/asLeftForward").filter(o -> o != Outcome.NOT_MEASURED)
                .or(() -> beside(place + "/asFoundForward"));
        boolean wrong = beside(place + "/basePolarity").filter(o -> o == Outcome.FAILS).isPresent();
        List<String> lines = new ArrayList<>();
        if (p.basePolarity() != null) {
            lines.add(words.base(p.basePolarity()));
        }
        if (p.asFoundForward() != null || p.asFoundReverse() != null) {
            lines.add(words.asFound(shown(p.asFoundForward()), shown(p.asFoundReverse())));
        }
        if (p.asLeftForward() != null || p.asLeftReverse() != null) {
            lines.add(words.asLeft(shown(p.asLeftForward()), shown(p.asLeftReverse())));
        }
        if (p.torqueNm() != null) {
            lines.add(words.torque(p.torqueNm()));
        }
        read.ifPresent(o -> lines.add(words.outcome(o)));
        String name = Stream.of(p.position(), p.lead()).filter(s -> s != null && !s.isBlank())
                .reduce((a, b) -> a + "  " + b).orElse(Integer.toString(index + 1));
        return new PlatesView.Stud(id(index), side(p.plate()), name, p.basePolarity() == null ? null
                : p.basePolarity() == DiodePosition.BasePolarity.CATHODE_BASE, wrong, read.orElse(null), lines);
    }

    private PlatesView.Box box(Suppressor s) {
        if (s == null || s.kind() == null || s.kind() == Suppressor.Kind.NONE) {
            return null;
        }
        List<String> lines = new ArrayList<>();
        Reading newest = s.asLeft() == null ? s.asFound() : s.asLeft();
        if (newest != null) {
            lines.add(words.reading(newest));
        }
        Optional<Outcome> read = beside("/suppressor/asLeft").or(() -> beside("/suppressor/asFound"));
        read.ifPresent(o -> lines.add(words.outcome(o)));
        return new PlatesView.Box("suppressor", words.suppressor(s.kind()), read.orElse(null), lines);
    }

    private String shown(Reading r) {
        return r == null ? "-" : words.reading(r);
    }

    private static PlatesView.Side side(Plate plate) {
        return plate == null ? PlatesView.Side.NOT_STATED : plate == Plate.POSITIVE ? PlatesView.Side.POSITIVE
                : PlatesView.Side.NEGATIVE;
    }

    private Optional<Outcome> beside(String path) {
        return verdicts.stream().filter(v -> path.equals(v.path())).map(Verdict::outcome).findFirst();
    }
}
