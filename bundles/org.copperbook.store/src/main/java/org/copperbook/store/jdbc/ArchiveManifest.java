package org.copperbook.store.jdbc;

import java.util.List;

/**
 * What an archive says of itself.
 *
 * @param copperbookArchive edition of the format
 * @param revisions         links of the chain
 * @param lastHash          hash of the last link
 * @param files             every other file in it
 */
record ArchiveManifest(int copperbookArchive, long revisions, String lastHash, List<Entry> files) {

    static final int EDITION = 2;
    static final String NAME = "manifest.json";

    /**
     * A file in the archive.
     *
     * @param name   its name
     * @param bytes  its length
     * @param sha256 SHA-256 of its content, lower-case hex
     */
    record Entry(String name, long bytes, String sha256) {
    }
}
