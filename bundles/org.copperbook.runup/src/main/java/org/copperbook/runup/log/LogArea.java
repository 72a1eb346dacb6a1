package org.copperbook.runup.log;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.zip.GZIPOutputStream;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.runup.LogQuantity;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.sheets.log.LogHead;
import org.copperbook.sheets.log.LogMapping;
import org.copperbook.sheets.log.LogMappings;
import org.copperbook.sheets.log.LogProblem;
import org.copperbook.sheets.log.LogReader;
import org.copperbook.sheets.log.LogReport;
import org.copperbook.sheets.log.SteadyPoint;
import org.copperbook.sheets.log.SteadyRule;
import org.copperbook.sheets.log.UnreadableLogException;
import org.copperbook.store.UserFolders;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/**
 * Takes run-up points out of a logger's file: choose the file, say what its columns carry, read what is wrong with it, and
 * choose the points. Nothing enters the record before; reading runs in a job and can be stopped.
 */
public final class LogArea {

    /** A longer file, packed, is not kept in the store; the record still holds its hash. */
    private static final int LARGEST_KEPT = 24 << 20;
    private static final int PERCENT = 100;

    private final Composite area;
    private final PageSite site;
    private final Words words;
    private final Supplier<Optional<String>> cautionsBy;
    private final Label said;
    private final LogMappingArea mapping;
    private final Combo kind;
    private final Combo source;
    private final Button read;
    private final Button stop;
    private final Button all;
    private final Button take;
    private final Button temperatures;
    private final ProgressBar progress;
    private final Text problems;
    private final Table points;
    private final Composite below;
    private Supplier<Optional<Path>> askFile = this::chosenFile;
    private Path file;
    private LogHead head;
    private LogMapping used;
    private LogReport report;
    private Job running;

