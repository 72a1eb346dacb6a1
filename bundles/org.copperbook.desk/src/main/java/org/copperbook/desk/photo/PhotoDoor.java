package org.copperbook.desk.photo;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.dnd.TransferData;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Text;

/**
 * Lets photos into a page wherever they are dropped on it, and with Ctrl+V wherever the cursor stands, unless there is
 * text to be pasted into a field.
 */
public final class PhotoDoor {

    private final Composite page;
    private final PhotosArea area;

    /** Opens the door of a page to one of its areas, for as long as the page lives. */
    public PhotoDoor(Composite page, PhotosArea area) {
        this.page = page;
        this.area = area;
        open(page, FileTransfer.getInstance(), ImageTransfer.getInstance());
        page.addListener(SWT.Resize, e -> openFields(page));
        Display display = page.getDisplay();
        Listener paste = this::key;
        display.addFilter(SWT.KeyDown, paste);
        page.addDisposeListener(e -> display.removeFilter(SWT.KeyDown, paste));
    }

    /** Fields refuse files by themselves, so that a photo let go over one would be lost; text still goes into them. */
    private void openFields(Composite in) {
        for (Control c : in.getChildren()) {
            if (isTyped(c) && c.getData(DND.DROP_TARGET_KEY) == null) {
                open(c, FileTransfer.getInstance(), ImageTransfer.getInstance(), TextTransfer.getInstance());
            } else if (c instanceof Composite inner) {
                openFields(inner);
            }
        }
    }

    private static boolean isTyped(Control c) {
        return c instanceof Text || c instanceof Combo && (c.getStyle() & SWT.READ_ONLY) == 0;
    }

    private void open(Control on, Transfer... kinds) {
        DropTarget target = new DropTarget(on, DND.DROP_COPY | DND.DROP_DEFAULT);
        target.setTransfer(kinds);
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent e) {
                if (e.detail == DND.DROP_DEFAULT) {
                    e.detail = DND.DROP_COPY;
                }
            }

            @Override
            public void drop(DropTargetEvent e) {
                if (!let(area, e.data) && e.data instanceof String words && on.isEnabled()) {
                    write(on, words);
                }
            }
        });
    }

    private static void write(Control on, String words) {
        if (on instanceof Text text && text.getEditable()) {
            text.insert(words);
        } else if (on instanceof Combo combo) {
            combo.setText(words);
        }
    }

    /** Takes what lies on the clipboard; false when there is no picture and no file on it. */
    static boolean take(PhotosArea area, Display display) {
        Clipboard clipboard = new Clipboard(display);
        try {
            Object files = clipboard.getContents(FileTransfer.getInstance());
            return let(area, files != null ? files : clipboard.getContents(ImageTransfer.getInstance()));
        } finally {
            clipboard.dispose();
        }
    }

    private static boolean let(PhotosArea area, Object data) {
        if (data instanceof String[] files && files.length > 0) {
            area.keep(Stream.of(files).map(Path::of).toList());
            return true;
        }
        if (data instanceof ImageData picture) {
            area.keep(picture);
            return true;
        }
        return false;
    }

    private void key(Event e) {
        boolean paste = e.keyCode == 'v' && (e.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1;
        if (paste && e.widget instanceof Control c && on(page, c) && page.isVisible() && meant(c)
                && take(area, page.getDisplay())) {
            e.doit = false;
            e.type = SWT.None;
        }
    }

    /** On the photos themselves always; elsewhere only where there is a picture and nothing to be pasted as text. */
    private boolean meant(Control c) {
        if (c == area.strip().table()) {
            return true;
        }
        Clipboard clipboard = new Clipboard(c.getDisplay());
        try {
            TransferData[] there = clipboard.getAvailableTypes();
            return !offers(there, TextTransfer.getInstance()) && (offers(there, ImageTransfer.getInstance())
                    || offers(there, FileTransfer.getInstance()));
        } finally {
            clipboard.dispose();
        }
    }

    private static boolean offers(TransferData[] there, Transfer kind) {
        return Stream.of(there).anyMatch(kind::isSupportedType);
    }

    private static boolean on(Composite page, Control c) {
        for (Control up = c; up != null; up = up.getParent()) {
            if (up == page) {
                return true;
            }
        }
        return false;
    }
}
