package org.copperbook.rectifier;

import java.util.function.Supplier;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

/** Leads from the lot on the page to the jobs that got it. */
final class LotButton {

    LotButton(Composite area, Words words, Supplier<String> lot) {
        GridLayoutFactory.fillDefaults().applyTo(area);
        Button button = Look.of(area).as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        button.setText(words.text("lots.who"));
        button.setData(Desk.ID, "rectifier.lots");
        button.addListener(SWT.Selection, e -> open(lot.get()));
    }

    private static void open(String lot) {
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        try {
            ((LotsView) page.showView(LotsView.ID)).look(lot);
        } catch (PartInitException ex) {
            ILog.of(LotButton.class).error("the view of lots could not be opened", ex);
        }
    }
}
