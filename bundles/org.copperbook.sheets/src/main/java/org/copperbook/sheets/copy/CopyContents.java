package org.copperbook.sheets.copy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFPictureData;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Everything that a workbook says, by place: "Cover!B3"; pictures as "picture 1". How it looks makes no difference. */
final class CopyContents {

    private CopyContents() {
    }

    static Map<String, String> of(XSSFWorkbook workbook) throws IOException {
        Map<String, String> cells = new TreeMap<>();
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    String said = said(cell);
                    if (!said.isEmpty()) {
                        cells.put(sheet.getSheetName() + "!" + cell.getAddress().formatAsString(), said);
                    }
                }
            }
        }
        int number = 1;
        for (XSSFPictureData picture : workbook.getAllPictures()) {
            cells.put("picture " + number, sha256(picture.getData()));
            number++;
        }
        return cells;
    }

    private static String said(Cell cell) {
        return switch (cell.getCellType()) {
            case STRING -> cell.getStringCellValue();
            case NUMERIC -> Double.toString(cell.getNumericCellValue());
            case BOOLEAN -> Boolean.toString(cell.getBooleanCellValue());
            case FORMULA -> "=" + cell.getCellFormula();
            case ERROR -> "#" + cell.getErrorCellValue();
            default -> "";
        };
    }

    static String digest(Map<String, String> cells) {
        StringBuilder all = new StringBuilder();
        cells.forEach((place, said) -> all.append(place.length()).append(' ').append(place).append(said.length())
                .append(' ').append(said).append('\n'));
        return sha256(all.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Places at which two workbooks say something else, with what both say; "" where one says nothing. */
    static Map<String, RecordCopy.Difference> differences(Map<String, String> here, Map<String, String> there) {
        Map<String, RecordCopy.Difference> found = new TreeMap<>();
        Map<String, String> places = new TreeMap<>(here);
        places.putAll(there);
        for (String place : places.keySet()) {
            String one = here.getOrDefault(place, "");
            String other = there.getOrDefault(place, "");
            if (!one.equals(other)) {
                found.put(place, new RecordCopy.Difference(one, other));
            }
        }
        return found;
    }
}
