package org.copperbook.sheets.winding;

import java.util.List;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.winding.Winding;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingModel;
import org.copperbook.sheets.picture.Scene;

/** The drawings of a winding. */
public enum WindingView {
    /** The bore laid flat: coils, jumpers and leads. */
    DEVELOPED,
    /** Seen on the end. */
    END,
    /** The phasors of the slots. */
    STAR,
    /** Magnetomotive force along the bore. */
    MMF;

    /** Whether the view follows from the data without any calculation. */
    public boolean isDrawing() {
        return this == DEVELOPED || this == END;
    }

    /** Draws a winding; {@link Scene#EMPTY} while the data do not suffice for this view. */
    public Scene of(WindingData data) {
        SlotTable table = new SlotTable(data);
        if (isDrawing() && table.coils().isEmpty()) {
            return poles(data);
        }
        return switch (this) {
            case DEVELOPED -> new DevelopedDrawing(data, table).drawn(title(data));
            case END -> new EndView(data, table).drawn(title(data));
            case STAR -> winding(data).map(w -> new StarDrawing(w, Phases.of(data.groups())).drawn(title(data)))
                    .orElse(Scene.EMPTY);
            case MMF -> mmf(data);
        };
    }

    /** A field whose poles have no slots; nothing for any other winding without slots. */
    private Scene poles(WindingData data) {
        boolean any = data.role().isField() && data.groups().stream().anyMatch(g -> !g.coils().isEmpty());
        if (!any) {
            return Scene.EMPTY;
        }
        PoleDrawing poles = new PoleDrawing(data);
        return this == DEVELOPED ? poles.flat(title(data)) : poles.round(title(data));
    }

    private Scene mmf(WindingData data) {
        try {
            return winding(data).map(w -> new MmfDrawing(w).drawn(title(data))).orElse(Scene.EMPTY);
        } catch (OutOfRange | IllegalArgumentException e) {
            return Scene.EMPTY;
        }
    }

    private static Optional<Winding> winding(WindingData data) {
        try {
            return new WindingModel(data).coils();
        } catch (OutOfRange e) {
            return Optional.empty();
        }
    }

    private String title(WindingData data) {
        Sketch words = new Sketch();
        String name = words.say("title." + name(), words.say(data.role()), words.say(data.asWound() ? "asWound" : "asFound"));
        List<String> rest = java.util.stream.Stream.of(
                data.slots() == null ? "" : words.say("title.slots", data.slots()),
                data.poles() == null ? "" : words.say("title.poles", data.poles()),
                words.say(data.coilType()), words.say(data.connection()),
                data.circuits() == null ? "" : words.say("title.circuits", data.circuits())).filter(s -> !s.isEmpty()).toList();
        return name + (rest.isEmpty() ? "" : ": " + String.join(", ", rest));
    }
}
