package org.copperbook.winding.memory;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.store.memory.CardIntake;
import org.copperbook.store.memory.CardTaken;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What became of the cards. */
final class DonePage extends WizardPage {

    private final CardImport cards;
    private final Words words;
    private Label said;
    private Button save;

    DonePage(CardImport cards, Words words) {
        super("done", words.text("cards.doneTitle"), null);
        this.cards = cards;
        this.words = words;
    }

    @Override
    public void createControl(Composite parent) {
        Composite box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(box);
        said = new Label(box, SWT.WRAP);
        said.setData(Desk.ID, "cards.done");
        GridDataFactory.fillDefaults().grab(true, false).hint(Look.of(box).chars(80), SWT.DEFAULT).applyTo(said);
        save = new Button(box, SWT.PUSH);
        save.setText(words.text("cards.saveLeft"));
        save.addListener(SWT.Selection, e -> RowsPage.save(this, words, cards::leftOut));
        setControl(box);
    }

    /** There is no way back from here: the cards are in. */
    @Override
    public IWizardPage getPreviousPage() {
        return null;
    }

    void fill() {
        CardIntake.Outcome outcome = cards.outcome().orElseThrow();
        List<String> lines = new ArrayList<>();
        int in = outcome.count(CardTaken.NEW) + outcome.count(CardTaken.REVISED);
        if (outcome.stopped()) {
            lines.add(words.text("cards.stopped", in, cards.size() - cards.refusedCount()));
        }
        lines.add(words.text("cards.new", outcome.count(CardTaken.NEW)));
        add(lines, "cards.known", outcome.count(CardTaken.KNOWN));
        add(lines, "cards.revised", outcome.count(CardTaken.REVISED));
        add(lines, "cards.contradicting", outcome.count(CardTaken.CONTRADICTS));
        add(lines, "cards.refused", cards.refusedCount());
        said.setText(String.join("\n", lines));
        setTitle(words.text(outcome.stopped() ? "cards.stoppedTitle" : "cards.doneTitle"));
        save.setVisible(cards.refusedCount() + outcome.count(CardTaken.CONTRADICTS) > 0);
        ((Composite) getControl()).layout(true, true);
    }

    private void add(List<String> lines, String key, int count) {
        if (count > 0) {
            lines.add(words.text(key, count));
        }
    }
}
