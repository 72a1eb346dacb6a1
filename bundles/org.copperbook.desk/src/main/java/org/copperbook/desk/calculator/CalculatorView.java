package org.copperbook.desk.calculator;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.Catalogue;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.Marks;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerFilter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** Every calculation of the library by name: pick one, fill it in, read the result with its formula and source. */
public final class CalculatorView extends ViewPart {

    public static final String ID = Desk.BUNDLE + ".view.calculator";

    private static final int ROOMY_CHARS = 84;

    private final Words words = Words.of(CalculatorView.class);
    private final Catalogue catalogue = Catalogue.standard();
    private Text find;
    private TreeViewer tree;
    private WorksheetPane pane;

    @Override
    public void createPartControl(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        Look look = Look.of(parent);
        Composite left = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(left);
        Composite line = new Composite(left, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        find = look.as(Look.Role.TEXT, new Text(line, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL));
        find.setMessage(words.text("calculator.find"));
        find.setData(Desk.ID, "calculator.find");
        SpokenName.give(find, words.text("calculator.find"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(find);
        Reach.ensure(line);
        tree = new TreeViewer(left, SWT.BORDER | SWT.SINGLE | SWT.V_SCROLL);
        look.as(Look.Role.TEXT, tree.getTree()).setData(Desk.ID, "calculator.tree");
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.getTree());
        tree.setContentProvider(new Areas());
        tree.setLabelProvider(LabelProvider.createTextProvider(
                o -> o instanceof Calculation c ? c.title() : String.valueOf(o)));
        tree.addFilter(new Found());
        tree.setInput(catalogue.byArea());
        pane = new WorksheetPane(sash, words);
        sash.setWeights(2, 3);
        // Beside each other where there is room, else one above the other.
        sash.addListener(SWT.Resize, e -> sash.setOrientation(
                sash.getClientArea().width < look.chars(ROOMY_CHARS) ? SWT.VERTICAL : SWT.HORIZONTAL));
        find.addModifyListener(e -> {
            tree.refresh();
            if (!find.getText().isBlank()) {
                tree.expandAll();
            }
        });
        find.addListener(SWT.DefaultSelection, e -> tree.getTree().setFocus());
        tree.addSelectionChangedListener(e -> {
            if (e.getStructuredSelection().getFirstElement() instanceof Calculation c) {
                pane.show(new Worksheet(catalogue, c, Marks.ofLocale()));
            }
        });
        tree.addOpenListener(e -> pane.setFocus());
    }

    @Override
    public void setFocus() {
        find.setFocus();
    }

    /** The areas of the library with their calculations. */
    private static final class Areas implements ITreeContentProvider {

        private Map<?, ?> areas = Map.of();

        @Override
        public Object[] getElements(Object input) {
            areas = (Map<?, ?>) input;
            return areas.keySet().toArray();
        }

        @Override
        public Object[] getChildren(Object parent) {
            return areas.get(parent) instanceof List<?> l ? l.toArray() : new Object[0];
        }

        @Override
        public Object getParent(Object element) {
            return element instanceof Calculation c ? c.area() : null;
        }

        @Override
        public boolean hasChildren(Object element) {
            return element instanceof String;
        }
    }

    /** All words typed stand in the name, title, area or source. */
    private final class Found extends ViewerFilter {
        @Override
        public boolean select(Viewer viewer, Object parent, Object element) {
            if (element instanceof Calculation c) {
                String text = (c.area() + ' ' + c.name() + ' ' + c.title() + ' ' + c.source()).toLowerCase(Locale.ROOT);
                for (String word : find.getText().toLowerCase(Locale.ROOT).strip().split("\\s+")) {
                    if (!text.contains(word)) {
                        return false;
                    }
                }
                return true;
            }
            return catalogue.byArea().getOrDefault(String.valueOf(element), List.of()).stream()
                    .anyMatch(c -> select(viewer, element, c));
        }
    }
}
