package org.copperbook.sheets.cards;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.EmptyFileException;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.util.RecordFormatException;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.model.SharedStrings;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.copperbook.calc.quantity.DecimalMark;
import org.xml.sax.Attributes;
import org.xml.sax.ContentHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** A workbook, read sheet by sheet as a stream. Nothing in it is ever calculated or run. */
final class WorkbookTable implements CardTable {

    private final Path file;
    private final List<String> sheets;

    WorkbookTable(Path file) throws UnreadableTableException {
        this.file = file;
        sheets = withPackage(p -> {
            List<String> names = new ArrayList<>();
            XSSFReader.SheetIterator all = (XSSFReader.SheetIterator) new XSSFReader(p).getSheetsData();
            while (all.hasNext()) {
                all.next().close();
                names.add(all.getSheetName());
            }
            return names;
        });
        if (sheets.isEmpty()) {
            throw new UnreadableTableException(CardWords.say("book.no-sheet", file.getFileName()));
        }
    }

    @Override
    public List<String> sheets() {
        return sheets;
    }

    @Override
    public TableFormat detected() {
        return new TableFormat(sheets.get(0), "", ';', DecimalMark.DOT, 0);
    }

    @Override
    public List<String> read(TableFormat format, Rows rows) throws UnreadableTableException {
        return withPackage(p -> {
            XSSFReader reader = new XSSFReader(p);
            SharedStrings texts = texts(p);
            StylesTable styles = reader.getStylesTable();
            SheetRows handler = new SheetRows(texts, styles, date1904(reader), rows);
            XSSFReader.SheetIterator all = (XSSFReader.SheetIterator) reader.getSheetsData();
            while (all.hasNext()) {
                try (InputStream sheet = all.next()) {
                    if (all.getSheetName().equals(format.sheet())) {
                        parse(new Bounded(sheet, TableLimits.ENTRY_BYTES), handler);
                        return handler.remarks();
                    }
                } catch (SheetRows.Enough e) {
                    return handler.remarks();
                }
            }
            throw new UnreadableTableException(CardWords.say("book.sheet-gone", format.sheet(), file.getFileName()));
        });
    }

    @FunctionalInterface
    private interface Work<T> {
        T on(OPCPackage p) throws IOException, OpenXML4JException, SAXException, ParserConfigurationException,
                UnreadableTableException;
    }

    private <T> T withPackage(Work<T> work) throws UnreadableTableException {
        OPCPackage p = null;
        try {
            p = OPCPackage.open(file.toFile(), PackageAccess.READ);
            refuseMacros(p);
            return work.on(p);
        } catch (SheetRows.Refused e) {
            throw e.reason();
        } catch (Bounded.TooLarge e) {
            throw new UnreadableTableException(e.getMessage(), e);
        } catch (EmptyFileException | UnsupportedFileFormatException e) {
            throw new UnreadableTableException(CardWords.say("book.damaged", file.getFileName()), e);
        } catch (IOException | OpenXML4JException | SAXException | ParserConfigurationException | POIXMLException
                | OpenXML4JRuntimeException | RecordFormatException | IllegalArgumentException
                | IllegalStateException e) {
            if (e.getCause() instanceof Bounded.TooLarge large) {
                throw new UnreadableTableException(large.getMessage(), e);
            }
            throw new UnreadableTableException(CardWords.say(bomb(e) ? "book.bomb" : "book.damaged",
                    file.getFileName()), e);
        } finally {
            if (p != null) {
                p.revert();
            }
        }
    }

    private static boolean bomb(Exception e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t.getMessage() != null && t.getMessage().contains("Zip bomb")) {
                return true;
            }
        }
        return false;
    }

    private void refuseMacros(OPCPackage p) throws UnreadableTableException {
        boolean macros = !p.getPartsByContentType(XSSFRelation.MACROS_WORKBOOK.getContentType()).isEmpty()
                || !p.getPartsByContentType(XSSFRelation.VBA_MACROS.getContentType()).isEmpty();
        if (macros) {
            throw new UnreadableTableException(CardWords.say("book.macros", file.getFileName()));
        }
    }

    private static SharedStrings texts(OPCPackage p) throws IOException, SAXException {
        List<PackagePart> parts = p.getPartsByContentType(XSSFRelation.SHARED_STRINGS.getContentType());
        if (parts.isEmpty()) {
            return null;
        }
        try (InputStream in = new Bounded(parts.get(0).getInputStream(), TableLimits.TEXT_BYTES)) {
            return new ReadOnlySharedStringsTable(in);
        }
    }

    private static boolean date1904(XSSFReader reader)
            throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
        Map<String, Boolean> found = new LinkedHashMap<>();
        try (InputStream in = new Bounded(reader.getWorkbookData(), TableLimits.TEXT_BYTES)) {
            parse(in, new DefaultHandler() {
                @Override
                public void startElement(String uri, String local, String name, Attributes a) {
                    if (local.equals("workbookPr")) {
                        String v = a.getValue("date1904");
                        found.put("1904", "1".equals(v) || "true".equals(v));
                    }
                }
            });
        }
        return found.getOrDefault("1904", false);
    }

    private static void parse(InputStream in, ContentHandler handler)
            throws IOException, SAXException, ParserConfigurationException {
        XMLReader xml = XMLHelper.newXMLReader();
        xml.setContentHandler(handler);
        xml.parse(new InputSource(in));
    }

    /** Stops when an entry unpacks to more than is allowed, however it is packed. */
    private static final class Bounded extends FilterInputStream {

        /** The entry is larger than allowed. */
        static final class TooLarge extends IOException {
            private static final long serialVersionUID = 1L;

            TooLarge(long most) {
                super(CardWords.say("book.large", most >> 20));
            }
        }

        private final long most;
        private long read;

        Bounded(InputStream in, long most) {
            super(in);
            this.most = most;
        }

        @Override
        public int read() throws IOException {
            int b = super.read();
            count(b < 0 ? 0 : 1);
            return b;
        }

        @Override
        public int read(byte[] to, int from, int length) throws IOException {
            int n = super.read(to, from, length);
            count(Math.max(0, n));
            return n;
        }

        private void count(int n) throws TooLarge {
            read += n;
            if (read > most) {
                throw new TooLarge(most);
            }
        }
    }
}
