package org.copperbook.store.jdbc;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.copperbook.store.BadLink;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;

/**
 * Reads an archive into an empty store, inside one writing transaction. Nothing is ever unpacked under a name the archive
 * gives; a file longer than its manifest says, or with another hash, ends the reading.
 */
final class ArchiveReader {

    static final String PHOTOS = "photos/";

    private static final int LARGEST_MANIFEST = 64 << 20;
    private static final int LARGEST_PHOTO = 256 << 20;
    /** Records shrink to a tenth or so; what shrinks to less than this share was made to fill a disk. */
    private static final int MOST_SHRUNK = 200;
    private static final int NEVER_MIND = 1 << 20;

    private final ObjectMapper mapper = new ObjectMapper();
    private final Path archive;

    ArchiveReader(Path archive) {
        this.archive = archive;
    }

    void readInto(Connection c, PhotoTable photos, Instant now) throws SQLException {
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            ArchiveManifest manifest = manifest(zip);
            Map<String, ArchiveManifest.Entry> files = new HashMap<>();
            for (ArchiveManifest.Entry f : manifest.files()) {
                // All of it before the first row, so that a change is called a change and not by what it leads to.
                checked(zip, f, in -> in.transferTo(OutputStream.nullOutputStream()));
                files.put(f.name(), f);
            }
            for (ArchiveTable t : ArchiveTable.ALL) {
                ArchiveManifest.Entry e = files.remove(t.file());
                if (e == null && manifest.copperbookArchive() < t.since()) {
                    continue;
                }
                if (e == null) {
                    throw bad("archive.lacks", t.file());
                }
                checked(zip, e, in -> t.read(c, mapper,
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))));
            }
            for (ArchiveManifest.Entry e : files.values()) {
                if (e.name().startsWith(PHOTOS)) {
                    if (e.bytes() > LARGEST_PHOTO) {
                        throw bad("archive.changed", e.name());
                    }
                    checked(zip, e, in -> photos.put(c, in.readAllBytes(), now));
                }
            }
            finish(c, manifest);
        } catch (IOException | IllegalArgumentException e) {
            // The JDK refuses names that are no text with the latter.
            throw new StoreException(Kind.CORRUPT, StoreText.of("archive.unreadable", archive, e.getMessage()), e);
        }
    }

    private ArchiveManifest manifest(ZipFile zip) throws IOException {
        ZipEntry entry = zip.getEntry(ArchiveManifest.NAME);
        if (entry == null) {
            throw bad("archive.none", "");
        }
        byte[] text;
        try (InputStream in = zip.getInputStream(entry)) {
            text = in.readNBytes(LARGEST_MANIFEST);
        }
        int edition = mapper.readTree(text).path("copperbookArchive").asInt();
        if (edition < 1 || edition > ArchiveManifest.EDITION) {
            throw new StoreException(Kind.NEWER_SCHEMA, StoreText.of("archive.edition", archive, edition));
        }
        ArchiveManifest manifest = mapper.readValue(text, ArchiveManifest.class);
        if (manifest.files() == null || manifest.lastHash() == null
                || manifest.files().stream().anyMatch(f -> f == null || f.name() == null || f.sha256() == null)) {
            throw bad("archive.none", "");
        }
        return manifest;
    }

    /** What is done with a file of the archive. */
    private interface Reading {
        void from(InputStream in) throws IOException, SQLException;
    }

    private void checked(ZipFile zip, ArchiveManifest.Entry e, Reading reading) throws IOException, SQLException {
        ZipEntry entry = zip.getEntry(e.name());
        if (entry == null) {
            throw bad("archive.lacks", e.name());
        }
        if (e.bytes() > NEVER_MIND && e.bytes() / MOST_SHRUNK > entry.getCompressedSize()) {
            throw bad("archive.bomb", e.name());
        }
        MessageDigest sha = Chain.sha256();
        try (InputStream in = zip.getInputStream(entry);
                InputStream bounded = new AtMost(new DigestInputStream(in, sha), e.bytes())) {
            reading.from(bounded);
            if (!HexFormat.of().formatHex(sha.digest()).equals(e.sha256())) {
                throw bad("archive.changed", e.name());
            }
        }
    }

    private void finish(Connection c, ArchiveManifest manifest) throws SQLException {
        try (PreparedStatement head = c.prepareStatement(
                "UPDATE chain_head SET sequence = ?, hash = ? WHERE id = 1")) {
            head.setLong(1, manifest.revisions());
            head.setString(2, manifest.lastHash());
            head.executeUpdate();
        }
        Optional<BadLink> bad = new ChainAudit().firstBad(c);
        if (bad.isPresent()) {
            throw new StoreException(Kind.CORRUPT, StoreText.of("archive.chain", archive, bad.get().message()));
        }
    }

    /** Whether nothing was ever saved in a store. */
    static boolean isEmpty(Connection c) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT (SELECT COUNT(*) FROM revision)"
                + " + (SELECT COUNT(*) FROM person) + (SELECT COUNT(*) FROM photo)"); ResultSet r = q.executeQuery()) {
            r.next();
            return r.getLong(1) == 0;
        }
    }

    private StoreException bad(String key, String name) {
        return new StoreException(Kind.CORRUPT, StoreText.of(key, archive, name));
    }

    /** Ends with an error instead of giving more than was announced, so that a small file cannot fill the disk. */
    private static final class AtMost extends java.io.FilterInputStream {

        private long left;

        AtMost(InputStream in, long most) {
            super(in);
            left = most;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] b, int from, int length) throws IOException {
            int n = in.read(b, from, length);
            left -= Math.max(n, 0);
            if (left < 0) {
                throw new IOException(StoreText.of("archive.longer"));
            }
            return n;
        }
    }
}
