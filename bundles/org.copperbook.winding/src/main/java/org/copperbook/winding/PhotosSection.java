package org.copperbook.winding;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.RecordGrid;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;

/** Photos of both ends. */
final class PhotosSection implements WindingSection {

    private final OpenWinding winding;

    PhotosSection(OpenWinding winding) {
        this.winding = winding;
    }

    @Override
    public void build(Form here) {
        RecordGrid photos = here.grid("winding.photos", "/photos", columns -> columns
                .text("/caption", "photos.caption")
                .computed("name", "photos.name", row -> row.path("name").asText("")));
        new PhotosArea(here.area("winding.photosAdd"), winding.site(), winding.words(), photos,
                () -> chosenFiles(photos.table()));
    }

    private List<Path> chosenFiles(Control over) {
        FileDialog dialog = new FileDialog(over.getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText(winding.words().text("photos.choose"));
        dialog.setFilterExtensions(new String[] {"*.jpg;*.jpeg;*.png;*.JPG;*.JPEG;*.PNG", "*.*"});
        return dialog.open() == null ? List.of() : Stream.of(dialog.getFileNames())
                .map(name -> Path.of(dialog.getFilterPath(), name)).toList();
    }

    @Override
    public boolean shown(boolean covered) {
        return true;
    }
}
