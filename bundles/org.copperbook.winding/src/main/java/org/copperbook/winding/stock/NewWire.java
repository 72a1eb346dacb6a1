package org.copperbook.winding.stock;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.HoldPoints;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.jobs.winding.WireInHand;
import org.copperbook.jobs.winding.stock.WireProposal;
import org.copperbook.winding.Windings;

/**
 * Writes a chosen wire into the record of the new winding, which is begun from the winding as found where there is none.
 * The winding as found stays as it is.
 */
final class NewWire {

    private final PageSite site;
    private final Words words;

    NewWire(PageSite site, Words words) {
        this.site = site;
        this.words = words;
    }

    /** The winding whose wire is the original: as found where that is recorded, else the one shown. */
    static Optional<WindingData> original(JobDocument document, PartKey shown) {
        return role(document, shown).flatMap(r -> document.part(PartKey.windingAsFound(r), WindingData.class)
                .filter(w -> !w.wire().isEmpty()).or(() -> document.part(shown, WindingData.class)));
    }

    private static Optional<WindingRole> role(JobDocument document, PartKey shown) {
        return document.part(shown, WindingData.class).map(WindingData::role);
    }

    /** The record of the new winding of the same role. */
    static Optional<PartKey> target(JobDocument document, PartKey shown) {
        return role(document, shown).map(PartKey::windingAsWound);
    }

    /**
     * Writes it as one change that Ctrl+Z on the page of the new winding takes back.
     *
     * @param reason why, in the words of whoever chose
     * @return empty when done; else why not, and nothing was changed
     */
    Optional<String> write(WindingData original, WireProposal chosen, String reason) {
        PartKey target = PartKey.windingAsWound(original.role());
        List<String> blocked = HoldPoints.blocks(target, site.document().job(), site.holdPoints());
        if (!blocked.isEmpty()) {
            return Optional.of(String.join(" ", blocked));
        }
        boolean begun = site.document().part(target).isPresent();
        return site.document().change(target, "/wire", tree -> {
            ObjectNode next = begun ? tree
                    : new Windings().beginning(target, site.document().job(), site.json());
            ArrayNode wires = next.putArray("wire");
            chosen.wires().forEach(w -> wires.add(site.json().mapper().<ObjectNode>valueToTree(w)));
            next.put("reason", reason(next.path("reason").asText(""), original, chosen, reason));
            return next;
        });
    }

    /** Other reasons noted before stay; a wire chosen before is named no longer. */
    private String reason(String before, WindingData original, WireProposal chosen, String why) {
        String mark = words.text("stock.reasonMark");
        String kept = before.lines().filter(l -> !l.startsWith(mark)).collect(Collectors.joining("\n")).strip();
        String now = words.text("stock.reason", mark, hand(original.wire()), chosen.label(), why);
        return kept.isEmpty() ? now : kept + "\n" + now;
    }

    /** Wires in hand as on the card: "12 x 1.18 mm". */
    static String hand(List<WireInHand> wires) {
        return wires.stream().map(w -> w.strands() + " \u00d7 " + w.size()).collect(Collectors.joining(" + "));
    }
}
