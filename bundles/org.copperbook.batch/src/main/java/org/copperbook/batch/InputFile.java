package org.copperbook.batch;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.copperbook.jobs.check.Plausibility;
import org.copperbook.jobs.json.BadRecordException;

/** A file that may hold anything: read whole when it is text of a sensible size, refused in one line otherwise. */
final class InputFile {

    /** Larger files are refused before they are read: a job with every reading is well below one megabyte. */
    static final long LARGEST = 8L * 1024 * 1024;

    private InputFile() {
    }

    /** The bytes of a file, which are UTF-8 text. */
    static byte[] read(Path file) {
        byte[] bytes = bytes(file);
        checkText(file, bytes);
        return bytes;
    }

    /** The refusal of a record that cannot be read. */
    static BadUse refused(Path file, BadRecordException e) {
        return new BadUse(BatchText.of("file.bad-record", file, where(e), e.problem(), mend(e)));
    }

    /** Refuses figures that cannot be, naming the first of them. */
    static void refuse(Path file, List<Plausibility.Problem> impossible) {
        if (impossible.isEmpty()) {
            return;
        }
        Plausibility.Problem first = impossible.get(0);
        String more = impossible.size() == 1 ? "" : BatchText.of("file.more-problems", impossible.size() - 1);
        throw new BadUse(BatchText.of("file.impossible", file, first.part(), first.place(), first.problem(),
                first.mend(), more));
    }

    private static byte[] bytes(Path file) {
        if (Files.isDirectory(file)) {
            throw new BadUse(BatchText.of("file.folder", file));
        }
        if (!Files.exists(file)) {
            throw new BadUse(BatchText.of("file.missing", file));
        }
        if (!Files.isRegularFile(file)) {
            throw new BadUse(BatchText.of("file.not-regular", file));
        }
        try {
            long size = Files.size(file);
            if (size == 0) {
                throw new BadUse(BatchText.of("file.empty", file));
            }
            if (size > LARGEST) {
                throw new BadUse(BatchText.of("file.too-large", file, size / 1_000_000, LARGEST / 1024 / 1024));
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new BadUse(BatchText.of("file.unreadable", file, e.getMessage()));
        }
    }

    private static void checkText(Path file, byte[] bytes) {
        int zero = 0;
        while (zero < bytes.length && bytes[zero] != 0) {
            zero++;
        }
        if (zero < bytes.length) {
            throw new BadUse(BatchText.of("file.binary", file, zero));
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer some = CharBuffer.allocate(8192);
        try {
            CoderResult result;
            do {
                some.clear();
                result = decoder.decode(in, some, true);
                if (result.isError()) {
                    result.throwException();
                }
            } while (result.isOverflow());
        } catch (CharacterCodingException e) {
            throw new BadUse(BatchText.of("file.not-utf8", file, line(bytes, in.position())));
        }
    }

    private static int line(byte[] bytes, int end) {
        int line = 1;
        for (int i = 0; i < end; i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return line;
    }

    /** The part as it stands in the file, and the place in it. */
    private static String where(BadRecordException e) {
        if (e.place().isEmpty()) {
            return e.part();
        }
        return e.part().equals("job file") ? e.place() : e.part() + " at " + e.place();
    }

    private static String mend(BadRecordException e) {
        if (e.problem().startsWith("Unexpected end")) {
            return BatchText.of("mend.cut-off");
        }
        return BatchText.of(e.place().startsWith("line ") ? "mend.json" : "mend.value");
    }
}
