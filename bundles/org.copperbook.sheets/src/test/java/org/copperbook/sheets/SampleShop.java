package org.copperbook.sheets;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.copperbook.jobs.limits.LimitProfile;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Instrument.Kind;
import org.copperbook.jobs.shop.Instruments;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.jobs.signoff.Role;

/** An invented workshop. */
final class SampleShop {

    private SampleShop() {
    }

    static Shop shop() {
        return shop("EUR", true);
    }

    static Shop shop(String currency, boolean demo) {
        Workshop workshop = new Workshop(1, "Tidewater Rewinds & Sons", "Slipway 4\nOld Harbour\nTel. 555 0134", currency,
                null, 20.0, 235.0, 1.0, null, demo, null, Map.of());
        List<Instrument> instruments = List.of(
                instrument("B1", "Micro-ohm bridge, four-wire", Kind.RESISTANCE_BRIDGE, true, "ohm", 20.0, 0.0001, 0.1, 2.0),
                instrument("M2", "Hand multimeter", Kind.MULTIMETER, false, "ohm", 600.0, 0.1, 0.9, 2.0),
                instrument("I1", "Insulation tester, 1 kV", Kind.INSULATION_TESTER, false, "ohm", 2.0e11, 1.0e5, 5.0, 3.0),
                instrument("W3", "Torque wrench 1 to 6 N m", Kind.TORQUE_WRENCH, false, "N m", 6.0, 0.05, 4.0, 0.0),
                instrument("V1", "Vibration meter", Kind.VIBRATION_METER, false, "mm/s", 50.0, 0.1, 5.0, 1.0));
        Map<String, Person> people = Map.of(
                "ida", new Person("ida", "Ida Brandt", Set.of(Role.FOREMAN), null, null, true),
                "olu", new Person("olu", "Olu Amadi", Set.of(Role.WINDER), null, null, true),
                "mei", new Person("mei", "Mei Tanaka", Set.of(Role.TESTER), null, null, true),
                "per", new Person("per", "Per Lindqvist", Set.of(Role.QUALITY_CHECKER), null, null, true),
                "c-jo", new Person("c-jo", "Jo Marchetti", Set.of(), "555 0199", null, true));
        return new Shop(workshop, new Instruments(1, instruments, Map.of()), new WireStock(1, List.of(), Map.of()),
                new LimitProfile(1, "shop", List.of(), Map.of()), people);
    }

    private static Instrument instrument(String id, String name, Kind kind, boolean fourWire, String quantity,
            double upTo, double resolution, double percent, double digits) {
        return new Instrument(id, name, kind,
                List.of(new Instrument.Range(quantity, upTo, resolution, percent, digits, Map.of())), fourWire, null, null,
                LocalDate.of(2025, 11, 3), LocalDate.of(2026, 11, 3), "C-" + id + "-2025", Map.of());
    }
}
