package org.copperbook.office.hours;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.copperbook.desk.form.Actions;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.work.Hours;
import org.copperbook.office.Quotes;

/** Hours worked on the job, and what it took so far against what was agreed to. */
public final class HoursPage extends PartPage {

    private Trades trades;
    private Timer timer;
    private RunningArea running;
    private ActualsArea actuals;

    @Override
    protected Words words() {
        return Words.of(Quotes.class);
    }

    @Override
    protected void build(Form here) {
        trades = new Trades(site());
        timer = new Timer(site(), words(), trades);
        here.words("hours.about");
        here.grid("hours.entries", "/entries", columns -> columns
                .person("/who", "hours.who")
                .proposals("/trade", "hours.trade", this::names)
                .date("/date", "hours.date")
                .decimal("/hours", "hours.hours")
                .text("/note", "hours.note"))
                .newRow(this::newRow);
        new Actions(here.area(), site(), "hours.begun")
                .button("hours.begin", words().text("hours.begin"), timer::begin)
                .button("hours.stop", words().text("hours.stop"), timer::stop);
        running = new RunningArea(here.area(), site(), words());
        actuals = new ActualsArea(here.area("hours.compared"), site(), words());
    }

    @Override
    protected void changed() {
        if (actuals != null) {
            running.show();
            actuals.show();
        }
    }

    private Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        trades.all().forEach(t -> names.put(t, t));
        return names;
    }

    /** Who works here, today, at the trade of the last entry of the same person. */
    private ObjectNode newRow() {
        ObjectNode row = site().json().mapper().createObjectNode();
        site().who().ifPresent(who -> {
            row.put("who", who);
            trades.usual(document().part(key(), Hours.class), who).ifPresent(t -> row.put("trade", t));
        });
        return row.put("date", LocalDate.now().toString());
    }
}
