package org.copperbook.sheets.template;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.sheets.template.UnusableTemplate.Why;

/**
 * Where templates come in. A file that could take the memory, run something or fetch something is refused before or
 * right after it is opened; nothing in it is ever run.
 */
final class TemplateDoor {

    /** Largest file. */
    static final long FILE_BYTES = 20L << 20;
    /** Most that all of it may unpack to. */
    static final long UNPACKED_BYTES = 100L << 20;
    private static final int ENTRIES = 5_000;
    private static final int OLE_HEAD = 0xD0CF11E0;
    private static final int BUFFER = 1 << 16;
    private static final List<String> ACTIVE = List.of("activex", "oleobject", "connections", "querytable", "ctrlprop",
            "externaldata", "package");
    private static final String HYPERLINK = "/hyperlink";

    private TemplateDoor() {
    }

    /**
     * Reads a file that may be a template.
     *
     * @throws UnusableTemplate when there is none, it is too large or it cannot be read
     */
    static byte[] read(Path file) throws UnusableTemplate {
        try {
            if (!Files.isRegularFile(file)) {
                throw new UnusableTemplate(Why.MISSING, null, file);
            }
            if (Files.size(file) > FILE_BYTES) {
                throw new UnusableTemplate(Why.TOO_LARGE, null, file.getFileName(), FILE_BYTES >> 20);
            }
            return Files.readAllBytes(file);
        } catch (UnusableTemplate e) {
            throw e;
        } catch (IOException e) {
            throw new UnusableTemplate(Why.NO_WORKBOOK, e, file.getFileName());
        }
    }

    /**
     * Opens a template.
     *
     * @param name what messages call it
     * @throws UnusableTemplate when it may not come in
     */
    static XSSFWorkbook open(String name, byte[] bytes) throws UnusableTemplate {
        try {
            head(bytes, name);
            unpacked(bytes, name);
            XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes));
            try {
                refuse(workbook, name);
            } catch (UnusableTemplate | RuntimeException e) {
                workbook.close();
                throw e;
            }
            return workbook;
        } catch (UnusableTemplate e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            throw new UnusableTemplate(Why.NO_WORKBOOK, e, name);
        }
    }

    /** A workbook with a password is a container of the older kind. */
    private static void head(byte[] file, Object name) throws UnusableTemplate {
        if (file.length >= Integer.BYTES && ByteBuffer.wrap(file).getInt() == OLE_HEAD) {
            throw new UnusableTemplate(Why.PASSWORD, null, name);
        }
    }

    private static void unpacked(byte[] file, Object name) throws IOException {
        long bytes = 0;
        int entries = 0;
        byte[] buffer = new byte[BUFFER];
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                entries++;
                for (int n = zip.read(buffer); n >= 0; n = zip.read(buffer)) {
                    bytes += n;
                    if (bytes > UNPACKED_BYTES || entries > ENTRIES) {
                        throw new UnusableTemplate(Why.BOMB, null, name, UNPACKED_BYTES >> 20);
                    }
                }
            }
        }
        if (entries == 0) {
            throw new UnusableTemplate(Why.NO_WORKBOOK, null, name);
        }
    }

    private static void refuse(XSSFWorkbook workbook, Object name) throws IOException {
        if (workbook.isMacroEnabled()) {
            throw new UnusableTemplate(Why.MACROS, null, name);
        }
        if (!workbook.getExternalLinksTable().isEmpty()) {
            throw new UnusableTemplate(Why.EXTERNAL, null, name);
        }
        try {
            for (PackagePart part : workbook.getPackage().getParts()) {
                String type = (part.getPartName() + " " + part.getContentType()).toLowerCase(Locale.ROOT);
                if (type.contains("vba") || type.contains("macro")) {
                    throw new UnusableTemplate(Why.MACROS, null, name);
                }
                if (ACTIVE.stream().anyMatch(a -> part.getPartName().getName().toLowerCase(Locale.ROOT).contains("/" + a))) {
                    throw new UnusableTemplate(Why.ACTIVE, null, name);
                }
                if (!part.isRelationshipPart()) {
                    outside(part, name);
                }
            }
        } catch (org.apache.poi.openxml4j.exceptions.OpenXML4JException e) {
            throw new UnusableTemplate(Why.NO_WORKBOOK, e, name);
        }
    }

    /** Anything fetched from outside but a link that people click. */
    private static void outside(PackagePart part, Object name)
            throws org.apache.poi.openxml4j.exceptions.OpenXML4JException, UnusableTemplate {
        for (PackageRelationship r : part.getRelationships()) {
            if (r.getTargetMode() == TargetMode.EXTERNAL && !r.getRelationshipType().endsWith(HYPERLINK)) {
                throw new UnusableTemplate(Why.EXTERNAL, null, name);
            }
        }
    }
}
