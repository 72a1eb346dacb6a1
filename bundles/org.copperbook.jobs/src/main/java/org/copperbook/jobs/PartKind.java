package org.copperbook.jobs;

import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.faults.FaultFinding;
import org.copperbook.jobs.faults.FaultTables;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.inspection.ChecklistTemplate;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.limits.LimitProfile;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.process.ProcessTests;
import org.copperbook.jobs.quote.OwnTemplate;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.seal.IssuedCopies;
import org.copperbook.jobs.shop.Capacities;
import org.copperbook.jobs.shop.Instruments;
import org.copperbook.jobs.shop.LabourRates;
import org.copperbook.jobs.shop.Staff;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.work.Hours;

/** The kinds of part, in the order of a job's life, with the record that carries each. */
public enum PartKind {
    BOOKING("booking", Booking.class, false),
    STANDING("standing", Standing.class, false),
    NAMEPLATE("nameplate", Nameplate.class, false),
    INSPECTION("inspection", Inspection.class, false),
    FAULT_FINDING("fault-finding", FaultFinding.class, false),
    QUOTE("quote", Quote.class, true),
    HOURS("hours", Hours.class, false),
    WINDING("winding", WindingData.class, true),
    CORE("core", CoreTest.class, false),
    IN_PROCESS("in-process", ProcessTests.class, false),
    IMPREGNATION("impregnation", Impregnation.class, false),
    RECTIFIER("rectifier", RectifierSet.class, false),
    RUN_UP("run-up", RunUp.class, false),
    SIGN_OFFS("sign-offs", SignOffs.class, false),
    HAND_BACK("hand-back", HandBack.class, false),
    ISSUED_COPIES("issued-copies", IssuedCopies.class, false),
    /** Settings and registers of the shop itself; they hang on the shop, not on a job. */
    WORKSHOP("workshop", Workshop.class, false),
    INSTRUMENTS("instruments", Instruments.class, false),
    WIRE_STOCK("wire-stock", WireStock.class, false),
    STOCK_ITEM("stock-item", StockItem.class, true),
    CAPACITIES("capacities", Capacities.class, false),
    LABOUR_RATES("labour-rates", LabourRates.class, false),
    CUSTOMER("customer", Customer.class, true),
    LIMITS("limits", LimitProfile.class, false),
    FAULT_TABLES("fault-tables", FaultTables.class, false),
    STAFF("staff", Staff.class, false),
    CHECKLIST("checklist", ChecklistTemplate.class, false),
    QUOTE_TEMPLATE("quote-template", OwnTemplate.class, false),
    /** Winding cards from before this store, which belong to no job. */
    OLD_CARD("old-card", OldCard.class, true);

    private final String word;
    private final Class<? extends Part> type;
    private final boolean many;

    PartKind(String word, Class<? extends Part> type, boolean many) {
        this.word = word;
        this.type = type;
        this.many = many;
    }

    /** The kind as it stands in keys and files, e.g. "run-up". */
    public String word() {
        return word;
    }

    /** The record class of this kind. */
    public Class<? extends Part> type() {
        return type;
    }

    /** Whether a job can have several parts of this kind, told apart by a name ("winding/main-stator", "quote/1"). */
    public boolean many() {
        return many;
    }

    /** Whether the part belongs to the shop as a whole and not to a job. */
    public boolean ofShop() {
        return ordinal() >= WORKSHOP.ordinal();
    }

    /**
     * The kind behind a word.
     *
     * @throws IllegalArgumentException when no kind has that word
     */
    public static PartKind of(String word) {
        for (PartKind k : values()) {
            if (k.word.equals(word)) {
                return k;
            }
        }
        throw new IllegalArgumentException("\"" + word + "\" is not a kind of part");
    }
}
