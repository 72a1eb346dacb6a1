package org.copperbook.sheets.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class PictureTest {

    private static final Scene SCENE = new Scene("A <b> & \"c\"", 100, 50, List.of(
            new Mark.Line("coil/1", ScenePalette.series(1), 2, false, List.of(new Point(10, 10), new Point(90, 10))),
            Mark.Arc.circle("", ScenePalette.BAD, 0, true, new Point(50, 30), 8),
            new Mark.Text("coil/1", ScenePalette.TEXT, new Point(20, 40), Mark.Anchor.MIDDLE, 10, true, "a\u0001<&>")));

    @Test
    void theSvgIsWellFormedAndSaysWhatEachMarkShows() throws Exception {
        Document svg = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(
                new ByteArrayInputStream(SvgPicture.of(SCENE).getBytes(StandardCharsets.UTF_8)));
        assertEquals("A <b> & \"c\"", svg.getElementsByTagName("title").item(0).getTextContent());
        Element line = (Element) svg.getElementsByTagName("polyline").item(0);
        assertEquals("coil/1", line.getAttribute("data-shows"));
        assertEquals("9,4", line.getAttribute("stroke-dasharray"));
        assertEquals("a\uFFFD<&>", svg.getElementsByTagName("text").item(1).getTextContent());
    }

    @Test
    void thePngHasTheScenesSizeAndItsColours() throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngPicture.of(SCENE, 3)));
        assertEquals(300, image.getWidth());
        assertEquals(150, image.getHeight());
        assertEquals(ScenePalette.LIGHT.colour(ScenePalette.BAD), image.getRGB(150, 90) & 0xFFFFFF);
        assertEquals(0xFFFFFF, image.getRGB(297, 147) & 0xFFFFFF);
    }

    @Test
    void anImageTooLargeForMemoryIsMadeSmaller() throws Exception {
        Scene large = new Scene("large", 20_000, 10_000, SCENE.marks());
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngPicture.of(large, 3)));
        assertTrue((double) image.getWidth() * image.getHeight() < 40_100_000);
    }

    @Test
    void noTwoSeriesShareAPatternAndPrintHasNoColour() {
        Set<List<Double>> patterns = new HashSet<>();
        for (int i = 0; i < ScenePalette.SERIES; i++) {
            assertTrue(patterns.add(ScenePalette.pattern(ScenePalette.series(i))));
        }
        ScenePalette.PRINT.colours().values().forEach(c -> assertEquals(c & 0xFF, c >> 16 & 0xFF));
        assertNotEquals(ScenePalette.LIGHT.paper(), ScenePalette.DARK.paper());
    }

    /** WCAG 2.1, 1.4.3: at least 4.5 to 1 for words. */
    @Test
    void wordsAndSeriesStandOutFromThePaper() {
        for (ScenePalette palette : List.of(ScenePalette.LIGHT, ScenePalette.DARK, ScenePalette.PRINT)) {
            palette.colours().forEach((style, colour) -> {
                if (!Set.of(ScenePalette.PAPER, ScenePalette.BAND, ScenePalette.FAINT).contains(style)) {
                    assertTrue(contrast(colour, palette.paper()) >= 4.5, style + " " + contrast(colour, palette.paper()));
                }
            });
        }
    }

    private static double contrast(int a, int b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(int c) {
        return 0.2126 * linear(c >> 16 & 0xFF) + 0.7152 * linear(c >> 8 & 0xFF) + 0.0722 * linear(c & 0xFF);
    }

    private static double linear(int channel) {
        double s = channel / 255.0;
        return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }

    @ParameterizedTest
    @ValueSource(strings = {"12 \u2212W", "144", "star point, inside", "Main stator, as found, developed: 48 slots", "U1",
        "Thick line: layer at the bore; thin line: layer at the slot bottom."})
    void theRoomKeptForATextHoldsItInThisMachinesFace(String text) {
        double real = new Font(Font.SANS_SERIF, Font.PLAIN, 100).getStringBounds(text,
                new FontRenderContext(null, true, true)).getWidth() / 100;
        double kept = new Mark.Text("", "", new Point(0, 0), Mark.Anchor.START, 1, false, text).width();
        assertTrue(kept >= real * 0.97, text + ": " + kept + " kept, " + real + " taken");
    }
}
