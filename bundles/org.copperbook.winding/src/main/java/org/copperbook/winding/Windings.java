package org.copperbook.winding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.copperbook.desk.page.ManyParts;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.winding.BlindCounts;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/** The windings a machine has, each as found and as wound; the new winding stands beside the old, never over it. */
public final class Windings implements ManyParts {

    private static final List<WindingRole> ALTERNATOR = List.of(WindingRole.MAIN_STATOR, WindingRole.MAIN_ROTOR,
            WindingRole.EXCITER_STATOR, WindingRole.EXCITER_ROTOR, WindingRole.PILOT_STATOR);
    private static final List<WindingRole> CAGE_MOTOR = List.of(WindingRole.MOTOR_STATOR);
    private static final List<WindingRole> WOUND_ROTOR_MOTOR =
            List.of(WindingRole.MOTOR_STATOR, WindingRole.MOTOR_ROTOR);

    /** What belongs to the old winding alone and is not carried into the record of the new one. */
    private static final List<String> OLD_ONLY =
            List.of("readings", "counts", "copperRemovedKg", "photos", "note", "proposedFrom", "takenOver",
                    "reason");

    private final Words words = Words.of(Windings.class);

    @Override
    public List<PartKey> offers(Job job) {
        List<PartKey> offers = new ArrayList<>();
        List<WindingRole> roles = roles(job);
        roles.stream().map(PartKey::windingAsFound).filter(k -> job.part(k).isEmpty()).forEach(offers::add);
        roles.stream().filter(r -> job.windingAsFound(r).isPresent()).map(PartKey::windingAsWound)
                .filter(k -> job.part(k).isEmpty()).forEach(offers::add);
        return offers;
    }

    private static List<WindingRole> roles(Job job) {
        MachineKind kind = job.booking().map(Booking::machineKind).orElse(MachineKind.BRUSHLESS_ALTERNATOR);
        return switch (kind) {
            case BRUSHLESS_ALTERNATOR -> ALTERNATOR;
            case INDUCTION_MOTOR_CAGE -> CAGE_MOTOR;
            case INDUCTION_MOTOR_WOUND_ROTOR -> WOUND_ROTOR_MOTOR;
        };
    }

    @Override
    public String label(PartKey key) {
        String label = words.text(isAsWound(key) ? "winding.labelAsWound" : "winding.labelAsFound", words.of(role(key)));
        return label.substring(0, 1).toUpperCase(Locale.getDefault()) + label.substring(1);
    }

    @Override
    public int place(PartKey key) {
        return role(key).ordinal();
    }

    @Override
    public ObjectNode beginning(PartKey key, Job job, PartJson json) {
        WindingRole role = role(key);
        ObjectNode tree = json.mapper().createObjectNode();
        if (isAsWound(key) && job.windingAsFound(role).isPresent()) {
            WindingData old = job.windingAsFound(role).get();
            tree = json.tree(BlindCounts.covers(old) ? BlindCounts.withoutTurns(old) : old);
            tree.remove(OLD_ONLY);
            JsonNode groups = tree.path("groups");
            if (groups instanceof ArrayNode list) {
                list.forEach(g -> ((ObjectNode) g).remove("resistance"));
            }
            tree.put("proposedFrom", words.text("winding.fromAsFound"));
        }
        tree.put("schema", WindingData.SCHEMA).put("role", role.word()).put("asWound", isAsWound(key));
        ObjectNode into = tree;
        if (!tree.has("poles")) {
            job.nameplate().filter(p -> p.poles() != null && sharesThePlate(role))
                    .ifPresent(p -> into.put("poles", p.poles()));
        }
        if (!tree.has("phases")) {
            tree.put("phases", role.isField() ? 0 : job.nameplate().filter(p -> p.phases() != null
                    && sharesThePlate(role)).map(Nameplate::phases).orElse(3));
        }
        if (!tree.has("coilType")) {
            tree.put("coilType", (role.isField() ? WindingData.CoilType.FIELD_POLE : WindingData.CoilType.LAP).name());
        }
        if (!tree.has("conductor")) {
            tree.put("conductor", WindingData.Conductor.ROUND.name());
        }
        return tree;
    }

    /** Only the main machine shares poles and phases with the plate; exciters have their own. */
    private static boolean sharesThePlate(WindingRole role) {
        return role == WindingRole.MAIN_STATOR || role == WindingRole.MAIN_ROTOR || role == WindingRole.MOTOR_STATOR
                || role == WindingRole.MOTOR_ROTOR;
    }

    private static boolean isAsWound(PartKey key) {
        return key.name().endsWith(PartKey.AS_WOUND);
    }

    private static WindingRole role(PartKey key) {
        String name = key.name();
        return WindingRole.of(isAsWound(key) ? name.substring(0, name.length() - PartKey.AS_WOUND.length()) : name);
    }
}
