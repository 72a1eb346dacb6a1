package org.copperbook.sheets.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;
import org.copperbook.sheets.plates.PlatesView.Side;
import org.junit.jupiter.api.Test;

class PlatesPictureTest {

    private static PlatesView.Stud stud(int n, Side side, boolean wrong, Outcome outcome) {
        return new PlatesView.Stud("positions/" + n, side, "D" + (n + 1) + "  U", side == Side.POSITIVE, wrong, outcome,
                List.of("cathode on the base", "found 0.512 V / above range", "left 0.519 V / above range",
                        "2.85 N m", "no limit set"));
    }

    private static Scene six(Outcome ofFirst, boolean wrong) {
        List<PlatesView.Stud> studs = new ArrayList<>();
        for (int n = 0; n < 6; n++) {
            studs.add(stud(n, n < 3 ? Side.POSITIVE : Side.NEGATIVE, wrong && n == 0, n == 0 ? ofFirst : Outcome.MEETS));
        }
        return PlatesPicture.of(new PlatesView("Rectifier", "positive plate", "negative plate", studs,
                new PlatesView.Box("suppressor", "varistor", Outcome.MEETS, List.of("above range"))));
    }

    private static List<Mark.Arc> circles(Scene scene, int n) {
        return scene.showing("positions/" + n).filter(Mark.Arc.class::isInstance).map(Mark.Arc.class::cast).toList();
    }

    @Test
    void threeDiodesSitOnEachPlateAndInTheirOrder() {
        Scene scene = six(Outcome.MEETS, false);
        double middle = scene.showing("suppressor").filter(Mark.Line.class::isInstance).map(Mark.Line.class::cast)
                .findFirst().orElseThrow().points().get(0).y() + 22;
        for (int n = 0; n < 6; n++) {
            double y = circles(scene, n).get(0).centre().y();
            assertEquals(n < 3, y < middle, "position " + n);
        }
        assertTrue(circles(scene, 0).get(0).centre().x() < circles(scene, 1).get(0).centre().x());
        assertTrue(circles(scene, 1).get(0).centre().x() < circles(scene, 2).get(0).centre().x());
    }

    @Test
    void shapeTellsTheVerdictWithoutColour() {
        assertTrue(circles(six(Outcome.MEETS, false), 0).get(0).filled());
        List<Mark.Arc> doubtful = circles(six(Outcome.DOUBTFUL, false), 0);
        assertEquals(ScenePalette.PAPER, doubtful.get(0).style());
        assertTrue(!doubtful.get(1).filled());
        long good = lines(six(Outcome.DOUBTFUL, false));
        assertEquals(good + 2, lines(six(Outcome.FAILS, false)), "a cross of two lines");
        assertEquals(good + 1, lines(six(Outcome.DOUBTFUL, true)), "a frame round a wrong base");
    }

    private static long lines(Scene scene) {
        return scene.showing("positions/0").filter(Mark.Line.class::isInstance).count();
    }

    @Test
    void nothingReachesBeyondTheEdge() {
        Scene scene = six(Outcome.FAILS, true);
        for (Mark m : scene.marks()) {
            if (m instanceof Mark.Text t) {
                assertTrue(t.left() >= 0 && t.left() + t.width() <= scene.width(), t.text());
                assertTrue(t.at().y() > 0 && t.at().y() < scene.height(), t.text());
            }
        }
    }

    @Test
    void aHalfWaveRectifierHasOnePlateAndADiodeWithoutAPlateStandsOnNone() {
        Scene scene = PlatesPicture.of(new PlatesView("Rectifier", "positive plate", "", List.of(
                stud(0, Side.POSITIVE, false, null), stud(1, Side.NOT_STATED, false, null)), null));
        assertEquals(0, scene.showing("plate/negative").count());
        assertTrue(scene.showing("plate/positive").count() > 0);
        assertTrue(circles(scene, 1).get(0).centre().y() > circles(scene, 0).get(0).centre().y() + 200);
    }
}
