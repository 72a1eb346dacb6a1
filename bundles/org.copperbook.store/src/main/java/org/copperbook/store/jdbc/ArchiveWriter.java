package org.copperbook.store.jdbc;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.files.DurableFile;

/** Writes a whole store as a zip of text files, photos and a manifest; the target appears only when it is whole. */
final class ArchiveWriter {

    private final ObjectMapper mapper = new ObjectMapper();
    private final PersonalTable personal;
    private final List<ArchiveManifest.Entry> entries = new ArrayList<>();

    ArchiveWriter(PersonalTable personal) {
        this.personal = personal;
    }

    void write(Connection c, Path target) throws SQLException {
        Path whole = target.toAbsolutePath().normalize();
        if (Files.exists(whole)) {
            throw new StoreException(Kind.ALREADY_THERE, StoreText.of("archive.there", whole));
        }
        Path beside = whole.resolveSibling("." + whole.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            Files.createDirectories(whole.getParent());
            try {
                try (ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(
                        Files.newOutputStream(beside)))) {
                    fill(c, zip);
                }
                DurableFile.force(beside);
                DurableFile.moveInto(beside, whole);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw new StoreException(Kind.IO, StoreText.of("archive.failed", whole, e.getMessage()), e);
        }
    }

    private void fill(Connection c, ZipOutputStream zip) throws IOException, SQLException {
        entry(zip, "readme.txt", out -> out.write((StoreText.of("archive.readme") + "\n").getBytes(
                StandardCharsets.UTF_8)));
        for (ArchiveTable t : ArchiveTable.ALL) {
            entry(zip, t.file(), out -> t.write(c, personal, mapper, out));
        }
        try (PreparedStatement q = c.prepareStatement("SELECT hash, bytes FROM photo ORDER BY hash");
                ResultSet r = q.executeQuery()) {
            while (r.next()) {
                byte[] photo = r.getBytes(2);
                entry(zip, ArchiveReader.PHOTOS + r.getString(1), out -> out.write(photo));
            }
        }
        try (PreparedStatement q = c.prepareStatement("SELECT sequence, hash FROM chain_head WHERE id = 1");
                ResultSet r = q.executeQuery()) {
            r.next();
            zip.putNextEntry(new ZipEntry(ArchiveManifest.NAME));
            zip.write(mapper.writerWithDefaultPrettyPrinter().writeValueAsBytes(
                    new ArchiveManifest(ArchiveManifest.EDITION, r.getLong(1), r.getString(2), entries)));
            zip.closeEntry();
        }
    }

    /** What goes into a file of the archive. */
    private interface Filling {
        void into(OutputStream out) throws IOException, SQLException;
    }

    private void entry(ZipOutputStream zip, String name, Filling filling) throws IOException, SQLException {
        zip.putNextEntry(new ZipEntry(name));
        Counting counting = new Counting(zip);
        filling.into(counting);
        zip.closeEntry();
        entries.add(new ArchiveManifest.Entry(name, counting.count, HexFormat.of().formatHex(counting.sha.digest())));
    }

    /** Counts and digests what passes. */
    private static final class Counting extends FilterOutputStream {

        private final MessageDigest sha = Chain.sha256();
        private long count;

        Counting(OutputStream out) {
            super(out);
        }

        @Override
        public void write(int b) throws IOException {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] b, int from, int length) throws IOException {
            out.write(b, from, length);
            sha.update(b, from, length);
            count += length;
        }
    }
}
