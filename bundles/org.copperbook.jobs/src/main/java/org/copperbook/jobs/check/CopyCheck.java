package org.copperbook.jobs.check;

import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.seal.IssuedCopies;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/**
 * Whether a record workbook that came back is the one that was written.
 *
 * @param result what it is
 * @param words  the same in one sentence
 */
public record CopyCheck(Result result, String words) {

    /** What a workbook can turn out to be. */
    public enum Result {
        /** As written, and the release it shows stands. */
        GENUINE,
        /** As written, but the release it shows was taken back or replaced since. */
        SUPERSEDED,
        /** Of a record that was released here, but no longer as written. */
        ALTERED,
        /** No such workbook was issued for this job from this store. */
        NOT_ISSUED
    }

    /**
     * Checks a workbook against the job it names.
     *
     * @param fingerprint seal that the workbook carries
     * @param digest      SHA-256 of everything that the workbook says
     */
    public static CopyCheck of(Job job, Shop shop, String fingerprint, String digest) {
        IssuedCopies issued = job.part(PartKind.ISSUED_COPIES, IssuedCopies.class).orElse(IssuedCopies.none());
        boolean written = issued.copies().stream()
                .anyMatch(c -> c.digest().equals(digest) && c.fingerprint().equals(fingerprint));
        if (written) {
            boolean stands = HoldPoints.of(HoldPoints.states(job, shop), HoldPoint.RELEASE).state()
                    == HoldPointState.State.SIGNED && Seal.of(job).fingerprint().equals(fingerprint);
            return said(stands ? Result.GENUINE : Result.SUPERSEDED, job, fingerprint);
        }
        return said(issued.knows(fingerprint) ? Result.ALTERED : Result.NOT_ISSUED, job, fingerprint);
    }

    private static CopyCheck said(Result result, Job job, String fingerprint) {
        return new CopyCheck(result, Phrases.say("copy." + result.name().toLowerCase(java.util.Locale.ROOT)
                .replace('_', '-'), job.number(), Seal.shown(fingerprint)));
    }
}
