package org.copperbook.winding.stock;

import java.util.List;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.desk.Desk;
import org.copperbook.desk.document.Coalescing;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.form.SaidText;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WireInHand;
import org.copperbook.jobs.winding.stock.WireProposal;
import org.copperbook.jobs.winding.stock.WireProposals;
import org.copperbook.jobs.winding.stock.WireWish;
import org.copperbook.winding.Aside;
import org.copperbook.winding.OpenWinding;
import org.copperbook.winding.WindingSection;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * Wire from the shelf in place of the original: ranked proposals, and the chosen one written into the record of the new
 * winding with the reason.
 */
public final class StockSection implements WindingSection {

    private static final int WANTED = 12;

    private record Asked(WindingData original, WireStock stock, WireWish wish) {
    }

    private record Told(List<WireProposal> proposals, String words) {
    }

    private final OpenWinding winding;
    private final NewWire writer;
    private Form form;
    private Label head;
    private WishFields wish;
    private ProposalRows rows;
    private Text reason;
    private Text said;
    private Coalescing<Asked, Told> computing;

    public StockSection(OpenWinding winding) {
        this.winding = winding;
        this.writer = new NewWire(winding.site(), winding.words());
    }

    @Override
    public void build(Form here) {
        form = here;
        Composite area = here.area("stock.title");
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 6).applyTo(area);
        head = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(head);
        wish = new WishFields(area, winding.words(), this::ask);
        rows = new ProposalRows(area, winding.words());
        Label why = look.as(Look.Role.TEXT, new Label(area, SWT.NONE));
        why.setText(words("stock.why"));
        reason = look.as(Look.Role.TEXT, new Text(area, SWT.BORDER | SWT.SINGLE));
        reason.setMessage(words("stock.whyHint"));
        reason.setData(Desk.ID, "stock.why");
        SpokenName.give(reason, why.getText());
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(30), Math.max(look.rowHeight(),
                reason.computeSize(SWT.DEFAULT, SWT.DEFAULT).y)).applyTo(reason);
        reason.addListener(SWT.DefaultSelection, e -> take());
        rows.table().addListener(SWT.Selection, e -> explain());
        rows.table().addListener(SWT.DefaultSelection, e -> reason.setFocus());
        Button take = look.as(Look.Role.STRONG, new Button(area, SWT.PUSH));
        take.setText(words("stock.take"));
        take.setData(Desk.ID, "stock.take");
        take.addListener(SWT.Selection, e -> take());
        GridDataFactory.fillDefaults().span(2, 1).align(SWT.BEGINNING, SWT.CENTER).applyTo(take);
        said = SaidText.in(area, "stock.said", words("stock.said"));
        said.setText(words("stock.hint"));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        computing = Aside.of(area, this::propose, this::show);
    }

    private String words(String key, Object... args) {
        return winding.words().text(key, args);
    }

    @Override
    public void changed() {
        ask();
    }

    @Override
    public void judged(List<Verdict> ofJob) {
        ask();
    }

    private void ask() {
        Optional<WindingData> original = NewWire.original(winding.document(), winding.key())
                .filter(w -> !w.wire().isEmpty());
        if (original.isEmpty()) {
            head(words("stock.needsWire"));
            if (rows.show(List.of())) {
                form.relayout();
            }
            return;
        }
        int strands = original.get().wire().stream().mapToInt(WireInHand::strands).sum();
        head(words("stock.original", NewWire.hand(original.get().wire())));
        wish.offer(strands);
        wish.read(strands).ifPresent(w -> computing.ask(new Asked(original.get(), winding.site().shop().stock(), w)));
    }

    private void head(String text) {
        if (!text.equals(head.getText())) {
            head.setText(text);
            form.relayout();
        }
    }

    private Told propose(Asked asked) {
        try {
            if (asked.stock.spools().isEmpty()) {
                return new Told(List.of(), words("stock.noShelf"));
            }
            List<WireProposal> found = WireProposals.of(asked.original, asked.stock, asked.wish, WANTED);
            return new Told(found, words(found.isEmpty() ? "stock.nothing"
                    : found.stream().allMatch(WireProposal::isOriginal) ? "stock.onlyOriginal" : "stock.hint"));
        } catch (WireProposals.NotSubstitutable e) {
            return new Told(List.of(), words("stock.not." + e.why().name(), e.which()));
        } catch (OutOfRange e) {
            return new Told(List.of(), e.getMessage());
        }
    }

    private void show(Told told) {
        if (!said.isDisposed() && (rows.show(told.proposals) | say(told.words))) {
            form.relayout();
        }
    }

    private void explain() {
        String words = rows.inWords();
        if (!words.isEmpty()) {
            say(words);
        }
    }

    private boolean say(String text) {
        if (text.equals(said.getText())) {
            return false;
        }
        said.setText(text);
        form.relayout();
        return true;
    }

    private void take() {
        Optional<WindingData> original = NewWire.original(winding.document(), winding.key());
        Optional<PartKey> target = NewWire.target(winding.document(), winding.key());
        WireProposal chosen = rows.chosen();
        if (chosen == null || original.isEmpty() || target.isEmpty()) {
            rows.table().setFocus();
            rows.table().deselectAll(); // the cursor alone chooses nothing
            say(words("stock.choose"));
            return;
        }
        if (reason.getText().isBlank()) {
            say(words("stock.needsWhy"));
            reason.setFocus();
            return;
        }
        Optional<String> problem = writer.write(original.get(), chosen, reason.getText().strip());
        say(problem.map(p -> words("stock.refused", p)).orElse(words("stock.taken", chosen.label())));
        if (problem.isEmpty() && !target.get().equals(winding.key())) {
            winding.site().open(target.get());
        }
    }
}
