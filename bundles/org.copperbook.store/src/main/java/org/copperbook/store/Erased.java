package org.copperbook.store;

import java.util.List;

/**
 * What an erasure did.
 *
 * @param key        what was erased
 * @param jobs       numbers of the jobs that mentioned it
 * @param plainTexts revisions of older versions in which the name still stands as plain text, because the chain does
 *                   not let a revision be changed; 0 for stores begun by this version
 */
public record Erased(String key, List<String> jobs, int plainTexts) {

    public Erased {
        jobs = List.copyOf(jobs);
    }
}
