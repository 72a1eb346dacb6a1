package org.copperbook.office.registers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.document.Change;
import org.copperbook.desk.editor.InFront;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.PartKey;
import org.copperbook.office.Quotes;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.EditorPart;

/** The registers of the shop, one a tab. What is changed in them waits until it is saved, and can be undone until then. */
public final class RegistersEditor extends EditorPart {

    public static final String ID = "org.copperbook.office.editor.shop-registers";

    private final Words words = Words.of(Quotes.class);
    private final List<ShopPane> panes = new ArrayList<>();
    private ShopEditing editing;
    private Composite box;
    private CTabFolder tabs;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        DeskSession session = DeskSession.ofWorkbench();
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(box);
        editing = new ShopEditing(box, session, this::label, new RegisterDifferences(words), this::changed);
        tabs = look.as(Look.Role.TEXT, new CTabFolder(box, SWT.TOP | SWT.FLAT));
        tabs.setData(Desk.ID, "registers.tabs");
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tabs);
        tabs.setTabHeight(look.rowHeight());
        panes.add(new InstrumentsPane(tabs, editing, session, words));
        panes.add(new CustomersPane(tabs, editing, session, words));
        panes.add(new RatesPane(tabs, editing, session, words));
        panes.add(new CapacitiesPane(tabs, editing, session, words));
        panes.add(new TemplatePane(tabs, editing, session, words));
        panes.add(new FaultTablesPane(tabs, editing, session, words));
        panes.add(new WorkshopPane(tabs, editing, session, words));
        panes.add(new PeoplePane(tabs, editing, session, words, getSite().getService(IHandlerService.class)));
        for (ShopPane p : panes) {
            CTabItem item = new CTabItem(tabs, SWT.NONE);
            item.setText(p.title());
            item.setControl(p.control());
        }
        tabs.setSelection(0);
        tabs.addListener(SWT.Selection, e -> {
            setFocus();
            editing.shownChanged();
        });
        editing.commands(getSite(), () -> shown().flatMap(ShopPane::key));
        look.onResize(box, () -> {
            look.dress(box);
            tabs.setTabHeight(look.rowHeight());
            panes.forEach(ShopPane::resized);
            Reach.ensure(box);
            box.layout(true, true);
        });
        Reach.ensure(box);
        editing.offerLeft(key -> panes.stream().anyMatch(p -> p.owns(key)), this::show);
    }

    private void show(PartKey key) {
        for (int i = 0; i < panes.size(); i++) {
            if (panes.get(i).owns(key)) {
                tabs.setSelection(i);
                panes.get(i).show(key);
                setFocus();
                editing.shownChanged();
            }
        }
    }

    /** The register shown. */
    private Optional<ShopPane> shown() {
        int at = tabs.getSelectionIndex();
        return at >= 0 && at < panes.size() ? Optional.of(panes.get(at)) : Optional.empty();
    }

    private String label(PartKey key) {
        return panes.stream().filter(p -> p.owns(key)).map(ShopPane::title).findFirst().orElse(key.toString());
    }

    private void changed(Change change) {
        panes.stream().filter(p -> change.key() != null && p.owns(change.key())).forEach(p -> {
            p.say("");
            p.changed();
        });
        firePropertyChange(IEditorPart.PROP_DIRTY);
    }

    @Override
    public void setFocus() {
        shown().ifPresent(ShopPane::setFocus);
    }

    @Override
    public boolean isDirty() {
        return editing != null && editing.document().dirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        for (int i = 0; i < panes.size(); i++) {
            Optional<String> problem = panes.get(i).problem();
            if (problem.isPresent()) {
                editing.say(problem.get());
                monitor.setCanceled(true);
                tabs.setSelection(i);
                editing.shownChanged();
                // The window may be about to close with another page over this one: what keeps it open has to be seen.
                InFront.bring(this);
                return;
            }
        }
        editing.say(null);
        editing.save(() -> firePropertyChange(IEditorPart.PROP_DIRTY));
        // The saving goes on in the background; who closes the window is asked again until it is done.
        if (isDirty()) {
            monitor.setCanceled(true);
            InFront.bring(this);
        }
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("the registers have no other place");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void dispose() {
        if (editing != null) {
            editing.close();
        }
        super.dispose();
    }
}
