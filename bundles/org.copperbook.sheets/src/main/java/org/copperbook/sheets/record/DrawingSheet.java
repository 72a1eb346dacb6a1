package org.copperbook.sheets.record;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.SheetPicture;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.winding.WindingView;

/** The drawings of one winding, as the window shows them, on turned pages. */
public final class DrawingSheet implements RecordSheet {

    /** Wider drawings are cut into strips: their words would be too small to read on A4. */
    private static final double WIDEST = 1500;
    private static final float TALLEST = 405f;

    private final WindingRole role;

    public DrawingSheet(WindingRole role) {
        this.role = role;
    }

    @Override
    public void write(RecordContext c, Book book) {
        List<Scene> scenes = Stream.of(c.job().windingAsFound(role), c.job().windingAsWound(role))
                .flatMap(Optional::stream).flatMap(DrawingSheet::drawn).toList();
        if (scenes.isEmpty()) {
            return;
        }
        SheetPage page = Sheet12.landscape(c, book, c.say("drawing.sheet", c.words().of(role))).page();
        for (Scene scene : scenes) {
            for (Scene strip : scene.strips(WIDEST)) {
                SheetPicture.put(page, strip, TALLEST);
            }
        }
    }

    private static Stream<Scene> drawn(WindingData winding) {
        return Stream.of(WindingView.DEVELOPED, WindingView.END).map(v -> v.of(winding)).filter(s -> !s.isEmpty());
    }
}
