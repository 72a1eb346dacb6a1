package org.copperbook.store.sqlite;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A disk that keeps for sure only what was forced to it. When the power fails, of what was written since, any may have
 * reached it and any not, in sectors of 512 bytes and in any order.
 */
final class ForgetfulDisk {

    private static final int SECTOR = 512;

    private final boolean lying;
    private final Map<Path, Content> files = new HashMap<>();

    private static final class Content {
        private final Bytes kept = new Bytes();
        private final List<DiskEvent> since = new ArrayList<>();
    }

    /** A file's content; grows as it is written. */
    private static final class Bytes {
        private byte[] all = new byte[1 << 16];
        private int length;

        static Bytes copyOf(Bytes other) {
            Bytes b = new Bytes();
            b.all = other.all.clone();
            b.length = other.length;
            return b;
        }

        void put(long offset, byte[] from, int start, int count) {
            int end = Math.toIntExact(offset + count);
            if (end > all.length) {
                all = java.util.Arrays.copyOf(all, 2 * end);
            }
            System.arraycopy(from, start, all, Math.toIntExact(offset), count);
            length = Math.max(length, end);
        }

        void cut(long to) {
            int end = Math.toIntExact(to);
            if (end > all.length) {
                all = java.util.Arrays.copyOf(all, 2 * end);
            }
            java.util.Arrays.fill(all, Math.min(length, end), Math.max(length, end), (byte) 0);
            length = end;
        }
    }

    /** @param lying whether it answers that it has forced a file and has not */
    ForgetfulDisk(boolean lying) {
        this.lying = lying;
    }

    void accept(DiskEvent e) {
        if (e instanceof DiskEvent.Write w) {
            of(w.file()).since.add(w);
        } else if (e instanceof DiskEvent.Length l) {
            of(l.file()).since.add(l);
        } else if (e instanceof DiskEvent.Forced f && !lying) {
            Content c = of(f.file());
            for (DiskEvent s : c.since) {
                if (s instanceof DiskEvent.Write w) {
                    c.kept.put(w.offset(), w.bytes(), 0, w.bytes().length);
                } else if (s instanceof DiskEvent.Length l) {
                    c.kept.cut(l.length());
                }
            }
            c.since.clear();
        }
    }

    /** Writes what is on the disk after a failure of the power into files of the same names in a folder. */
    void fail(Path folder, Random random) throws IOException {
        // From nothing of the rest to all of it.
        double share = random.nextInt(5) / 4.0;
        for (Map.Entry<Path, Content> e : files.entrySet()) {
            Bytes left = Bytes.copyOf(e.getValue().kept);
            for (DiskEvent s : e.getValue().since) {
                if (s instanceof DiskEvent.Length l && random.nextDouble() < share) {
                    left.cut(l.length());
                } else if (s instanceof DiskEvent.Write w) {
                    for (int from = 0; from < w.bytes().length; from += SECTOR) {
                        if (random.nextDouble() < share) {
                            left.put(w.offset() + from, w.bytes(), from, Math.min(w.bytes().length - from, SECTOR));
                        }
                    }
                }
            }
            try (RandomAccessFile out = new RandomAccessFile(folder.resolve(e.getKey().getFileName()).toFile(), "rw")) {
                out.write(left.all, 0, left.length);
            }
        }
    }

    /** Bytes at risk. */
    boolean hasUnforced() {
        return files.values().stream().anyMatch(c -> !c.since.isEmpty());
    }

    private Content of(Path file) {
        return files.computeIfAbsent(file, f -> new Content());
    }

    static void clear(Path folder) throws IOException {
        try (var in = Files.list(folder)) {
            for (Path p : in.toList()) {
                Files.delete(p);
            }
        }
    }
}
