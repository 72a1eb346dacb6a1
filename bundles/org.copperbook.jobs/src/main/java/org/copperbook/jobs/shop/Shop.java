package org.copperbook.jobs.shop;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.copperbook.jobs.faults.DefaultFaultTables;
import org.copperbook.jobs.faults.FaultTables;
import org.copperbook.jobs.inspection.ChecklistTemplate;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.limits.LimitProfile;

/**
 * What the checks and workbooks need to know of the shop beside a job.
 *
 * @param workshop    settings
 * @param instruments instruments with their accuracy
 * @param stock       wire on the shelf
 * @param limits      the limit profile in force
 * @param faultTables tables of the fault finder in force
 * @param checklist   the workshop's own checklist; without points the one that ships is used
 * @param rates       what an hour of each trade costs before mark-up
 * @param people      people by the key that parts name; a key without an entry has been erased or never was
 */
public record Shop(Workshop workshop, Instruments instruments, WireStock stock, LimitProfile limits,
        FaultTables faultTables, ChecklistTemplate checklist, LabourRates rates, Map<String, Person> people) {

    public Shop {
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(instruments, "instruments");
        Objects.requireNonNull(stock, "stock");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(faultTables, "faultTables");
        checklist = checklist == null ? new ChecklistTemplate(ChecklistTemplate.SCHEMA, null, null) : checklist;
        rates = rates == null ? LabourRates.none() : rates;
        people = Collections.unmodifiableMap(new LinkedHashMap<>(people));
    }

    /** A shop that has not said what an hour costs. */
    public Shop(Workshop workshop, Instruments instruments, WireStock stock, LimitProfile limits, FaultTables faultTables,
            ChecklistTemplate checklist, Map<String, Person> people) {
        this(workshop, instruments, stock, limits, faultTables, checklist, null, people);
    }

    /** A shop that keeps no checklist of its own. */
    public Shop(Workshop workshop, Instruments instruments, WireStock stock, LimitProfile limits, FaultTables faultTables,
            Map<String, Person> people) {
        this(workshop, instruments, stock, limits, faultTables, null, null, people);
    }

    /** A shop that keeps no fault tables of its own and works by those that ship with the product. */
    public Shop(Workshop workshop, Instruments instruments, WireStock stock, LimitProfile limits,
            Map<String, Person> people) {
        this(workshop, instruments, stock, limits, DefaultFaultTables.load(new PartJson()), people);
    }

    /** The person behind a key, if known. */
    public Optional<Person> person(String key) {
        return Optional.ofNullable(key).map(people::get);
    }

    /** The name to show for a key: the person's name, or the key itself when nobody is known under it. */
    public String nameOf(String key) {
        return person(key).map(Person::name).orElse(key == null ? "" : key);
    }
}
