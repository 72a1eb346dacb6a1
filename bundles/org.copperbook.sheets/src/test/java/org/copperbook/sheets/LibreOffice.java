package org.copperbook.sheets;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A second spreadsheet program that computes a workbook anew. */
final class LibreOffice {

    private static final String ALWAYS_RECALCULATE = """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
            <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
            </oor:items>
            """;

    private final Path profile;

    /** @param folder a folder of its own for the program's settings */
    LibreOffice(Path folder) throws IOException {
        profile = folder.resolve("office");
        Files.createDirectories(profile.resolve("user"));
        Files.writeString(profile.resolve("user").resolve("registrymodifications.xcu"), ALWAYS_RECALCULATE);
    }

    /** Converts a workbook; fails when the program is not installed or gives no result. */
    Path convert(Path file, String format, Path into) throws IOException, InterruptedException {
        Files.createDirectories(into);
        Path log = into.resolve("convert.log");
        Process process = new ProcessBuilder("soffice", "-env:UserInstallation=" + profile.toUri(), "--headless",
                "--convert-to", format, "--outdir", into.toString(), file.toString())
                .redirectErrorStream(true).redirectOutput(log.toFile()).start();
        if (!process.waitFor(180, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("no result within 180 s: " + Files.readString(log, StandardCharsets.UTF_8));
        }
        String name = file.getFileName().toString();
        Path made = into.resolve(name.substring(0, name.lastIndexOf('.') + 1) + format);
        if (!Files.exists(made)) {
            throw new AssertionError("nothing converted: " + Files.readString(log, StandardCharsets.UTF_8));
        }
        return made;
    }

    /** Spoils every stored result, so that only a program which computes can give the right ones. */
    static void spoilStoredResults(Path file) throws IOException {
        byte[] spoiled;
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file));
                java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream()) {
            book.forEach(s -> s.forEach(r -> r.forEach(LibreOffice::spoil)));
            book.write(out);
            spoiled = out.toByteArray();
        }
        try (OutputStream out = Files.newOutputStream(file)) {
            out.write(spoiled);
        }
    }

    private static void spoil(Cell cell) {
        if (cell.getCellType() == CellType.FORMULA) {
            cell.setCellValue(-987654321);
        }
    }
}
