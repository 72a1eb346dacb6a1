package org.copperbook.winding.memory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.cards.CardField;
import org.copperbook.sheets.cards.CardFile;
import org.copperbook.sheets.cards.CardMappings;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An import without its window: mapped, read, previewed. */
class CardImportTest {

    @TempDir
    Path folder;

    @Test
    void rowsAreShownAsTheyWereUnderstood() throws Exception {
        PartJson json = new PartJson();
        Path file = Files.writeString(folder.resolve("own.csv"), "Ident,N,W,D\nM-1,36,9,25\nM-2,48,five,30\n");
        CardImport cards = new CardImport(json, new CardMappings(folder.resolve("maps"), json), WindingRole.MAIN_STATOR);
        cards.use(CardFile.open(file));
        cards.map(cards.mapping().with(0, CardField.CARD, null).with(1, CardField.SLOTS, null)
                .with(2, CardField.TURNS, null).with(3, CardField.BORE, "cm"));
        assertTrue(cards.mapping().problems().isEmpty());
        cards.read(new NullProgressMonitor());
        assertEquals(2, cards.size());
        assertEquals(1, cards.refusedCount());
        RowText good = new RowText(cards.line(0), cards.row(0));
        assertEquals("250 mm", good.of(cards.mapping().columns().get(3), 3));
        assertEquals("36", good.of(cards.mapping().columns().get(1), 1));
        RowText bad = new RowText(cards.line(1), cards.row(1));
        assertEquals("five", bad.of(cards.mapping().columns().get(2), 2));
        assertEquals(3, cards.refusals().get(0).row());
    }
}
