package org.copperbook.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.cards.CardFile;
import org.copperbook.sheets.cards.CardLine;
import org.copperbook.sheets.cards.CardMapping;
import org.copperbook.sheets.cards.CardMappings;
import org.copperbook.sheets.cards.CardReader;
import org.copperbook.sheets.cards.CardReport;
import org.copperbook.sheets.cards.HeaderGuess;
import org.copperbook.sheets.cards.TableFormat;
import org.copperbook.sheets.cards.UnreadableTableException;
import org.copperbook.store.JobStore;
import org.copperbook.store.memory.CardIntake;
import org.copperbook.store.memory.CardTaken;
import org.copperbook.store.memory.SameCard;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes old winding cards into the store from a workbook or a text file, as the window does. */
@Command(name = "take-in-cards", mixinStandardHelpOptions = true)
final class OldCardsCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "FILE", descriptionKey = "cards.file")
    private Path file;

    @Option(names = "--mapping", paramLabel = "FILE", descriptionKey = "cards.mapping")
    private Path mappingFile;

    @Option(names = "--write-mapping", paramLabel = "FILE", descriptionKey = "cards.write-mapping")
    private Path writeMapping;

    @Option(names = "--sheet", paramLabel = "NAME", descriptionKey = "cards.sheet")
    private String sheet;

    @Option(names = "--header-row", paramLabel = "ROW", descriptionKey = "cards.header-row")
    private Integer headerRow;

    @Option(names = "--role", paramLabel = "WINDING", descriptionKey = "cards.role")
    private String role;

    @Option(names = "--report", paramLabel = "FILE", descriptionKey = "cards.report")
    private Path report;

    @Option(names = "--dry-run", descriptionKey = "cards.dry-run")
    private boolean dryRun;

    @Option(names = "--newer-revision", descriptionKey = "cards.newer-revision")
    private boolean newerRevision;

    @Option(names = "--who", paramLabel = "KEY", defaultValue = CommonOptions.NOBODY_NAMED, descriptionKey = "take-in.who")
    private String who;

    OldCardsCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        CardFile cards = open();
        CardMapping mapping = mapping(cards);
        if (writeMapping != null) {
            writeMapping(mapping);
        }
        if (!mapping.problems().isEmpty()) {
            throw new BadUse(BatchText.of("cards.mapping-bad", file, String.join(" ", mapping.problems())));
        }
        List<OldCard> good = new ArrayList<>();
        List<CardReport.Line> left = new ArrayList<>();
        List<String> remarks = read(cards, mapping, good, left);
        int refused = (int) left.stream().mapToInt(CardReport.Line::row).distinct().count();
        remarks.forEach(r -> context.err().println(OneLine.of(BatchText.of("cards.remark", file, r))));
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("rows", good.size() + refused);
        said.put("refused", refused);
        if (!dryRun) {
            CardIntake.Outcome outcome = takeIn(good, left);
            said.put("new", outcome.count(CardTaken.NEW));
            said.put("known", outcome.count(CardTaken.KNOWN));
            said.put("newerRevision", outcome.count(CardTaken.REVISED));
            said.put("contradicting", outcome.count(CardTaken.CONTRADICTS));
        }
        left.sort(Comparator.comparingInt(CardReport.Line::row));
        say(said, left);
        return ExitCode.DONE;
    }

    private CardFile open() {
        try {
            CardFile found = CardFile.open(file);
            TableFormat format = found.format();
            if (sheet != null) {
                if (!found.table().sheets().contains(sheet)) {
                    throw new BadUse(BatchText.of("cards.no-sheet", file, sheet,
                            String.join(", ", found.table().sheets())));
                }
                found = found.detectedAs(format.withSheet(sheet));
            }
            return headerRow == null ? found : found.as(found.format().withHeaderRow(headerRow));
        } catch (UnreadableTableException e) {
            throw new BadUse(e.getMessage());
        }
    }

    private CardMapping mapping(CardFile cards) {
        if (mappingFile == null) {
            CardMapping guessed = HeaderGuess.mapping(cards.headers(), WindingRole.MAIN_STATOR, null);
            return role == null ? guessed : guessed.withRole(role());
        }
        try {
            CardMapping read = CardMappings.read(mappingFile, context.json());
            if (!read.headers().equals(cards.headers())) {
                throw new BadUse(BatchText.of("cards.other-titles", mappingFile, file,
                        String.join(", ", cards.headers())));
            }
            return role == null ? read : read.withRole(role());
        } catch (IOException e) {
            throw new BadUse(BatchText.of("cards.mapping-unread", mappingFile, e.getMessage()));
        }
    }

    private WindingRole role() {
        try {
            return WindingRole.of(role);
        } catch (IllegalArgumentException e) {
            throw new BadUse(BatchText.of("cards.no-role", role,
                    String.join(", ", Arrays.stream(WindingRole.values()).map(WindingRole::word).toList())));
        }
    }

    private void writeMapping(CardMapping mapping) {
        try {
            CardMappings.write(mapping, writeMapping, context.json());
        } catch (WorkbookNotWrittenException e) {
            throw new BadUse(e.getMessage());
        }
    }

    private List<String> read(CardFile cards, CardMapping mapping, List<OldCard> good, List<CardReport.Line> left) {
        DecimalMark mark = mapping.decimal() == null ? cards.format().decimal() : mapping.decimal();
        CardReader reader = new CardReader(mapping, mark, file.getFileName().toString(), context.json());
        try {
            return cards.rows(row -> {
                CardLine line = reader.read(row);
                line.card().ifPresent(good::add);
                line.problems().forEach(p -> left.add(
                        new CardReport.Line(line.number(), p.column(), p.text(), p.reason())));
                return true;
            });
        } catch (UnreadableTableException e) {
            throw new BadUse(e.getMessage());
        }
    }

    private CardIntake.Outcome takeIn(List<OldCard> good, List<CardReport.Line> left) {
        try (JobStore open = common.open(context)) {
            CardIntake intake = new CardIntake(open.memory(), CommonOptions.who(open, who),
                    BatchText.of("cards.why", file.getFileName()),
                    newerRevision ? SameCard.NEW_REVISION : SameCard.REFUSE);
            return intake.run(good.iterator(), new CardIntake.Progress() {
                @Override
                public boolean goOn(int handled) {
                    return true;
                }

                @Override
                public void became(OldCard card, CardTaken taken) {
                    if (taken == CardTaken.CONTRADICTS) {
                        left.add(new CardReport.Line(card.line(), "", card.card(), BatchText.of("cards.contradicts")));
                    }
                }
            });
        }
    }

    private void say(Map<String, Object> said, List<CardReport.Line> left) {
        if (report != null) {
            try {
                new CardReport(left).write(report);
            } catch (WorkbookNotWrittenException e) {
                throw new BadUse(BatchText.of("cards.report-unwritten", e.getMessage()));
            }
        }
        if (common.json()) {
            said.put("left", left);
            CommonOptions.print(context, said);
            return;
        }
        if (report == null) {
            left.forEach(l -> context.out().println(OneLine.of(BatchText.of("cards.left", l.row(), l.column(), l.text(),
                    l.reason()))));
        }
        context.out().println(dryRun ? BatchText.of("cards.would", said.get("rows"), said.get("refused"))
                : BatchText.of("cards.done", said.get("rows"), said.get("new"), said.get("known"),
                        said.get("newerRevision"), said.get("contradicting"), said.get("refused")));
    }
}
