package org.copperbook.jobs.inspection;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * The workshop's own checklist for the as-found inspection. A job copies its words when its inspection is begun, so a later
 * change of the template leaves earlier jobs as they are.
 *
 * @param schema layout version
 * @param points what is looked at, in this order; none for the list that ships
 * @param more   fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ChecklistTemplate(int schema, List<Point> points, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    private static final String BETWEEN = ":";

    public ChecklistTemplate {
        points = points == null ? List.of() : List.copyOf(points);
        more = more == null ? Map.of() : more;
    }

    /**
     * One point.
     *
     * @param area  heading under which it stands ("mechanical", "visual")
     * @param point what is looked at
     * @param work  work proposed when it is not good; empty for none
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Point(String area, String point, String work, @KeepUnknown Map<String, JsonNode> more) {
        public Point {
            work = work == null ? "" : work;
            more = more == null ? Map.of() : more;
        }
    }

    /** Lines that are no point, with the first as 1. */
    public static final class BadLinesException extends Exception {

        private static final long serialVersionUID = 1L;

        private final transient List<Integer> lines;

        BadLinesException(List<Integer> lines) {
            super("not \"area: point\": " + lines);
            this.lines = List.copyOf(lines);
        }

        /** Numbers of the lines. */
        public List<Integer> lines() {
            return lines;
        }
    }

    /** The template as text: a line for each point, "area: point" or "area: point: work". */
    public String text() {
        List<String> lines = new ArrayList<>();
        for (Point p : points) {
            lines.add(p.area() + BETWEEN + " " + p.point() + (p.work().isBlank() ? "" : BETWEEN + " " + p.work()));
        }
        return String.join("\n", lines);
    }

    /**
     * Reads the text of {@link #text}; blank lines are passed over, and the work may hold further colons.
     *
     * @throws BadLinesException when a line has no area or no point
     */
    public static ChecklistTemplate of(String text) throws BadLinesException {
        List<Point> points = new ArrayList<>();
        List<Integer> bad = new ArrayList<>();
        String[] lines = text.split("\\R", -1);
        for (int i = 0; i < lines.length; i++) {
            String[] parts = lines[i].split(BETWEEN, 3);
            if (lines[i].isBlank()) {
                continue;
            }
            if (parts.length < 2 || parts[0].isBlank() || parts[1].isBlank()) {
                bad.add(i + 1);
            } else {
                points.add(new Point(parts[0].strip(), parts[1].strip(), parts.length > 2 ? parts[2].strip() : "", null));
            }
        }
        if (!bad.isEmpty()) {
            throw new BadLinesException(bad);
        }
        return new ChecklistTemplate(SCHEMA, points, null);
    }

    /**
     * These points as an edited form of an earlier list: what newer versions keep in it that this one cannot show stays
     * where the list, or a point of the same area and name, is still there.
     */
    public ChecklistTemplate madeFrom(ChecklistTemplate earlier) {
        Map<List<String>, Point> known = new HashMap<>();
        earlier.points.forEach(p -> known.putIfAbsent(List.of(p.area(), p.point()), p));
        return new ChecklistTemplate(SCHEMA, points.stream().map(p -> {
            Point was = known.get(List.of(p.area(), p.point()));
            return was == null ? p : new Point(p.area(), p.point(), p.work(), was.more());
        }).toList(), earlier.more);
    }
}
