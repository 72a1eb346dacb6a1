package org.copperbook.store.jdbc;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.winding.BlindCounts;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.store.JobStore;
import org.copperbook.store.memory.Remembered;

/**
 * A remembered winding with the texts by which it is found.
 *
 * @param winding     what is shown
 * @param search      folded text of everything a person may look for
 * @param fingerprint of a card's content, empty for a winding of a job
 */
record PastWindingEntry(Remembered winding, String search, String fingerprint) {

    /** Raised whenever rows are derived differently, so that stores make their list anew. */
    static final int EDITION = 2;

    /** The windings of a job that say enough to be taken over. */
    static List<PastWindingEntry> of(Job job, Map<PartKey, Integer> revisions, Instant changedAt) {
        List<PastWindingEntry> found = new ArrayList<>();
        Nameplate plate = job.nameplate().orElse(null);
        for (PartKey key : job.keys(PartKind.WINDING)) {
            WindingData data = (WindingData) job.parts().get(key);
            // While its turns are counted twice, blind, nobody finds them here either.
            if (data.role() != null && says(data) && !BlindCounts.covers(data)) {
                found.add(entry(job.id(), key, revisions.getOrDefault(key, 1), job.number(), data, plate, changedAt,
                        ""));
            }
        }
        return found;
    }

    /** The winding on a card; nothing when it says nothing of one. */
    static Optional<PastWindingEntry> of(OldCard card, PartKey key, int revision, Instant at, PartJson json) {
        WindingData data = card.winding();
        if (data == null || data.role() == null || !says(data)) {
            return Optional.empty();
        }
        return Optional.of(entry(JobStore.CARDS, key, revision, text(card.card()), data, card.plate(), at,
                fingerprint(card, json)));
    }

    /** The key of a card: by its number, or by its content when it has none. */
    static PartKey key(OldCard card, PartJson json) {
        String number = SearchText.fold(text(card.card()));
        return new PartKey(PartKind.OLD_CARD, number.isEmpty() ? "c-" + fingerprint(card, json).substring(0, 32)
                : "n-" + digest(number).substring(0, 32));
    }

    /** A digest of what the card says, wherever it was read from. */
    static String fingerprint(OldCard card, PartJson json) {
        return digest(json.write(new OldCard(OldCard.SCHEMA, text(card.card()), text(card.date()), card.plate(),
                card.winding(), null, null, card.more())));
    }

    private static boolean says(WindingData d) {
        return d.turnsPerCoil() != null || d.groups().stream().anyMatch(g -> !g.coils().isEmpty());
    }

    private static PastWindingEntry entry(String jobId, PartKey key, int revision, String number, WindingData d,
            Nameplate plate, Instant at, String fingerprint) {
        String maker = plate == null ? "" : text(plate.maker());
        String type = plate == null ? "" : text(plate.type());
        String serial = plate == null ? "" : text(plate.serial());
        Remembered row = new Remembered(jobId, key, revision, number, d.role(), d.asWound(),
                d.proposedFrom() != null && !d.proposedFrom().isBlank(), maker, type, serial, figures(d, plate),
                text(d.span()), d.turnsPerCoil(), wire(d), d.circuits(),
                d.connection() == null ? "" : d.connection().name(), at);
        String search = Stream.of(number, maker, type, serial).filter(s -> !s.isBlank()).map(SearchText::fold)
                .collect(Collectors.joining("\n"));
        return new PastWindingEntry(row, search, fingerprint);
    }

    static MachineFigures figures(WindingData d, Nameplate plate) {
        Double rating = plate == null ? null : plate.apparentPowerVA() != null ? plate.apparentPowerVA()
                : plate.powerW();
        Integer poles = d.poles() != null || plate == null ? d.poles() : plate.poles();
        return new MachineFigures(known(rating), known(poles), known(d.slots()), known(d.boreM()),
                known(d.coreLengthM()), known(plate == null ? null : plate.voltageV()));
    }

    /** Not a number for what is unknown or cannot be: a zero on a card is a gap and no figure. */
    private static double known(Number value) {
        double v = value == null ? Double.NaN : value.doubleValue();
        return v > 0 && Double.isFinite(v) ? v : Double.NaN;
    }

    private static String wire(WindingData d) {
        return d.wire().stream().map(w -> w.strands() + " \u00d7 " + w.size()).filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
    }

    private static String text(String value) {
        return value == null ? "" : value.strip();
    }

    private static String digest(String text) {
        try {
            return HexFormat.of().formatHex(
                    MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
