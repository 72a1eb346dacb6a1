package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Year;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.poi.xssf.usermodel.XSSFPictureData;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.picture.PicturePage;
import org.copperbook.desk.shell.Judge;
import org.copperbook.desk.shell.Judgement;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.JobRecordWorkbook;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.PngPicture;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.SvgPicture;
import org.copperbook.sheets.winding.WindingView;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The winding drawing on its page: highlighted, picked, enlarged, saved, copied, printed, and the same in the record. */
class WindingDrawingTest {

    private static final PartKey STATOR = PartKey.windingAsFound(WindingRole.MAIN_STATOR);

    private final Desktop desktop = new Desktop();

    @TempDir
    Path folder;

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void aGroupOfTheGridIsHighlightedAndAClickFindsItsRow() throws Exception {
        open();
        RecordGrid grid = desktop.grid("/groups", "/coils");
        grid.table().setFocus();
        grid.moveTo(2, 0);
        desktop.work();
        assertEquals("group/3", canvas().highlighted());
        assertTrue(canvas().scene().showing("group/3").count() > 12, "four coils with their sides and ends");
        Mark.Text name = (Mark.Text) canvas().scene().showing("group/7").filter(m -> m instanceof Mark.Text).findFirst()
                .orElseThrow();
        Point at = canvas().toControl(name.at());
        click(at);
        assertEquals("group/7", canvas().highlighted());
        assertEquals(6, grid.row());
    }

    @Test
    void keysAndWheelEnlargeMoveAndFit() throws Exception {
        open();
        PictureCanvas canvas = canvas();
        double fitted = canvas.scale();
        key(canvas, '+', '+');
        assertTrue(canvas.scale() > fitted * 1.2);
        Point before = canvas.toControl(new org.copperbook.sheets.picture.Point(0, 0));
        key(canvas, SWT.ARROW_RIGHT, '\0');
        assertTrue(canvas.toControl(new org.copperbook.sheets.picture.Point(0, 0)).x < before.x);
        org.copperbook.sheets.picture.Point under = canvas.toScene(200, 120);
        Event wheel = new Event();
        wheel.stateMask = SWT.MOD1;
        wheel.count = 3;
        wheel.x = 200;
        wheel.y = 120;
        canvas.notifyListeners(SWT.MouseVerticalWheel, wheel);
        assertEquals(under.x(), canvas.toScene(200, 120).x(), 0.01, "what is under the pointer stays there");
        key(canvas, '0', '0');
        assertEquals(fitted, canvas.scale(), 1e-9);
    }

