package org.copperbook.winding;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/** Adds photos to a part: the files are kept unchanged in the store, the part names them by their hash. */
final class PhotosArea {

    private static final String PHOTOS = "/photos";
    private static final long LARGEST_BYTES = 64L << 20;

    private final PageSite site;
    private final Words words;
    private final Supplier<List<Path>> choosing;
    private final Label said;

    /** @param choosing asks the person which files; empty when nothing was chosen */
    PhotosArea(Composite area, PageSite site, Words words, RecordGrid grid, Supplier<List<Path>> choosing) {
        this.site = site;
        this.words = words;
        this.choosing = choosing;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(area);
        button(area, look, "photos.add").addListener(SWT.Selection, e -> choose());
        button(area, look, "photos.remove").addListener(SWT.Selection, e -> remove(grid.row()));
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(said);
        said.setText(words.text("photos.hint"));
    }

    private Button button(Composite area, Look look, String key) {
        Button b = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        b.setText(words.text(key));
        b.setData(Desk.ID, key);
        return b;
    }

    private void choose() {
        List<Path> files = choosing.get();
        if (!files.isEmpty()) {
            keep(files);
        }
    }

    /** Reads and keeps the files outside the window's thread; one that cannot be read is named and left out. */
    private void keep(List<Path> files) {
        Display display = said.getDisplay();
        new DeskJob(words.text("photos.task"), monitor -> {
            List<String> problems = new ArrayList<>();
            for (Path file : files) {
                if (monitor.isCanceled()) {
                    return;
                }
                try {
                    if (Files.size(file) > LARGEST_BYTES) {
                        problems.add(words.text("photos.tooLarge", file.getFileName(), LARGEST_BYTES >> 20));
                        continue;
                    }
                    String hash = site.store().keepPhoto(Files.readAllBytes(file));
                    display.asyncExec(() -> add(hash, file.getFileName().toString()));
                } catch (IOException e) {
                    problems.add(words.text("photos.unread", file, String.valueOf(e.getMessage())));
                }
            }
            display.asyncExec(() -> say(problems.isEmpty() ? words.text("photos.kept", files.size())
                    : String.join("\n", problems)));
        }).schedule();
    }

    private void add(String hash, String name) {
        ArrayNode rows = site.document().rows(site.key(), PHOTOS);
        site.document().insertRow(site.key(), PHOTOS, rows.size(),
                site.json().mapper().createObjectNode().put("hash", hash).put("name", name));
    }

    private void remove(int row) {
        if (row < site.document().rows(site.key(), PHOTOS).size()) {
            site.document().removeRow(site.key(), PHOTOS, row);
        }
    }

    private void say(String text) {
        if (!said.isDisposed()) {
            said.setText(text);
            said.requestLayout();
        }
    }
}
