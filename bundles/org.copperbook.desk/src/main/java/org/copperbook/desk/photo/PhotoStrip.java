package org.copperbook.desk.photo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.Optional;
import java.util.function.Supplier;
import org.copperbook.desk.Desk;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Palette;
import org.copperbook.desk.theme.Rows;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The photos of a list one below the other: small picture, what it shows, file. Only those in sight are made. */
final class PhotoStrip {

    /** Key under which a row says that it has been looked at. */
    private static final String MADE = "made";
    private static final int LINES = 4;
    private static final int MOST_SHOWN = 4;
    private static final int CAPTION_CHARS = 30;
    private static final int FRAME = 3;

    private final Table table;
    private final PageSite site;
    private final Supplier<ArrayNode> rows;
    private final FittedColumns widths;
    private ArrayNode shown;

    /**
     * Builds the strip.
     *
     * @param id       begin of the table's name
     * @param rows     the photos as the draft has them now
     * @param selected told when another photo is chosen
     * @param enlarge  told when the chosen photo is to be seen large
     */
    PhotoStrip(Composite parent, String id, PageSite site, Supplier<ArrayNode> rows, Runnable selected, Runnable enlarge) {
        this.site = site;
        this.rows = rows;
        Look look = Look.of(parent);
        table = look.as(Look.Role.TEXT, new Table(parent, SWT.BORDER | SWT.VIRTUAL | SWT.SINGLE | SWT.FULL_SELECTION
                | SWT.V_SCROLL | SWT.H_SCROLL));
        // The toolkit complains of headings laid out at no height; this holds until the page is laid out.
        table.setSize(look.chars(CAPTION_CHARS), LINES * look.rowHeight());
        table.setData(Desk.ID, id + "s");
        SpokenName.give(table, DeskWords.text("photo.strip"));
        column("photo.picture");
        column("photo.caption");
        column("photo.file");
        Rows.dress(table, column -> column == 0);
        table.addListener(SWT.MeasureItem, e -> e.height = Math.max(e.height, LINES * look.rowHeight()));
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.PaintItem, this::paint);
        widths = new FittedColumns(table, pictureChars(look), CAPTION_CHARS, 0);
        table.addListener(SWT.Selection, e -> selected.run());
        table.addListener(SWT.DefaultSelection, e -> enlarge.run());
        table.addListener(SWT.MouseUp, e -> {
            TableItem under = table.getItem(new org.eclipse.swt.graphics.Point(e.x, e.y));
            if (e.button == 1 && under != null && under.getBounds(0).contains(e.x, e.y)) {
                enlarge.run();
            }
        });
    }

    Table table() {
        return table;
    }

    /** Index of the chosen photo; -1 when none is. */
    int row() {
        int i = table.getSelectionIndex();
        return i < rows.get().size() ? i : -1;
    }

    void select(int index) {
        table.setSelection(index);
    }

    /** Shows what the draft holds now; true when the strip needs another height. */
    boolean refresh() {
        ArrayNode now = rows.get();
        if (now.equals(shown)) {
            return false;
        }
        int before = shown == null ? -1 : shown.size();
        shown = now.deepCopy();
        int chosen = table.getSelectionIndex();
        table.setItemCount(now.size());
        table.clearAll();
        widths.fit();
        if (!now.isEmpty()) {
            table.setSelection(Math.max(0, Math.min(chosen, now.size() - 1)));
        }
        if (before == now.size()) {
            return false;
        }
        Look look = Look.of(table);
        GridData data = (GridData) table.getLayoutData();
        if (data != null) {
            data.exclude = now.isEmpty();
            data.heightHint = Math.min(MOST_SHOWN, now.size()) * (LINES * look.rowHeight() + 4) + look.rowHeight();
        }
        table.setVisible(!now.isEmpty());
        return true;
    }

    private void column(String key) {
        TableColumn c = new TableColumn(table, SWT.LEFT);
        c.setText(DeskWords.text(key));
        table.setHeaderVisible(true);
    }

    private static int pictureChars(Look look) {
        return (LINES * look.rowHeight() * 4 / 3 + 2 * FRAME) / look.chars(1);
    }

    private void fill(Event e) {
        TableItem item = (TableItem) e.item;
        JsonNode photo = rows.get().path(table.indexOf(item));
        item.setText(1, photo.path("caption").asText(""));
        item.setText(2, photo.path("name").asText(""));
        item.setData(MADE, Boolean.TRUE);
    }

    private void paint(Event e) {
        int row = table.indexOf((TableItem) e.item);
        String hash = rows.get().path(row).path("hash").asText("");
        if (e.index != 0 || hash.isEmpty()) {
            return;
        }
        Rectangle all = new Rectangle(((TableItem) e.item).getBounds(0).x + FRAME, e.y + FRAME,
                table.getColumn(0).getWidth() - 2 * FRAME, e.height - 2 * FRAME);
        Optional<Image> small = Thumbnails.of(table.getDisplay()).get(site.store(), hash, () -> {
            if (!table.isDisposed()) {
                table.redraw();
            }
        });
        Palette palette = Look.of(table).palette();
        if (small == null || small.isEmpty()) {
            e.gc.setForeground(palette.muted());
            e.gc.drawText(DeskWords.text(small == null ? "photo.coming" : "photo.cannotShow"), all.x, all.y, true);
            return;
        }
        Rectangle size = small.get().getBounds();
        double scale = Math.min((double) all.width / size.width, (double) all.height / size.height);
        int w = Math.max(1, (int) (size.width * scale));
        int h = Math.max(1, (int) (size.height * scale));
        e.gc.setInterpolation(SWT.HIGH);
        e.gc.drawImage(small.get(), 0, 0, size.width, size.height, all.x + (all.width - w) / 2,
                all.y + (all.height - h) / 2, w, h);
    }
}
