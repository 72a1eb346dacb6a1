package org.copperbook.sheets.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;
import org.copperbook.sheets.picture.Mark.Arc;
import org.copperbook.sheets.picture.Mark.Line;
import org.copperbook.sheets.picture.Mark.Text;

/**
 * Writes a scene as SVG: shapes and words only. Each mark that shows something carries what it shows in
 * {@code data-shows}, each its style in {@code class}.
 */
public final class SvgPicture {

    private final Scene scene;
    private final ScenePalette palette;
    private final StringBuilder out;

    private SvgPicture(Scene scene, ScenePalette palette) {
        this.scene = scene;
        this.palette = palette;
        this.out = new StringBuilder(160 * scene.marks().size() + 512);
    }

    /** The whole document in the colours of light paper, to be stored in UTF-8. */
    public static String of(Scene scene) {
        return of(scene, ScenePalette.LIGHT);
    }

    /** The whole document, to be stored in UTF-8. */
    public static String of(Scene scene, ScenePalette palette) {
        return new SvgPicture(scene, palette).written();
    }

    private String written() {
        String w = number(scene.width());
        String h = number(scene.height());
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(w)
                .append("\" height=\"").append(h).append("\" viewBox=\"0 0 ").append(w).append(' ').append(h)
                .append("\">\n<title>").append(escaped(scene.title())).append("</title>\n<rect width=\"").append(w)
                .append("\" height=\"").append(h).append("\" fill=\"").append(hex(palette.paper())).append("\"/>\n");
        scene.marks().forEach(this::mark);
        return out.append("</svg>\n").toString();
    }

    private void mark(Mark mark) {
        if (mark instanceof Line line) {
            out.append("<polyline points=\"").append(line.points().stream()
                    .map(p -> number(p.x()) + "," + number(p.y())).collect(Collectors.joining(" "))).append('"');
            painted(line, line.width(), line.filled());
        } else if (mark instanceof Arc arc) {
            arc(arc);
        } else if (mark instanceof Text text) {
            if (text.backed()) {
                text(text, " stroke=\"" + hex(palette.paper()) + "\" stroke-width=\"4\" stroke-linejoin=\"round\"",
                        palette.paper());
            }
            text(text, shown(text), palette.colour(text.style()));
        }
    }

    private void arc(Arc arc) {
        if (Math.abs(arc.sweepDegrees()) >= 360) {
            out.append("<circle cx=\"").append(number(arc.centre().x())).append("\" cy=\"")
                    .append(number(arc.centre().y())).append("\" r=\"").append(number(arc.radius())).append('"');
        } else {
            Point from = arc.at(arc.startDegrees());
            Point to = arc.at(arc.startDegrees() + arc.sweepDegrees());
            out.append("<path d=\"M").append(number(from.x())).append(' ').append(number(from.y())).append('A')
                    .append(number(arc.radius())).append(' ').append(number(arc.radius())).append(" 0 ")
                    .append(Math.abs(arc.sweepDegrees()) > 180 ? 1 : 0).append(' ').append(arc.sweepDegrees() < 0 ? 1 : 0)
                    .append(' ').append(number(to.x())).append(' ').append(number(to.y())).append('"');
        }
        painted(arc, arc.width(), arc.filled());
    }

    private void painted(Mark mark, double width, boolean filled) {
        String colour = hex(palette.colour(mark.style()));
        out.append(" fill=\"").append(filled ? colour : "none").append('"');
        if (width > 0) {
            out.append(" stroke=\"").append(colour).append("\" stroke-width=\"").append(number(width)).append('"');
            if (!filled && !ScenePalette.pattern(mark.style()).isEmpty()) {
                out.append(" stroke-dasharray=\"").append(ScenePalette.pattern(mark.style()).stream()
                        .map(SvgPicture::number).collect(Collectors.joining(","))).append('"');
            }
        }
        out.append(shown(mark)).append("/>\n");
    }

    private static String shown(Mark mark) {
        return " class=\"" + escaped(mark.style()) + "\""
                + (mark.id().isEmpty() ? "" : " data-shows=\"" + escaped(mark.id()) + "\"");
    }

    private void text(Text text, String more, int colour) {
        // Half of the cap height, for faces whose capitals are about 0.72 em tall.
        double base = text.at().y() + 0.36 * text.size();
        String anchor = switch (text.anchor()) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
        out.append("<text x=\"").append(number(text.at().x())).append("\" y=\"").append(number(base))
                .append("\" font-family=\"sans-serif\" font-size=\"").append(number(text.size())).append("\" text-anchor=\"")
                .append(anchor).append("\" fill=\"").append(hex(colour)).append('"').append(more).append('>')
                .append(escaped(text.text())).append("</text>\n");
    }

    private static String hex(int colour) {
        return String.format("#%06X", colour);
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    /** Text safe between tags and in attributes; characters that XML 1.0 forbids become a replacement mark. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(allowed(c) ? c : 0xFFFD);
            }
        });
        return safe.toString();
    }

    private static boolean allowed(int c) {
        return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000 && c <= 0x10FFFF;
    }
}