    /** @param cautionsBy who acknowledged the cautions of live work; without, no point is taken */
    public LogArea(Composite area, PageSite site, Words words, Supplier<Optional<String>> cautionsBy) {
        this.area = area;
        this.site = site;
        this.words = words;
        this.cautionsBy = cautionsBy;
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(area);
        area.setData(LogArea.class.getName(), this);
        Look look = Look.of(area);
        Button choose = button(area, "log.choose", "log.choose");
        choose.addListener(SWT.Selection, e -> askFile.get().ifPresent(this::open));
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "log.said");
        said.setText(words.text("log.intro"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(said);
        below = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(below);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(below);
        below.setVisible(false);
        mapping = new LogMappingArea(below, words);
        Composite line = line();
        kind = combo(line, "log.kind", RunPoint.Kind.values());
        source = combo(line, "log.source", RunPoint.Source.values());
        source.select(RunPoint.Source.SEPARATE_DC.ordinal());
        read = button(line, "log.read", "log.read");
        stop = button(line, "log.stop", "log.stop");
        stop.setEnabled(false);
        progress = new ProgressBar(below, SWT.HORIZONTAL);
        progress.setMaximum(PERCENT);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(progress);
        problems = look.as(Look.Role.TEXT, new Text(below, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.V_SCROLL | SWT.WRAP));
        problems.setData(Desk.ID, "log.problems");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), 6 * look.rowHeight()).applyTo(problems);
        points = look.as(Look.Role.TEXT, new Table(below, SWT.BORDER | SWT.CHECK | SWT.FULL_SELECTION));
        points.setData(Desk.ID, "log.points");
        points.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), 8 * look.rowHeight()).applyTo(points);
        temperatures = look.as(Look.Role.TEXT, new Button(below, SWT.CHECK));
        temperatures.setData(Desk.ID, "log.temperatures");
        temperatures.setText(words.text("log.noTemperatures"));
        Composite last = line();
        all = button(last, "log.all", "log.all");
        take = button(last, "log.take", "log.take");
        read.addListener(SWT.Selection, e -> read());
        stop.addListener(SWT.Selection, e -> stop());
        all.addListener(SWT.Selection, e -> chooseAll());
        take.addListener(SWT.Selection, e -> take());
        area.addListener(SWT.Dispose, e -> stop());
        reported(false);
    }

    /** Asks for the file in another way than with the system's dialog. */
    public void askFile(Supplier<Optional<Path>> asking) {
        askFile = asking;
    }

    /** A row that breaks where the page is narrow. */
    private Composite line() {
        Composite line = new Composite(below, SWT.NONE);
        line.setLayout(RowLayoutFactory.fillDefaults().spacing(8).wrap(true).center(true).create());
        return line;
    }

    private Button button(Composite parent, String key, String id) {
        Button b = Look.of(area).as(Look.Role.TEXT, new Button(parent, SWT.PUSH));
        b.setText(words.text(key));
        b.setData(Desk.ID, id);
        return b;
    }

    private Combo combo(Composite parent, String key, Enum<?>[] constants) {
        Composite pair = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(pair);
        Label l = Look.of(area).as(Look.Role.TEXT, new Label(pair, SWT.NONE));
        l.setText(words.text(key));
        Combo c = Look.of(area).as(Look.Role.TEXT, new Combo(pair, SWT.READ_ONLY));
        c.setData(Desk.ID, key);
        for (Enum<?> e : constants) {
            c.add(words.of(e));
        }
        c.select(0);
        return c;
    }

    private Optional<Path> chosenFile() {
        FileDialog dialog = new FileDialog(area.getShell(), SWT.OPEN);
        dialog.setFilterExtensions(new String[] {"*.csv;*.txt;*.log", "*"});
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    private LogMappings remembered() {
        return new LogMappings(UserFolders.current().home().resolve("log-mappings"), site.json());
    }

    /** Looks at the beginning of a file and shows how it is probably meant. */
    public void open(Path chosen) {
        say(words.text("log.opening", chosen.getFileName()));
        new DeskJob(words.text("log.task"), monitor -> {
            try {
                LogHead found = LogHead.of(chosen);
                LogMapping known = remembered().of(found.titles()).orElse(found.guess());
                ui(() -> opened(chosen, found, known));
            } catch (IOException | UnreadableLogException e) {
                ui(() -> say(e instanceof IOException ? words.text("log.unreadable", chosen, e.getMessage()) : e.getMessage()));
            }
        }).schedule();
    }

    private void opened(Path chosen, LogHead found, LogMapping known) {
        file = chosen;
        head = found;
        report = null;
        mapping.show(found, known);
        below.setVisible(true);
        ((org.eclipse.swt.layout.GridData) below.getLayoutData()).exclude = false;
        reported(false);
        boolean same = !known.equals(found.guess());
        say(words.text(same ? "log.remembered" : "log.guessed", chosen.getFileName()));
    }

    private void read() {
        if (running != null || head == null) {
            return;
        }
        used = mapping.chosen();
        LogMapping chosen = used;
        LogHead from = head;
        Path path = file;
        read.setEnabled(false);
        stop.setEnabled(true);
        progress.setSelection(0);
        running = new DeskJob(words.text("log.task"), monitor -> {
            try {
                int[] told = {0};
                LogReport found = LogReader.read(path, from, chosen, SteadyRule.USUAL, (at, of) -> {
                    int percent = of <= 0 ? 0 : (int) (at * PERCENT / of);
                    if (percent != told[0]) {
                        told[0] = percent;
                        ui(() -> progress.setSelection(percent));
                    }
                    return !monitor.isCanceled();
                });
                remembered().keep(chosen);
                ui(() -> finished(found));
            } catch (IOException e) {
                ui(() -> failed(words.text("log.unreadable", path, String.valueOf(e.getMessage()))));
            } catch (UnreadableLogException e) {
                ui(() -> failed(e.getMessage()));
            }
        });
        running.schedule();
    }

    private void stop() {
        if (running != null) {
            running.cancel();
        }
    }

    private void failed(String why) {
        running = null;
        reported(false);
        say(why);
    }

    private void finished(LogReport found) {
        running = null;
        report = found;
        progress.setSelection(PERCENT);
        List<LogQuantity> shown = used.columns().stream().map(c -> c.quantity()).filter(q -> q != null).toList();
        points.removeAll();
        for (TableColumn c : points.getColumns()) {
            c.dispose();
        }
        column(words.text("log.rows"));
        shown.forEach(q -> column(words.of(q) + " " + q.unit()));
        for (SteadyPoint p : found.steady()) {
            TableItem item = new TableItem(points, SWT.NONE);
            item.setText(0, words.text("log.rowsOf", Long.toString(p.firstRow()), Long.toString(p.lastRow())));
            for (int i = 0; i < shown.size(); i++) {
                item.setText(i + 1, words.text("log.mean", p.means().get(shown.get(i)), p.scatter().get(shown.get(i))));
            }
        }
        new FittedColumns(points, new int[points.getColumnCount()]);
        String list = found.problems().stream().map(LogProblem::text).collect(Collectors.joining("\n"));
        problems.setText(list.isEmpty() ? words.text("log.clean") : list);
        temperatures.setText(found.temperatures().isEmpty() ? words.text("log.noTemperatures")
                : words.text("log.temperatures", found.temperatures().size()));
        temperatures.setSelection(false);
        reported(true);
        say(words.text("log.found", found.rows(), found.used(), found.problems().size(), found.steady().size()));
    }

    private void column(String title) {
        new TableColumn(points, SWT.NONE).setText(title);
    }

    private void reported(boolean yes) {
        read.setEnabled(head != null);
        stop.setEnabled(false);
        all.setEnabled(yes);
        take.setEnabled(yes);
        temperatures.setEnabled(yes && !report.temperatures().isEmpty());
        area.requestLayout();
    }

    private void chooseAll() {
        for (TableItem item : points.getItems()) {
            item.setChecked(true);
        }
    }

    private void take() {
        if (site.blocked().isPresent()) {
            say(site.blocked().get());
            return;
        }
        Optional<String> by = cautionsBy.get();
        List<SteadyPoint> chosen = new ArrayList<>();
        for (int i = 0; i < points.getItemCount(); i++) {
            if (points.getItem(i).getChecked()) {
                chosen.add(report.steady().get(i));
            }
        }
        boolean warm = temperatures.getSelection();
        if (chosen.isEmpty() && !warm) {
            say(words.text("log.nothingChosen"));
            return;
        }
        if (by.isEmpty()) {
            say(words.text("log.cautionsFirst"));
            return;
        }
        take.setEnabled(false);
        LogReport from = report;
        Path path = file;
        new DeskJob(words.text("log.keeping"), monitor -> {
            String kept = keep(path);
            ui(() -> taken(from, chosen, warm, by.get(), kept));
        }).schedule();
    }

    /** Keeps the bytes of the file, packed, with the photos; null when it is too large or can no longer be read. */
    private String keep(Path path) {
        try {
            if (Files.size(path) > 20L * LARGEST_KEPT) {
                return null;
            }
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
                Files.copy(path, out);
            }
            return packed.size() > LARGEST_KEPT ? null : site.store().keepPhoto(packed.toByteArray());
        } catch (IOException e) {
            return null;
        }
    }

    private void taken(LogReport from, List<SteadyPoint> chosen, boolean warm, String by, String kept) {
        LogPoints make = new LogPoints(site.json().mapper(), file.getFileName().toString(), from);
        RunPoint.Kind what = RunPoint.Kind.values()[kind.getSelectionIndex()];
        RunPoint.Source excitation = RunPoint.Source.values()[source.getSelectionIndex()];
        String who = site.who().orElse(null);
        List<ObjectNode> rows = chosen.stream().map(p -> make.point(p, what, excitation, who, by, words.text("log.note",
                Long.toString(p.firstRow()), Long.toString(p.lastRow()), file.getFileName()))).toList();
        List<ObjectNode> warmth = warm ? from.temperatures().stream().map(make::temperature).toList() : List.of();
        Optional<String> problem = site.document().change(site.key(), "/points", tree -> {
            LogPoints.add(tree, "points", rows);
            if (!warmth.isEmpty()) {
                LogPoints.add(tree, "bearingTemperatures", warmth);
            }
            LogPoints.add(tree, "logs", List.of(make.file(used, SteadyRule.USUAL, kept, rows.size(), who,
                    Instant.now().truncatedTo(ChronoUnit.SECONDS))));
            return tree;
        });
        take.setEnabled(true);
        say(problem.orElse(words.text(kept == null ? "log.takenNotKept" : "log.taken", rows.size(), warmth.size())));
    }

    private void ui(Runnable then) {
        area.getDisplay().asyncExec(() -> {
            if (!area.isDisposed()) {
                then.run();
            }
        });
    }

    private void say(String text) {
        said.setText(text);
        said.requestLayout();
    }
}
