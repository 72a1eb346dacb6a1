package org.copperbook.desk.photo;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.form.FormField;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/**
 * The photos of a part: dropped, pasted or chosen, kept unchanged in the store and named in the record by the hash of
 * their bytes; shown small with what each shows, large with Enter or a click.
 */
public final class PhotosArea implements FormField {

    private static final String KEY = "org.copperbook.photos";
    private static final String CAPTION = "/caption";

    private final PageSite site;
    private final Supplier<Optional<String>> list;
    private final Runnable relayout;
    private final Composite body;
    private final PhotoStrip strip;
    private final Text caption;
    private final Label said;
    private final List<Button> changing = new ArrayList<>();
    private final List<Button> looking = new ArrayList<>();
    private boolean editable = true;
    private boolean showing;

    /**
     * Builds the area.
     *
     * @param area     an empty area
     * @param id       begin of the names of its controls, unlike any other on the page
     * @param list     JSON pointer of the list of photos in the part; empty while there is none to add to
     * @param relayout called when the area needs another height
     */
    public PhotosArea(Composite area, String id, PageSite site, Supplier<Optional<String>> list, Runnable relayout) {
        this.site = site;
        this.list = list;
        this.relayout = relayout;
        this.body = area;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).extendedMargins(0, 0, 0, 10).applyTo(area);
        strip = new PhotoStrip(area, id, site, this::rows, this::selected, this::enlarge);
        strip.table().setData(KEY, this);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(strip.table());
        Label what = look.as(Look.Role.TEXT, new Label(area, SWT.NONE));
        what.setText(DeskWords.text("photo.caption"));
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(what);
        caption = look.as(Look.Role.TEXT, new Text(area, SWT.BORDER));
        caption.setData(Desk.ID, id + ".captionText");
        SpokenName.give(caption, DeskWords.text("photo.caption"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(caption);
        Composite buttons = new Composite(area, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(8).wrap(true).applyTo(buttons);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT)
                .applyTo(buttons);
        changing.add(button(buttons, look, id, "photo.add", this::choose));
        changing.add(button(buttons, look, id, "photo.paste", this::paste));
        looking.add(button(buttons, look, id, "photo.enlarge", this::enlarge));
        looking.add(button(buttons, look, id, "photo.save", this::saveOriginal));
        changing.add(button(buttons, look, id, "photo.remove", this::remove));
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        said.setText(DeskWords.text("photo.hint"));
        caption.addListener(SWT.Modify, e -> captionTyped());
        caption.addListener(SWT.FocusOut, e -> site.document().closeStep(site.key()));
        caption.addListener(SWT.DefaultSelection, e -> strip.table().setFocus());
        refresh();
    }

    /** The area behind the table of a strip; null when the table is no strip's. */
    public static PhotosArea of(Table table) {
        return table.getData(KEY) instanceof PhotosArea a ? a : null;
    }

    /** Whether the small picture of a photo has been made and can be shown. */
    public boolean isShown(int row) {
        String hash = rows().path(row).path("hash").asText("");
        Optional<Image> small = Thumbnails.of(body.getDisplay()).get(site.store(), hash, () -> { });
        return small != null && small.isPresent();
    }

    /** Keeps files as photos of the part: reads them in the background, and says of each that cannot be kept why. */
    public void keep(List<Path> files) {
        keepAll(files.stream().map(f -> (Supplier<PhotoIntake.Looked>) () -> PhotoIntake.read(f)).toList());
    }

    /** Keeps a picture that came without a file, as a PNG file. */
    void keep(ImageData picture) {
        String name = DeskWords.text("photo.pastedName",
                java.time.LocalDateTime.now().withNano(0).toString().replace(':', '-').replace('T', '-'));
        keepAll(List.of(() -> PhotoIntake.look(name, Pixels.png(picture))));
    }

    /** Takes what lies on the clipboard; says so when there is no picture on it. */
    public void paste() {
        if (!PhotoDoor.take(this, body.getDisplay())) {
            say(DeskWords.text("photo.nothingToPaste"));
        }
    }

    /** What was said last, for whoever drives the window in tests. */
    public String said() {
        return said.getText();
    }

    /** The strip of small pictures. */
    PhotoStrip strip() {
        return strip;
    }

    @Override
    public String pointer() {
        return list.get().orElse("photos");
    }

    @Override
    public void refresh() {
        if (strip.table().isDisposed()) {
            return;
        }
        if (strip.refresh()) {
            relayout.run();
        }
        boolean open = editable && list.get().isPresent();
        boolean one = strip.row() >= 0;
        changing.forEach(b -> b.setEnabled(open));
        changing.get(changing.size() - 1).setEnabled(open && one);
        looking.forEach(b -> b.setEnabled(one));
        caption.setEnabled(open && one);
        showing = true;
        String now = one ? rows().path(strip.row()).path("caption").asText("") : "";
        if (!now.equals(caption.getText())) {
            caption.setText(now);
        }
        showing = false;
    }

    @Override
    public void show(List<Verdict> here) {
        // What is judged about photos stands in the panel of verdicts.
    }

    @Override
    public void enable(boolean enabled) {
        editable = enabled;
        refresh();
    }

    @Override
    public void focus() {
        strip.table().setFocus();
    }

    private ArrayNode rows() {
        return list.get().map(l -> site.document().rows(site.key(), l))
                .orElseGet(() -> site.json().mapper().createArrayNode());
    }

    private void selected() {
        site.document().closeStep(site.key());
        refresh();
    }

    private void captionTyped() {
        if (!showing && strip.row() >= 0) {
            String text = caption.getText();
            list.get().ifPresent(l -> site.document().set(site.key(), l + "/" + strip.row() + CAPTION,
                    text.isBlank() ? null : TextNode.valueOf(text)));
        }
    }

    private void choose() {
        FileDialog dialog = new FileDialog(body.getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText(DeskWords.text("photo.choose"));
        dialog.setFilterExtensions(new String[] {"*.jpg;*.jpeg;*.png;*.JPG;*.JPEG;*.PNG;*.heic;*.HEIC", "*.*"});
        if (dialog.open() != null) {
            keep(Stream.of(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath(), name)).toList());
        }
    }

    private void keepAll(List<Supplier<PhotoIntake.Looked>> coming) {
        Optional<String> into = list.get();
        if (!editable || into.isEmpty()) {
            say(DeskWords.text("photo.closed"));
            return;
        }
        Display display = body.getDisplay();
        say(DeskWords.text("photo.keeping"));
        new DeskJob(DeskWords.text("photo.keeping"), monitor -> {
            monitor.beginTask(DeskWords.text("photo.keeping"), coming.size());
            List<String> refused = new ArrayList<>();
            List<PhotoIntake.Looked.Good> good = new ArrayList<>();
            List<String> hashes = new ArrayList<>();
            for (Supplier<PhotoIntake.Looked> one : coming) {
                if (monitor.isCanceled()) {
                    break;
                }
                PhotoIntake.Looked looked = one.get();
                if (looked instanceof PhotoIntake.Looked.Good g) {
                    good.add(g);
                    hashes.add(site.store().keepPhoto(g.bytes()));
                } else if (looked instanceof PhotoIntake.Looked.Refused r) {
                    refused.add(r.why());
                }
                monitor.worked(1);
            }
            display.asyncExec(() -> kept(into.get(), good, hashes, refused));
        }).schedule();
    }

    private void kept(String into, List<PhotoIntake.Looked.Good> good, List<String> hashes, List<String> refused) {
        if (body.isDisposed()) {
            return;
        }
        int twice = 0;
        for (int i = 0; i < good.size(); i++) {
            ArrayNode rows = site.document().rows(site.key(), into);
            if (rows.findValuesAsText("hash").contains(hashes.get(i))) {
                twice++;
            } else {
                site.document().insertRow(site.key(), into, rows.size(), site.json().mapper().createObjectNode()
                        .put("hash", hashes.get(i)).put("name", good.get(i).name())).ifPresent(refused::add);
            }
        }
        List<String> lines = new ArrayList<>();
        if (good.size() > twice) {
            lines.add(DeskWords.text("photo.kept", good.size() - twice));
            strip.select(rows().size() - 1);
        }
        if (twice > 0) {
            lines.add(DeskWords.text("photo.twice", twice));
        }
        lines.addAll(refused);
        refresh();
        say(String.join("\n", lines));
    }

    private void remove() {
        int row = strip.row();
        if (row >= 0) {
            list.get().ifPresent(l -> site.document().removeRow(site.key(), l, row));
            refresh();
        }
    }

    private void enlarge() {
        if (strip.row() >= 0) {
            new PhotoWindow(body.getShell(), site.store(), rows(), strip.row()).open();
        }
    }

    private void saveOriginal() {
        String hash = rows().path(strip.row()).path("hash").asText("");
        String name = rows().path(strip.row()).path("name").asText("");
        FileDialog dialog = new FileDialog(body.getShell(), SWT.SAVE);
        dialog.setText(DeskWords.text("photo.saveAs"));
        dialog.setFileName(name.replaceAll("[/\\\\:]+", "-"));
        dialog.setOverwrite(true);
        String to = dialog.open();
        if (to != null) {
            saveTo(hash, Path.of(to));
        }
    }

    /** Writes the bytes of a photo as they were kept. */
    public void saveTo(String hash, Path to) {
        Display display = body.getDisplay();
        new DeskJob(DeskWords.text("photo.saveAs"), monitor -> {
            String line;
            try {
                Optional<byte[]> bytes = site.store().photo(hash);
                if (bytes.isPresent()) {
                    Files.write(to, bytes.get());
                }
                line = DeskWords.text(bytes.isPresent() ? "photo.saved" : "photo.gone", to);
            } catch (IOException e) {
                line = DeskWords.text("photo.notSaved", to, String.valueOf(e.getMessage()));
            }
            String now = line;
            display.asyncExec(() -> say(now));
        }).schedule();
    }

    private void say(String text) {
        if (!said.isDisposed() && !said.getText().equals(text)) {
            said.setText(text);
            relayout.run();
        }
    }

    private static Button button(Composite parent, Look look, String id, String key, Runnable action) {
        Button b = look.as(Look.Role.TEXT, new Button(parent, SWT.PUSH));
        b.setText(DeskWords.text(key));
        b.setData(Desk.ID, key.replaceFirst("photo", id));
        b.addListener(SWT.Selection, e -> action.run());
        return b;
    }
}
