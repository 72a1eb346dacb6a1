package org.copperbook.sheets.template;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.calc.money.QuoteTotals;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.QuotePrices;
import org.copperbook.jobs.quote.UnpriceableQuoteException;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.QuoteWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.copy.QuoteCopy;
import org.copperbook.sheets.page.AtomicFile;
import org.copperbook.sheets.page.Words;
import org.copperbook.sheets.quote.QuoteContext;
import org.copperbook.sheets.quote.RefusedQuote;
import org.copperbook.sheets.template.UnusableTemplate.Why;

/** A workbook of the workshop's own that quotes are written into; the names it may use are listed at this package. */
public final class QuoteTemplate {

    /** Names the row that is repeated for every line. */
    public static final String LINES = "lines";
    public static final List<String> NAMES_OF_QUOTE = List.of("customer", "contact", "order_number", "machine",
            "rating_plate", "job_number", "quote_number", "revision", "date", "valid_until", "currency", "terms", "exclusions",
            "workshop", "workshop_address", "fingerprint");
    /** Also with _1, _2 ... behind them. */
    public static final List<String> NAMES_OF_ALTERNATIVE = List.of("alternative", "note", "total_before_discount",
            "total_discount", "total_net", "total_tax", "total_gross");
    /** In the row that is repeated. */
    public static final List<String> NAMES_OF_LINE = List.of("line_number", "line_kind", "line_text", "line_trade",
            "line_quantity", "line_unit", "line_price", "line_discount", "line_tax", "line_amount");
    private static final Pattern OF_ALTERNATIVE = Pattern.compile(
            "(" + String.join("|", NAMES_OF_ALTERNATIVE) + ")(_\\d{1,2})?");
    /** What begins like one of the names, "line_sum" or "customer2", is likely to be meant for one. */
    private static final Pattern LIKE_OURS = Pattern.compile("(" + Stream.of(List.of(LINES), NAMES_OF_QUOTE,
            NAMES_OF_ALTERNATIVE, NAMES_OF_LINE).flatMap(List::stream).map(n -> n.replaceFirst("_.*", "")).distinct()
            .collect(Collectors.joining("|")) + ")s?(\\d.*|_.*)?");

    private final String name;
    private final byte[] bytes;

    /**
     * @param name  what messages call it
     * @param bytes the workbook; not to be changed
     */
    public QuoteTemplate(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
    }

    /**
     * Reads a file, whose contents are not looked at yet.
     *
     * @throws UnusableTemplate when there is none, or it is too large to be one
     */
    public static QuoteTemplate of(Path file) throws UnusableTemplate {
        return new QuoteTemplate(file.getFileName().toString(), TemplateDoor.read(file));
    }

    /** Name of the file. */
    public String name() {
        return name;
    }

    /** The file as it is; not to be changed. */
    public byte[] bytes() {
        return bytes;
    }

    /**
     * Whether the template can be used.
     *
     * @return names of the workbook that are like those of quotes but none of them, so that their cells are not filled
     * @throws UnusableTemplate when it cannot
     */
    public List<String> check() throws UnusableTemplate {
        try (XSSFWorkbook workbook = TemplateDoor.open(name, bytes)) {
            NamedCells cells = names(workbook);
            lineRow(cells);
            cells.refuseFormulas(LINES);
            return cells.others().stream().filter(n -> LIKE_OURS.matcher(n.toLowerCase(Locale.ROOT)).matches()).toList();
        } catch (UnusableTemplate e) {
            throw e;
        } catch (IOException e) {
            throw new UnusableTemplate(Why.NO_WORKBOOK, e, name);
        }
    }

    /**
     * Writes a quote over the target, as a whole or not at all.
     *
     * @throws WorkbookNotWrittenException when the template cannot be used, the quote has no alternative or cannot be
     *                                     added up, or the target cannot be replaced
     */
    public void write(Job job, Quote quote, Shop shop, Path target) throws WorkbookNotWrittenException {
        RefusedQuote.ifEmpty(job, quote);
        try (XSSFWorkbook workbook = TemplateDoor.open(name, bytes)) {
            NamedCells cells = names(workbook);
            QuoteContext context = new QuoteContext(job, quote, shop, new QuotePrices(quote), false,
                    new Words(QuoteWorkbook.class, "quote", QuoteWorkbook.locale(quote)));
            fill(cells, context);
            QuoteCopy.markTemplate(workbook, job.number(), context.name(), context.fingerprint());
            compute(workbook);
            new AtomicFile(target).write(workbook::write);
        } catch (WorkbookNotWrittenException e) {
            throw e;
        } catch (UnpriceableQuoteException e) {
            throw RefusedQuote.of(job, e);
        } catch (IOException | RuntimeException e) {
            throw new UnusableTemplate(Why.NO_WORKBOOK, e, name);
        }
    }

