package org.copperbook.jobs.rectifier;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.EnumMap;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.rectifier.DiodePosition.BasePolarity;

/**
 * The rotating rectifier as found and as left.
 *
 * @param schema          layout version
 * @param circuit         full-wave (six diodes) or half-wave (three)
 * @param positions       the diodes, position by position
 * @param duty            what the set has to carry, where the nameplate does not say it; null when not stated
 * @param fitted          the set fitted, or null while the old one stays
 * @param suppressor      surge suppressor
 * @param reasonForChange why the set was changed
 * @param note            remark
 * @param more            fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record RectifierSet(int schema, Circuit circuit, List<DiodePosition> positions, Duty duty, FittedSet fitted,
        Suppressor suppressor, String reasonForChange, String note,
        @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    /** Rectifier circuits. */
    public enum Circuit {
        FULL_WAVE(6), HALF_WAVE(3);

        private final int diodes;

        Circuit(int diodes) {
            this.diodes = diodes;
        }

        /** Diodes in the circuit. */
        public int diodes() {
            return diodes;
        }
    }

    /**
     * What the set has to carry. A figure stated here goes before the nameplate's.
     *
     * @param fieldV       main-field volts at rated load, V dc
     * @param fieldA       main-field amps at rated load, A dc
     * @param exciterLineV line volts of the exciter armature at rated load, V rms
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Duty(Double fieldV, Double fieldA, Double exciterLineV, @KeepUnknown Map<String, JsonNode> more) {
        public Duty {
            more = more == null ? Map.of() : more;
        }
    }

    /**
     * How many diodes of each base polarity a complete set has: by the plate of each position, else by what sits in it. A bridge
     * has as many of the one as of the other, also while nothing is written down about its positions; of half a bridge nobody
     * knows then. Cathode comes first.
     */
    public Map<BasePolarity, Integer> needed() {
        Map<BasePolarity, Integer> counts = new EnumMap<>(BasePolarity.class);
        for (DiodePosition p : positions) {
            BasePolarity base = p.plate() != null ? p.plate().base() : p.basePolarity();
            if (base != null) {
                counts.merge(base, 1, Integer::sum);
            }
        }
        boolean whole = circuit != null && counts.values().stream().mapToInt(Integer::intValue).sum() == circuit.diodes();
        if (!whole && circuit == Circuit.FULL_WAVE) {
            int half = circuit.diodes() / 2;
            return new EnumMap<>(Map.of(BasePolarity.CATHODE_BASE, half, BasePolarity.ANODE_BASE, half));
        }
        return whole ? counts : Map.of();
    }

    public RectifierSet {
        positions = positions == null ? List.of() : List.copyOf(positions);
        more = more == null ? Map.of() : more;
    }
}
