package org.copperbook.rectifier;

import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.editor.JobInput;
import org.copperbook.desk.entry.MomentEntry;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.lot.LotUse;
import org.copperbook.store.JobStore;
import org.copperbook.store.LotSearch;
import org.copperbook.store.StoreException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** Which jobs got a lot of diodes or resin. A row opens its job. */
public final class LotsView extends ViewPart {

    public static final String ID = LotsView.class.getPackageName() + ".view.lots";


    private final Words words = Words.of(LotsView.class);
    private final MomentEntry moment = new MomentEntry();
    private Text lot;
    private Table table;
    private FittedColumns widths;
    private Label said;
    private int asked;

    @Override
    public void createPartControl(Composite parent) {
        Look look = Look.of(parent);
        Composite box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(8, 8).applyTo(box);
        Label label = look.as(Look.Role.TEXT, new Label(box, SWT.NONE));
        label.setText(words.text("lots.lot"));
        lot = look.as(Look.Role.TEXT, new Text(box, SWT.BORDER));
        lot.setData(Desk.ID, "lots.lot");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(lot);
        Button find = look.as(Look.Role.TEXT, new Button(box, SWT.PUSH));
        find.setText(words.text("lots.find"));
        find.setData(Desk.ID, "lots.find");
        table = look.as(Look.Role.TEXT, new Table(box, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE));
        table.setData(Desk.ID, "lots.table");
        table.setHeaderVisible(true);
        String[] heads = {"lots.job", "lots.part", "lots.of", "lots.lotHead", "lots.positions", "lots.at"};
        for (int i = 0; i < heads.length; i++) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(words.text(heads[i]));
        }
        widths = new FittedColumns(table, new int[heads.length]);
        Rows.dress(table, column -> false);
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).applyTo(table);
        said = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        said.setData(Desk.ID, "lots.said");
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1).applyTo(said);
        lot.addListener(SWT.DefaultSelection, e -> search());
        find.addListener(SWT.Selection, e -> search());
        table.addListener(SWT.DefaultSelection, e -> open());
    }

    /** Looks a lot up at once. */
    public void look(String wanted) {
        lot.setText(wanted);
        search();
    }

    @Override
    public void setFocus() {
        lot.setFocus();
    }

    private void search() {
        String wanted = lot.getText().strip();
        table.removeAll();
        if (wanted.isEmpty()) {
            said.setText(words.text("lots.empty"));
            return;
        }
        int mine = ++asked;
        said.setText(words.text("lots.looking"));
        JobStore store = DeskSession.ofWorkbench().store();
        new DeskJob(words.text("lots.looking"), monitor -> {
            String problem = "";
            LotSearch found = new LotSearch(List.of(), List.of());
            try {
                found = store.usesOfLot(wanted);
            } catch (StoreException e) {
                problem = e.getMessage();
            }
            LotSearch result = found;
            String trouble = problem;
            table.getDisplay().asyncExec(() -> {
                if (!table.isDisposed() && mine == asked) {
                    show(wanted, result, trouble);
                }
            });
        }).schedule();
    }

    private void show(String wanted, LotSearch found, String problem) {
        for (LotUse u : found.uses()) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setData(u);
            item.setText(new String[] {u.number(), words.text(u.part().kind() == PartKind.RECTIFIER ? "lots.diodes"
                    : "lots.resin"), u.makersPart(), u.lot(), u.positions().isEmpty() ? words.text("lots.all")
                    : String.join(", ", u.positions()), u.at() == null ? "" : moment.show(TextNode.valueOf(u.at().toString()))});
        }
        widths.fit();
        String jobs = words.text(found.uses().isEmpty() ? "lots.none" : "lots.found", wanted,
                found.uses().stream().map(LotUse::number).distinct().count());
        said.setText(!problem.isEmpty() ? problem : found.unread().isEmpty() ? jobs
                : jobs + " " + words.text("lots.unread", String.join(", ", found.unread())));
        said.requestLayout();
    }

    private void open() {
        if (table.getSelectionCount() == 1) {
            LotUse use = (LotUse) table.getSelection()[0].getData();
            new JobInput(use.jobId(), use.number()).openIn(getSite().getPage());
        }
    }
}
