package org.copperbook.winding.memory;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.cards.CardFile;
import org.copperbook.sheets.cards.CardLine;
import org.copperbook.sheets.cards.CardMapping;
import org.copperbook.sheets.cards.CardMappings;
import org.copperbook.sheets.cards.CardReader;
import org.copperbook.sheets.cards.CardReport;
import org.copperbook.sheets.cards.HeaderGuess;
import org.copperbook.sheets.cards.TableRow;
import org.copperbook.sheets.cards.UnreadableTableException;
import org.copperbook.store.memory.CardIntake;
import org.copperbook.store.memory.CardTaken;
import org.copperbook.store.memory.SameCard;
import org.copperbook.store.memory.WindingMemory;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;

/** An import of old cards on its way from the file to the store. Knows nothing of windows. */
final class CardImport {

    private final PartJson json;
    private final CardMappings mappings;
    private WindingRole role;
    private CardFile file;
    private CardMapping mapping;
    private boolean remembered;
    private List<TableRow> rows = List.of();
    private List<String> remarks = List.of();
    private final BitSet refused = new BitSet();
    private final List<CardReport.Line> left = new ArrayList<>();
    private CardIntake.Outcome outcome;

    CardImport(PartJson json, CardMappings mappings, WindingRole role) {
        this.json = json;
        this.mappings = mappings;
        this.role = role;
    }

    /** Reads on from this file; its columns are mapped as last time, or by the words of their titles. */
    void use(CardFile opened) {
        file = opened;
        rows = List.of();
        refused.clear();
        Optional<CardMapping> before = mappings.of(opened.headers());
        remembered = before.isPresent();
        mapping = before.map(m -> m.withDecimal(opened.format().decimal()))
                .orElseGet(() -> HeaderGuess.mapping(opened.headers(), role, opened.format().decimal()));
        role = mapping.role();
    }

    Optional<CardFile> file() {
        return Optional.ofNullable(file);
    }

    void forget() {
        file = null;
    }

    CardMapping mapping() {
        return mapping;
    }

    void map(CardMapping next) {
        mapping = next;
        role = next.role();
    }

    boolean remembered() {
        return remembered;
    }

    List<String> remarks() {
        return remarks;
    }

    /** Reads every row and finds out which are refused. */
    void read(IProgressMonitor monitor) throws UnreadableTableException {
        if (rows.isEmpty()) {
            List<TableRow> all = new ArrayList<>();
            remarks = file.rows(row -> {
                if (monitor.isCanceled()) {
                    throw new OperationCanceledException();
                }
                all.add(row);
                return true;
            });
            rows = List.copyOf(all);
        }
        refused.clear();
        CardReader reader = reader();
        for (int i = 0; i < rows.size(); i++) {
            if (monitor.isCanceled()) {
                throw new OperationCanceledException();
            }
            refused.set(i, reader.read(rows.get(i)).card().isEmpty());
        }
    }

    private CardReader reader() {
        return new CardReader(mapping, file.format().decimal(), file.file().getFileName().toString(), json);
    }

    int size() {
        return rows.size();
    }

    int refusedCount() {
        return refused.cardinality();
    }

    /** Places of the rows to show. */
    int[] places(boolean refusedOnly) {
        return refusedOnly ? refused.stream().toArray() : java.util.stream.IntStream.range(0, rows.size()).toArray();
    }

    TableRow row(int place) {
        return rows.get(place);
    }

    CardLine line(int place) {
        return reader().read(rows.get(place));
    }

    /** The rows refused, with their reasons, for a file. */
    List<CardReport.Line> refusals() {
        List<CardReport.Line> lines = new ArrayList<>();
        CardReader reader = reader();
        for (int place : places(true)) {
            reader.read(rows.get(place)).problems().forEach(p -> lines.add(
                    new CardReport.Line(rows.get(place).number(), p.column(), p.text(), p.reason())));
        }
        return lines;
    }

    /** Everything that is not in after the import, with the reasons. */
    List<CardReport.Line> leftOut() {
        List<CardReport.Line> all = new ArrayList<>(refusals());
        all.addAll(left);
        all.sort(java.util.Comparator.comparingInt(CardReport.Line::row));
        return all;
    }

    Optional<CardIntake.Outcome> outcome() {
        return Optional.ofNullable(outcome);
    }

    /** Where the file is, once chosen. */
    Path path() {
        return file.file();
    }

    /**
     * Takes the rows that are not refused into the store.
     *
     * @param contradicts reason given for a card whose number is in with other content
     */
    void takeIn(WindingMemory memory, String who, String why, SameCard same, String contradicts,
            IProgressMonitor monitor) {
        left.clear();
        CardIntake intake = new CardIntake(memory, who, why, same);
        monitor.beginTask(why, rows.size() - refused.cardinality());
        outcome = intake.run(cards(), new CardIntake.Progress() {
            private int told;

            @Override
            public boolean goOn(int handled) {
                monitor.worked(handled - told);
                told = handled;
                return !monitor.isCanceled();
            }

            @Override
            public void became(OldCard card, CardTaken taken) {
                if (taken == CardTaken.CONTRADICTS) {
                    left.add(new CardReport.Line(card.line() == null ? 0 : card.line(), "",
                            card.card() == null ? "" : card.card(), contradicts));
                }
            }
        });
        monitor.done();
    }

    private Iterator<OldCard> cards() {
        CardReader reader = reader();
        return new Iterator<>() {
            private int next = refused.nextClearBit(0);

            @Override
            public boolean hasNext() {
                return next < rows.size();
            }

            @Override
            public OldCard next() {
                if (!hasNext()) {
                    throw new NoSuchElementException();
                }
                OldCard card = reader.read(rows.get(next)).card().orElseThrow();
                next = refused.nextClearBit(next + 1);
                return card;
            }
        };
    }

    CardMappings mappings() {
        return mappings;
    }
}
