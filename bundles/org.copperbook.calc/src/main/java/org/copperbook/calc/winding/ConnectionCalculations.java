package org.copperbook.calc.winding;

import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;

/** Connections of leads. */
public final class ConnectionCalculations implements CalculationSource {
    private static final String WINDING = "winding";

    @Override
    public List<Calculation> calculations() {
        return List.of(leads());
    }

    private static Calculation leads() {
        return Calculation.named(WINDING, "lead-connection")
                .title("Leads to join, line voltages and resistances of a connection")
                .source("NEMA MG 1 part 2 (T-numbers) and IEC 60034-8 (marks), memory;"
                        + " voltages and resistances are circuit identities")
                .formula("volts: sum of the sections as phasors; ohms: node potentials")
                .choice("connection", LeadConnection.all().stream().map(LeadConnection::id).toList(), null,
                "connection and number of leads")
                .number("section-volts", VOLTAGE, "V", "120", "voltage of one section")
                .number("section-ohms", RESISTANCE, "Ω", "1", "resistance of one section")
                .givesWord("joins", "leads joined, T-numbers")
                .givesWord("joins-iec", "leads joined, IEC 60034-8 marks")
                .givesWord("inside", "joins made inside the machine, T-numbers as on twelve leads")
                .givesWord("lines", "leads of each line terminal, T-numbers")
                .givesWord("idle", "leads to insulate one by one")
                .gives("line-volts", VOLTAGE, "V", "between the first two lines")
                .gives("neutral-volts", VOLTAGE, "V", "from line to the neutral or middle point, where there is one")
                .gives("line-ohms", RESISTANCE, "Ω", "between the first two lines")
                .by((in, out) -> {
                    LeadConnection c = LeadConnection.named(in.text("connection"));
                    out.put("joins", written(c.joins()))
                            .put("joins-iec", c.joins().stream().map(join -> join.stream().map(c::iecMark)
                            .collect(Collectors.joining("-"))).collect(Collectors.joining(" ")))
                            .put("inside", c.inside().isEmpty() ? "none" : written(c.inside()))
                            .put("lines", written(c.lines()))
                            .put("idle", c.idle().isEmpty() ? "none" : written(List.of(c.idle())))
                            .put("line-volts", c.lineVolts(in.number("section-volts"), 1, 2))
                            .put("line-ohms", c.lineOhms(in.number("section-ohms"), 1, 2));
                    if (!c.neutral().isEmpty()) {
                        out.put("neutral-volts", c.neutralVolts(in.number("section-volts"), 1));
                    }
                });
    }

    private static String written(List<List<Integer>> groups) {
        return groups.stream().map(g -> g.stream().map(String::valueOf).collect(Collectors.joining("-")))
                .collect(Collectors.joining(" "));
    }
}
