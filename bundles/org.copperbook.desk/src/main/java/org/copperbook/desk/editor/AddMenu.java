package org.copperbook.desk.editor;

import java.util.List;
import java.util.function.Consumer;
import org.copperbook.desk.page.ManyParts;
import org.copperbook.jobs.PartKey;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;

/** Offers the parts that can be added as a menu at the row of the outline; a single offer is taken at once. */
final class AddMenu {

    private AddMenu() {
    }

    static void show(Table outline, List<PartKey> offers, ManyParts names, Consumer<PartKey> chosen) {
        if (offers.size() == 1) {
            chosen.accept(offers.get(0));
            return;
        }
        Menu menu = new Menu(outline);
        for (PartKey key : offers) {
            MenuItem item = new MenuItem(menu, SWT.PUSH);
            item.setText(names.label(key));
            item.addListener(SWT.Selection, e -> chosen.accept(key));
        }
        int row = Math.max(0, outline.getSelectionIndex());
        Rectangle at = outline.getItem(row).getBounds(0);
        menu.setLocation(outline.toDisplay(at.x, at.y + at.height));
        menu.addListener(SWT.Hide, e -> outline.getDisplay().asyncExec(menu::dispose));
        menu.setVisible(true);
    }
}
