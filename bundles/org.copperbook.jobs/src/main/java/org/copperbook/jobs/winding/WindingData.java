package org.copperbook.jobs.winding;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PhotoRef;
import org.copperbook.jobs.reading.Reading;

/**
 * One winding: how it is wound, connected and sized, and what it reads. Lengths in metres, masses in kilograms.
 *
 * @param schema            layout version
 * @param role              which winding
 * @param asWound           true for the new winding, false for the old one as found
 * @param slots             slots of the core
 * @param poles             poles
 * @param phases            phases (0 for a field winding)
 * @param layers            coil sides per slot (1 or 2); layers of wire for a field pole
 * @param coilType          how the coils are laid
 * @param coilCount         coils in all
 * @param coilsPerGroup     coils per group, when regular
 * @param groupsPerPhase    groups per phase
 * @param groupSequence     sizes of the groups in turn when uneven, e.g. "3-2-2-2"
 * @param span              span as slot pairs, e.g. "1-9" or "1-12, 2-11, 3-10"
 * @param turnsPerCoil      turns per coil, when regular; turns per pole of a field
 * @param wire              wires in hand
 * @param circuits          parallel circuits per phase
 * @param connection        how the phases are joined
 * @param leads             leads brought out
 * @param jumper            jumper type between groups ("adjacent", "skip one")
 * @param leadExit          end the leads come out
 * @param leadLengthM       length of the leads, m
 * @param meanTurnM         mean length of turn, measured on the old coil, m
 * @param overhangDEM       overhang at the drive end, m
 * @param overhangNDEM      overhang at the non-drive end, m
 * @param coreLengthM       core length, m
 * @param boreM             bore (or rotor outside diameter), m
 * @param outsideM          outside diameter of the core, m
 * @param slotDepthM        slot depth, m
 * @param slotWidthTopM     slot width at the opening end, m
 * @param slotWidthBottomM  slot width at the bottom, m
 * @param toothWidthM       tooth width, m
 * @param yokeDepthM        yoke depth, m
 * @param ventCount         radial vents
 * @param ventWidthM        width of a vent, m
 * @param skew              skew, in slots
 * @param slotInsulation    slot insulation
 * @param wedge             slot wedge
 * @param thermalClass      thermal class of the insulation (IEC 60085)
 * @param conductor         conductor form
 * @param polaritySequence  pole polarity in turn, e.g. "N S N S"
 * @param copperRemovedKg   mass of copper taken out, kg
 * @param groups            coil groups
 * @param readings          phase and terminal readings
 * @param counts            independent counts
 * @param proposedFrom      where the data was taken over from, until confirmed
 * @param takenOver         what was taken over and who confirmed it, oldest first
 * @param reason            why the new winding differs from the old
 * @param photos            photos of both ends
 * @param note              remark
 * @param more              fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record WindingData(int schema, WindingRole role, boolean asWound, Integer slots, Integer poles,
        Integer phases, Integer layers, CoilType coilType, Integer coilCount, Integer coilsPerGroup,
        Integer groupsPerPhase, String groupSequence, String span, Integer turnsPerCoil, List<WireInHand> wire,
        Integer circuits, Connection connection, Integer leads, String jumper, String leadExit, Double leadLengthM,
        Double meanTurnM, Double overhangDEM, Double overhangNDEM, Double coreLengthM, Double boreM,
        Double outsideM, Double slotDepthM, Double slotWidthTopM, Double slotWidthBottomM, Double toothWidthM,
        Double yokeDepthM, Integer ventCount, Double ventWidthM, Double skew, String slotInsulation, String wedge,
        String thermalClass, Conductor conductor, String polaritySequence, Double copperRemovedKg,
        List<CoilGroup> groups, List<Reading> readings, List<TurnCount> counts, String proposedFrom, List<TakenOver> takenOver,
        String reason, List<PhotoRef> photos, String note, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    /** How coils are laid. */
    public enum CoilType { LAP, CONCENTRIC, WAVE, FIELD_POLE }

    /** How the phases are joined. */
    public enum Connection { STAR, DELTA, SERIES_STAR, PARALLEL_STAR, SERIES_DELTA, PARALLEL_DELTA, ZIG_ZAG,
        OPEN_PHASES, SINGLE_PHASE, SERIES_POLES, PARALLEL_POLES }

    /** Conductor form. */
    public enum Conductor { ROUND, RECTANGULAR }

    public WindingData {
        wire = wire == null ? List.of() : List.copyOf(wire);
        groups = groups == null ? List.of() : List.copyOf(groups);
        readings = readings == null ? List.of() : List.copyOf(readings);
        counts = counts == null ? List.of() : List.copyOf(counts);
        takenOver = takenOver == null ? List.of() : List.copyOf(takenOver);
        photos = photos == null ? List.of() : List.copyOf(photos);
        more = more == null ? Map.of() : more;
    }
}