    private NamedCells names(XSSFWorkbook workbook) throws UnusableTemplate {
        NamedCells cells = new NamedCells(workbook,
                n -> n.equals(LINES) || NAMES_OF_QUOTE.contains(n) || NAMES_OF_LINE.contains(n)
                        || OF_ALTERNATIVE.matcher(n).matches());
        if (cells.isEmpty()) {
            throw new UnusableTemplate(Why.NO_NAMES, null, name);
        }
        return cells;
    }

    private static void fill(NamedCells cells, QuoteContext context) throws UnusableTemplate {
        Quote quote = context.quote();
        Map<String, Object> values = new LinkedHashMap<>(QuoteFacts.of(context));
        int shown = shown(quote);
        List<QuoteTotals> totals = new ArrayList<>();
        for (int i = 0; i < quote.alternatives().size(); i++) {
            totals.add(context.prices().totals(quote.alternatives().get(i)));
            QuoteFacts.ofAlternative(quote.alternatives().get(i), totals.get(i), "_" + (i + 1), values);
        }
        QuoteFacts.ofAlternative(quote.alternatives().get(shown), totals.get(shown), "", values);
        Optional<AreaReference> row = lineRow(cells);
        for (Map.Entry<String, Object> e : values.entrySet()) {
            cells.put(e.getKey(), e.getValue());
        }
        if (row.isPresent()) {
            lines(cells, context, row.get(), quote.alternatives().get(shown), totals.get(shown).lines());
        }
    }

    /** The alternative agreed, else the first. */
    private static int shown(Quote quote) {
        Quote.Approval answer = quote.approval();
        for (int i = 0; answer != null && i < quote.alternatives().size(); i++) {
            if (answer.alternative() != null && answer.alternative().equals(quote.alternatives().get(i).name())) {
                return i;
            }
        }
        return 0;
    }

    private static Optional<AreaReference> lineRow(NamedCells cells) throws UnusableTemplate {
        Optional<AreaReference> row = cells.place(LINES);
        if (row.isPresent() && row.get().getFirstCell().getRow() != row.get().getLastCell().getRow()) {
            throw new UnusableTemplate(Why.NOT_ONE_ROW, null, LINES);
        }
        for (String name : NAMES_OF_LINE) {
            Optional<AreaReference> at = cells.place(name);
            boolean inRow = at.isEmpty() || row.isPresent()
                    && at.get().getFirstCell().getRow() == row.get().getFirstCell().getRow()
                    && at.get().getFirstCell().getSheetName().equals(row.get().getFirstCell().getSheetName());
            if (!inRow) {
                throw new UnusableTemplate(Why.NOT_IN_ROW, null, name, LINES);
            }
        }
        return row;
    }

    private static void lines(NamedCells cells, QuoteContext context, AreaReference row, Quote.Alternative alternative,
            List<BigDecimal> amounts) throws UnusableTemplate {
        XSSFSheet sheet = cells.sheet(row);
        int first = row.getFirstCell().getRow();
        Map<String, Integer> columns = new LinkedHashMap<>();
        for (String name : NAMES_OF_LINE) {
            cells.place(name).ifPresent(a -> columns.put(name, (int) a.getFirstCell().getCol()));
        }
        List<QuoteLine> lines = alternative.lines();
        if (sheet.getRow(first) == null) {
            sheet.createRow(first);
        }
        RepeatedRow.repeat(sheet, first, lines.size());
        for (int i = 0; i < Math.max(1, lines.size()); i++) {
            Map<String, Object> values = i < lines.size()
                    ? QuoteFacts.ofLine(context, alternative, lines.get(i), i + 1, amounts.get(i)) : Map.of();
            for (Map.Entry<String, Integer> at : columns.entrySet()) {
                cells.put(NamedCells.cell(sheet, first + i, at.getValue()), at.getKey(), values.get(at.getKey()));
            }
        }
    }

    /** Works out what can be; what cannot keeps its old result until a spreadsheet opens the file. */
    private static void compute(XSSFWorkbook workbook) {
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        try {
                            evaluator.evaluateFormulaCell(cell);
                        } catch (RuntimeException notKnownHere) {
                            continue;
                        }
                    }
                }
            }
        }
        workbook.setForceFormulaRecalculation(true);
    }
}
