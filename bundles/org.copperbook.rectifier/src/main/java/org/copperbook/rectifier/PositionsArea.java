package org.copperbook.rectifier;

import org.copperbook.desk.Desk;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Says when the rows are not those of the circuit chosen, and lays them out on request as one undo step. */
final class PositionsArea {

    private final PageSite site;
    private final Words words;
    private final Label said;
    private final Button layOut;

    PositionsArea(Composite area, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(said);
        layOut = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        layOut.setText(words.text("positions.layOut"));
        layOut.setData(Desk.ID, "rectifier.layOut");
        layOut.addListener(SWT.Selection, e -> site.document().part(site.key(), RectifierSet.class)
                .map(RectifierSet::circuit).ifPresent(circuit -> site.document().change(site.key(), "/positions",
                        set -> PositionsOfCircuit.fit(set, circuit))));
    }

    /** Shows the rows of a set against its circuit. */
    void show(RectifierSet set) {
        boolean known = set != null && set.circuit() != null;
        int wanted = known ? set.circuit().diodes() : 0;
        boolean differs = known && set.positions().size() != wanted;
        String now = !known ? "" : differs ? words.text("positions.differ", words.of(set.circuit()), wanted,
                set.positions().size()) : words.text("positions.match", words.of(set.circuit()), wanted);
        if (!now.equals(said.getText())) {
            said.setText(now);
            said.requestLayout();
        }
        layOut.setEnabled(differs && site.blocked().isEmpty());
    }
}
