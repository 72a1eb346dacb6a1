package org.copperbook.office.registers;

import java.time.Year;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.store.NumberPattern;
import org.copperbook.store.StoreException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.widgets.Composite;

/** What the workshop is called, in what it counts, and how its jobs are numbered. */
final class WorkshopPane extends ShopPane {

    private static final PartKey KEY = PartKey.of(PartKind.WORKSHOP);
    private static final int MOST_MONTHS = 600;

    private Form form;

    WorkshopPane(Composite parent, ShopEditing editing, DeskSession session, Words words) {
        super(parent, editing, session, words, "workshop");
        historyButton();
        build();
        editing.open(KEY, new Workshop(Workshop.SCHEMA, null, null, null, null, null, null, null, null, null, null, Map.of()),
                this::changed);
    }

    private void build() {
        form = new Form(body(), editing().site(KEY), words());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form.control());
        form.section("workshop.head")
                .text("/name", "workshop.name")
                .longText("/address", "workshop.address")
                .text("/currency", "workshop.currency")
                .choice("/units", "workshop.units", Workshop.Units.class);
        form.section("workshop.numbers")
                .text("/numberSeries", "workshop.series")
                .computed("workshop.example", "workshop.example", this::example);
        form.words("workshop.seriesWords");
        form.section("workshop.measuring")
                .number("/referenceCelsius", "workshop.reference", FieldUnit.CELSIUS)
                .number("/copperConstant", "workshop.copper", FieldUnit.NUMBER)
                .number("/temperatureU", "workshop.temperatureU", FieldUnit.KELVIN);
        form.section("workshop.names")
                .integer("/keepNamesMonths", "workshop.keepNames", 1, MOST_MONTHS);
        form.refresh();
    }

    private Workshop now() {
        return editing().document().part(KEY, Workshop.class).orElse(session().shop().workshop());
    }

    /** A job number as the pattern on the screen writes it, or why it writes none. */
    private String example() {
        try {
            NumberPattern series = new NumberPattern(now().numberSeries());
            int year = Year.now().getValue();
            return words().text("workshop.exampleText", series.format(year, 1), series.format(year, 2));
        } catch (StoreException e) {
            return e.getMessage();
        }
    }

    @Override
    Optional<PartKey> key() {
        return Optional.of(KEY);
    }

    @Override
    void changed() {
        form.refresh();
    }

    @Override
    Optional<String> problem() {
        if (!editing().document().dirty(KEY)) {
            return Optional.empty();
        }
        Workshop now = now();
        if (now.name() == null || now.name().isBlank()) {
            return Optional.of(words().text("workshop.nameless"));
        }
        if (!isCurrency(now.currency())) {
            return Optional.of(words().text("workshop.noCurrency", now.currency()));
        }
        try {
            new NumberPattern(now.numberSeries());
            return Optional.empty();
        } catch (StoreException e) {
            return Optional.of(e.getMessage());
        }
    }

    private static boolean isCurrency(String code) {
        try {
            Currency.getInstance(code);
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    @Override
    void setFocus() {
        form.focusFirst();
    }

    @Override
    void resized() {
        form.control().dispose();
        build();
        body().layout(true, true);
    }
}
