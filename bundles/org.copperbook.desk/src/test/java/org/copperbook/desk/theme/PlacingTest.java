package org.copperbook.desk.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.junit.jupiter.api.Test;

class PlacingTest {

    private static final Rectangle SCREEN = new Rectangle(0, 30, 1280, 770);

    @Test
    void aSmallWindowStandsOverTheMiddleOfItsParent() {
        assertEquals(new Rectangle(400, 250, 200, 100),
                Placing.within(SCREEN, new Rectangle(300, 200, 400, 200), new Point(200, 100)));
    }

    @Test
    void overAParentAtTheEdgeItIsPushedBackOntoTheScreen() {
        assertEquals(new Rectangle(1080, 700, 200, 100),
                Placing.within(SCREEN, new Rectangle(1250, 780, 300, 300), new Point(200, 100)));
        assertEquals(new Rectangle(0, 30, 200, 100),
                Placing.within(SCREEN, new Rectangle(-300, -300, 300, 300), new Point(200, 100)));
    }

    @Test
    void oneLargerThanTheScreenIsMadeToFit() {
        assertEquals(SCREEN, Placing.within(SCREEN, new Rectangle(100, 100, 400, 400), new Point(2000, 1500)));
    }
}