    @Test
    void savedAndCopiedItHoldsEveryCoilAndTheRecordShowsTheSame() throws Exception {
        JobEditor editor = open();
        WindingData data = editor.document().part(STATOR, WindingData.class).orElseThrow();
        Path svg = folder.resolve("drawing.svg");
        Path png = folder.resolve("drawing.png");
        canvas().output().askWhere(ending -> Optional.of(ending.equals("svg") ? svg : png));
        desktop.press("picture.svg");
        desktop.until("the SVG is written", () -> said().contains("drawing.svg"));
        desktop.press("picture.png");
        desktop.until("the PNG is written", () -> said().contains("drawing.png"));
        Set<String> coils = new HashSet<>();
        try (InputStream in = Files.newInputStream(svg)) {
            NodeList lines = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in)
                    .getElementsByTagName("polyline");
            for (int i = 0; i < lines.getLength(); i++) {
                String shows = ((Element) lines.item(i)).getAttribute("data-shows");
                if (shows.endsWith("/go")) {
                    assertTrue(coils.add(shows), shows + " once");
                }
            }
        }
        assertEquals(data.groups().stream().mapToInt(g -> g.coils().size()).sum(), coils.size());
        Scene scene = WindingView.DEVELOPED.of(data);
        assertEquals(SvgPicture.of(scene), Files.readString(svg, StandardCharsets.UTF_8));
        assertEquals(canvas().scene(), scene);
        assertTrue(new ImageData(png.toString()).width > 3 * scene.width() - 2);
        inTheRecord(editor, scene);
        desktop.press("picture.copy");
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        ImageData copied = (ImageData) clipboard.getContents(ImageTransfer.getInstance());
        clipboard.dispose();
        assertEquals(2 * scene.width(), copied.width, 2);
    }

    /** The coil list of a lap winding does not say how the path of a wave runs. */
    @Test
    void whatCannotBeDrawnOfAWaveIsSaidOnThePageAndInTheRecord() throws Exception {
        JobEditor editor = open();
        editor.document().change(STATOR, "/coilType", tree -> tree.put("coilType", "WAVE"));
        desktop.until("the drawing says so", () -> words(canvas().scene()).contains("Not drawn: end connections"));
        assertTrue(canvas().scene().marks().stream().noneMatch(m -> m.id().startsWith("jumper/")));
        assertTrue(SvgPicture.of(canvas().scene()).contains("Not drawn: end connections"));
        inTheRecord(editor, canvas().scene());
    }

    private static String words(Scene scene) {
        return scene.marks().stream().filter(m -> m instanceof Mark.Text).map(m -> ((Mark.Text) m).text())
                .collect(Collectors.joining(" "));
    }

    private void inTheRecord(JobEditor editor, Scene scene) throws Exception {
        Path record = folder.resolve("record.xlsx");
        Judgement now = Judge.of(editor.document().job(), desktop.session().shop());
        new JobRecordWorkbook().write(editor.document().job(), now.verdicts(), now.holdPoints(), desktop.session().shop(), record);
        byte[] expected = PngPicture.of(scene, 2);
        try (InputStream in = Files.newInputStream(record); XSSFWorkbook book = new XSSFWorkbook(in)) {
            assertTrue(book.getAllPictures().stream().map(XSSFPictureData::getData).anyMatch(p -> Arrays.equals(p, expected)),
                    "the record holds the picture of the same scene");
        }
    }

    @Test
    void starAndForceAreDrawnOnRequestAndAFieldShowsItsPoles() throws Exception {
        JobEditor editor = open();
        Scene developed = canvas().scene();
        for (String view : new String[] {"END", "STAR", "MMF"}) {
            Button button = (Button) desktop.field("drawing." + view);
            ((Button) desktop.field("drawing.DEVELOPED")).setSelection(false);
            button.setSelection(true);
            button.notifyListeners(SWT.Selection, new Event());
            button.setSelection(false);
            assertNotEquals(developed, canvas().scene());
            assertFalse(canvas().scene().isEmpty(), view);
        }
        editor.show(PartKey.windingAsFound(WindingRole.MAIN_ROTOR));
        desktop.settle(editor);
        assertEquals(4, canvas().scene().marks().stream().filter(m -> m.id().endsWith("/go")).count());
    }

    /** A4 lying at 100 dots per inch, as a printer's page is painted. */
    @Test
    void aPrintedPageCarriesTheDrawingInBlackAndGrey() throws Exception {
        open();
        Rectangle paper = new Rectangle(0, 0, 1169, 827);
        Image page = new Image(Display.getCurrent(), paper.width, paper.height);
        GC gc = new GC(page);
        PicturePage.paint(gc, canvas().output().heading(), canvas().scene(), paper, 47);
        gc.dispose();
        ImageData data = page.getImageData();
        page.dispose();
        int dark = 0;
        for (int y = 0; y < data.height; y++) {
            for (int x = 0; x < data.width; x++) {
                RGB rgb = data.palette.getRGB(data.getPixel(x, y));
                assertTrue(Math.abs(rgb.red - rgb.blue) < 4 && Math.abs(rgb.red - rgb.green) < 4, "no colour: " + rgb);
                boolean margin = x < 45 || x > data.width - 45 || y < 45;
                assertTrue(!margin || rgb.red > 250, "nothing in the margin at " + x + ", " + y);
                dark += rgb.red < 100 ? 1 : 0;
            }
        }
        assertTrue(dark > 15_000, dark + " dark dots");
        assertTrue(dark(data, 47, 1122, 80) > 300, "the heading stands over it");
    }

    private static int dark(ImageData data, int left, int right, int bottom) {
        int dark = 0;
        for (int y = 0; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                dark += data.palette.getRGB(data.getPixel(x, y)).red < 100 ? 1 : 0;
            }
        }
        return dark;
    }

    @Test
    void aPrintedPageSaysWhichJobWhichMachineWhichWindingAndWhen() throws Exception {
        JobEditor editor = open();
        List<String> heading = canvas().output().heading();
        String serial = editor.document().job().nameplate().orElseThrow().serial();
        assertTrue(heading.get(0).startsWith("Job 2026-0001: ") && heading.get(0).contains(serial), heading.get(0));
        assertTrue(heading.get(1).startsWith("Main stator") && heading.get(1).contains(String.valueOf(Year.now())), heading.get(1));
    }

    private JobEditor open() throws Exception {
        JobEditor editor = desktop.open("2026-0001");
        editor.show(STATOR);
        desktop.settle(editor);
        desktop.until("the drawing is there", () -> !canvas().scene().isEmpty());
        return editor;
    }

    private PictureCanvas canvas() {
        return (PictureCanvas) desktop.field("winding.drawing");
    }

    private String said() {
        return ((Label) desktop.field("winding.drawing.said")).getText();
    }

    private void click(Point at) {
        for (int type : new int[] {SWT.MouseDown, SWT.MouseUp}) {
            Event e = new Event();
            e.button = 1;
            e.x = at.x;
            e.y = at.y;
            canvas().notifyListeners(type, e);
        }
        desktop.work();
    }

    private void key(PictureCanvas canvas, int code, char character) {
        Event e = new Event();
        e.keyCode = code;
        e.character = character;
        canvas.notifyListeners(SWT.KeyDown, e);
        desktop.work();
    }
}
