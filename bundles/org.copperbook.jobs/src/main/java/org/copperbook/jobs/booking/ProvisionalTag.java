package org.copperbook.jobs.booking;

import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a machine is called that is booked in and has no number yet, because the server that gives it is silent. The short
 * name is for people and may be another machine's too; the code carries the job's whole key, so that a tag printed before
 * still leads to the job when it has its number.
 *
 * @param jobId key of the job, a UUID
 */
public record ProvisionalTag(String jobId) {

    private static final String MARK = "T-";
    private static final int NAME_CHARS = 4;
    private static final Pattern CODE = Pattern.compile(MARK
            + "([0-9A-F]{8})([0-9A-F]{4})([0-9A-F]{4})([0-9A-F]{4})([0-9A-F]{12})");

    /** @throws IllegalArgumentException when the key is no UUID */
    public ProvisionalTag {
        jobId = UUID.fromString(jobId).toString();
    }

    /** The short name, like T-3F0A. */
    public String name() {
        String bare = bare();
        return MARK + bare.substring(bare.length() - NAME_CHARS);
    }

    /** What stands in the code in place of the job number. */
    public String inCode() {
        return MARK + bare();
    }

    /** The tag, if what a code says in place of a number is one. */
    public static Optional<ProvisionalTag> read(String inCode) {
        Matcher m = CODE.matcher(inCode == null ? "" : inCode);
        return m.matches() ? Optional.of(new ProvisionalTag(String.join("-", m.group(1), m.group(2), m.group(3),
                m.group(4), m.group(5)).toLowerCase(Locale.ROOT))) : Optional.empty();
    }

    private String bare() {
        return jobId.replace("-", "").toUpperCase(Locale.ROOT);
    }
}
