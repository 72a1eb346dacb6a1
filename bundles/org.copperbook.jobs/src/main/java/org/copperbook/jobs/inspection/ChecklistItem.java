package org.copperbook.jobs.inspection;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.copperbook.jobs.PhotoRef;

/**
 * One point of the mechanical and visual checklist.
 *
 * @param area      "mechanical" or "visual", or a heading of the shop's own
 * @param point     what is looked at (shaft, fits, runout, burns, wedges ...)
 * @param condition what was found
 * @param note      remark
 * @param work      work that the template proposes when the point is not good; null for none
 * @param photos    photos
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ChecklistItem(String area, String point, Condition condition, String note, String work, List<PhotoRef> photos,
        @KeepUnknown Map<String, JsonNode> more) {

    /** Condition of a point; null means not yet looked at. */
    public enum Condition { GOOD, WORN, DAMAGED, MISSING, NOT_APPLICABLE }

    public ChecklistItem {
        photos = photos == null ? List.of() : List.copyOf(photos);
        more = more == null ? Map.of() : more;
    }
}
