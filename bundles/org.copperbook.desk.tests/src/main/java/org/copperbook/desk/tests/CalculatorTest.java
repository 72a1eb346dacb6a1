package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.calculator.CalculatorView;
import org.copperbook.desk.tests.window.Desktop;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The calculator view: find a calculation, fill it in, read the result with its source. */
class CalculatorTest {

    private final Desktop desktop = new Desktop();
    private IViewPart view;

    @AfterEach
    void close() {
        desktop.page().hideView(view);
    }

    /** 50 Hz and 6 poles give 1000 r/min: Srivastava Ex. 6.1. */
    @Test
    void findsACalculationAndShowsItsResult() throws Exception {
        view = desktop.page().showView(CalculatorView.ID);
        ((Text) desktop.field("calculator.find")).setText("synchronous-speed");
        Tree tree = (Tree) desktop.field("calculator.tree");
        desktop.until("one calculation is found", () -> tree.getItemCount() == 1 && tree.getItem(0).getItemCount() == 1);
        TreeItem found = tree.getItem(0).getItem(0);
        tree.setSelection(found);
        Event selected = new Event();
        selected.item = found;
        tree.notifyListeners(SWT.Selection, selected);
        desktop.until("its inputs are shown", () -> desktop.shows("calculator.input.f"));
        ((Text) desktop.field("calculator.input.f")).setText("50 Hz");
        ((Text) desktop.field("calculator.input.poles")).setText("6");
        Text result = (Text) desktop.field("calculator.result");
        desktop.until("the result is shown", () -> result.getText().contains("1000"));
        assertTrue(result.getText().contains("r/min"), result.getText());
    }
}
