package org.copperbook.store.copy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.copperbook.store.AuditReport;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;

/** Copies a whole store into an empty one, whatever the engines: every revision keeps its text, time and hash. */
public final class StoreCopy {

    private StoreCopy() {
    }

    /**
     * What was copied, counted in the copy after it was audited.
     *
     * @param revisions links of the chain
     * @param jobs      jobs
     * @param people    people
     * @param lastHash  hash of the last link, which stands for all before it
     */
    public record Copied(long revisions, long jobs, int people, String lastHash) {
    }

    /**
     * Copies, audits the copy and compares it with the original as it was when it was read.
     *
     * @param scratch folder for an archive on the way; nothing stays there
     * @throws StoreException ALREADY_THERE when the target holds anything; CORRUPT when the original does not pass the
     *                        audit or the copy differs, which then is not to be used
     */
    public static Copied copy(JobStore from, JobStore to, Path scratch) {
        Path archive = scratch.resolve("copy-" + UUID.randomUUID() + ".zip");
        try {
            from.archive(archive);
            to.takeInArchive(archive);
        } finally {
            try {
                Files.deleteIfExists(archive);
            } catch (IOException e) {
                System.getLogger(StoreCopy.class.getName()).log(System.Logger.Level.WARNING,
                        "the archive " + archive + " could not be removed", e);
            }
        }
        AuditReport audit = to.audit();
        if (!audit.passed()) {
            throw new StoreException(Kind.CORRUPT, StoreText.of("copy.audit", audit.bad().map(b -> b.message())
                    .orElseGet(() -> String.join(" ", audit.problems()))));
        }
        JobStore.ChainEnd end = to.chainEnd();
        // Others may have gone on saving in the original: its chain must still have the copy's last link in its place.
        if (end.sequence() > 0 && !from.hashOf(end.sequence()).equals(Optional.of(end.hash()))) {
            throw new StoreException(Kind.CORRUPT, StoreText.of("copy.differs", end.sequence(), end.hash()));
        }
        return new Copied(audit.revisions(), audit.jobs(), to.persons().size(), end.hash());
    }
}
