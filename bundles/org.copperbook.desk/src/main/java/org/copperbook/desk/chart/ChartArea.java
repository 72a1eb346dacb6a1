package org.copperbook.desk.chart;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.picture.PictureButtons;
import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.chart.ChartCsv;
import org.copperbook.sheets.chart.ChartReading;
import org.copperbook.sheets.chart.ChartScene;
import org.copperbook.sheets.chart.PlotArea;
import org.copperbook.sheets.picture.Point;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;

/**
 * A chart in the window with a crosshair: the mouse, or the arrow keys with Ctrl, go from reading to reading, and the
 * values there stand below in words. Saves as SVG, PNG and CSV. Use on the display's thread only.
 */
public final class ChartArea extends Composite {

    private static final int DIGITS = 4;
    private static final int DOT = 4;
    private static final double LEAST_WIDTH = 560;
    private static final double MOST_WIDTH = 1000;
    private static final double LEAST_HEIGHT = 330;
    private static final double HEIGHT_OF_WIDTH = 0.58;

    private final PictureCanvas canvas;
    private final Label said;
    private Supplier<Optional<Path>> csvFile = this::chosenFile;
    private Chart chart;
    private List<Double> stops = List.of();
    private int at = -1;
    private double width = ChartScene.WIDTH;

    /** @param id id under which the chart is found, for instance "chart.open-circuit" */
    public ChartArea(Composite parent, String id) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(this);
        Look look = Look.of(this);
        canvas = new PictureCanvas(this);
        canvas.setData(Desk.ID, id);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(canvas);
        said = look.as(Look.Role.TEXT, new Label(this, SWT.WRAP));
        said.setData(Desk.ID, id + ".reading");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(said);
        PictureButtons buttons = new PictureButtons(this, canvas);
        Button csv = look.as(Look.Role.TEXT, new Button(buttons, SWT.PUSH));
        csv.setText(DeskWords.text("chart.csv"));
        csv.setData(Desk.ID, id + ".csv");
        csv.addListener(SWT.Selection, e -> saveCsv());
        canvas.output().onSaid(this::say);
        canvas.addListener(SWT.MouseMove, e -> toNearest(e.x, e.y));
        canvas.addListener(SWT.Paint, this::paint);
        canvas.onKey(this::key);
        canvas.addListener(SWT.Resize, e -> fill());
        look.onResize(this, this::fill);
    }

    /** Draws for the width at hand, so that words in the picture are as large as those around it where there is room. */
    private void fill() {
        double wide = canvas.getClientArea().width / Look.of(this).factor();
        double next = Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, wide));
        if (chart != null && Math.abs(next - width) >= 1) {
            width = next;
            draw();
        }
    }

    private void draw() {
        canvas.show(ChartScene.of(chart, width, height()));
    }

    private double height() {
        return Math.max(LEAST_HEIGHT, Math.min(ChartScene.HEIGHT, width * HEIGHT_OF_WIDTH))
                + ChartScene.longNote(chart, width);
    }

    /** Shows a chart; the crosshair stays where it is while there is still a reading. */
    public void show(Chart next) {
        if (next.equals(chart)) {
            return;
        }
        Double was = at >= 0 && at < stops.size() ? stops.get(at) : null;
        chart = next;
        stops = ChartReading.stops(next);
        at = was == null ? -1 : stops.indexOf(was);
        draw();
        tell();
    }

    /** The chart shown, or null before the first. */
    public Chart chart() {
        return chart;
    }

    /** The picture itself. */
    public PictureCanvas canvas() {
        return canvas;
    }

    /** Asks for the CSV file's place in another way than with the system's dialog. */
    public void askCsvFile(Supplier<Optional<Path>> asking) {
        csvFile = asking;
    }

    /** Saves the points as comma-separated values where the person says. */
    public void saveCsv() {
        if (chart == null) {
            return;
        }
        String text = ChartCsv.of(chart);
        csvFile.get().ifPresent(file -> new DeskJob(DeskWords.text("picture.task"), monitor -> {
            String words;
            try {
                Files.write(file, text.getBytes(StandardCharsets.UTF_8));
                words = DeskWords.text("picture.saved", file);
            } catch (IOException e) {
                words = DeskWords.text("picture.notSaved", file, String.valueOf(e.getMessage()));
            }
            String told = words;
            getDisplay().asyncExec(() -> {
                if (!isDisposed()) {
                    say(told);
                }
            });
        }).schedule());
    }

    private Optional<Path> chosenFile() {
        FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
        dialog.setFilterExtensions(new String[] {"*.csv"});
        dialog.setFileName(chart.title().replaceAll("[^\\p{L}\\p{N} _.-]", "-").strip() + ".csv");
        dialog.setOverwrite(true);
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    private PlotArea plot() {
        return ChartScene.plot(chart, width, height());
    }

    private void toNearest(int x, int y) {
        if (chart == null || stops.isEmpty()) {
            return;
        }
        Point p = canvas.toScene(x, y);
        PlotArea plot = plot();
        if (!plot.holds(p.x(), p.y())) {
            return;
        }
        int best = 0;
        for (int i = 1; i < stops.size(); i++) {
            boolean nearer = Math.abs(plot.placeOfX(stops.get(i)) - p.x()) < Math.abs(plot.placeOfX(stops.get(best)) - p.x());
            best = nearer ? i : best;
        }
        go(best);
    }

    private boolean key(Event e) {
        boolean step = (e.stateMask & SWT.MOD1) != 0;
        if (stops.isEmpty() || !step) {
            return false;
        }
        switch (e.keyCode) {
            case SWT.ARROW_LEFT -> go(Math.max(0, at < 0 ? 0 : at - 1));
            case SWT.ARROW_RIGHT -> go(Math.min(stops.size() - 1, at + 1));
            case SWT.HOME -> go(0);
            case SWT.END -> go(stops.size() - 1);
            default -> {
                return false;
            }
        }
        return true;
    }

    private void go(int stop) {
        if (stop != at) {
            at = stop;
            canvas.redraw();
            tell();
        }
    }

    private void tell() {
        if (chart == null) {
            return;
        }
        if (at < 0) {
            say(DeskWords.text("chart.keys"));
            return;
        }
        ChartReading reading = ChartReading.at(chart, stops.get(at));
        int place = (int) Math.round(reading.x()) - 1;
        String x = chart.x().places().isEmpty() ? chart.x().title() + " " + number(reading.x()) + " " + chart.x().unit()
                : chart.x().places().get(Math.max(0, Math.min(place, chart.x().places().size() - 1)));
        say(x.strip() + ": " + reading.values().stream().map(v -> v.title() + " "
                + (v.read() ? "" : DeskWords.text("chart.about") + " ") + number(v.y()) + " " + chart.y().unit())
                .collect(Collectors.joining(";  ")));
    }

    private void say(String words) {
        if (!words.equals(said.getText())) {
            said.setText(words);
            Grown.tell(said);
        }
    }

    private static String number(double v) {
        char mark = DecimalFormatSymbols.getInstance(Locale.getDefault(Locale.Category.FORMAT)).getDecimalSeparator();
        String plain = new java.math.BigDecimal(v).round(new java.math.MathContext(DIGITS)).stripTrailingZeros()
                .toPlainString();
        return plain.replace('.', mark);
    }

    private void paint(Event e) {
        if (chart == null || at < 0) {
            return;
        }
        PlotArea plot = plot();
        double x = plot.placeOfX(stops.get(at));
        var top = canvas.toControl(new Point(x, plot.top()));
        var bottom = canvas.toControl(new Point(x, plot.top() + plot.height()));
        e.gc.setForeground(Look.of(this).palette().accent());
        e.gc.setLineWidth(2);
        e.gc.setLineStyle(SWT.LINE_SOLID);
        e.gc.drawLine(top.x, top.y, bottom.x, bottom.y);
        for (ChartReading.Value v : ChartReading.at(chart, stops.get(at)).values()) {
            var p = canvas.toControl(new Point(x, plot.placeOfY(v.y())));
            e.gc.drawOval(p.x - DOT, p.y - DOT, 2 * DOT, 2 * DOT);
        }
    }
}
