package org.copperbook.jobs.rights;

import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.stock.StockMovement;

/** What somebody may do to the workshop's record. Reading is no right: who can open the store can read it. */
public enum Right {
    /** Book a machine in, and say that it waits, is handed back or is void. */
    BOOK_IN,
    /** Write down what the nameplate says. */
    COPY_NAMEPLATE,
    /** Write quotes, send them and write down what the customer answers. */
    QUOTE,
    /** Inspect, find faults, capture and wind, impregnate, fit the rectifier, measure while the work goes on. */
    WORK_AT_BENCH,
    /** Prove the core and run the machine up. */
    TEST,
    /** Sign, concede, judge, reopen and acknowledge cautions; what of it, the rules of the hold points say. */
    SIGN,
    /** Note that a workbook of a released record was issued. */
    ISSUE_COPIES,
    /** Write down hours worked. */
    BOOK_HOURS,
    KEEP_INSTRUMENTS,
    KEEP_WIRE_STOCK,
    /** Take stock for a job and put back what is left over. */
    ISSUE_STOCK,
    /** Receive, reserve and count stock, and change what is kept in stock and at what price. */
    KEEP_STOCK,
    /** Say how many hours a week each trade can work. */
    KEEP_CAPACITIES,
    /** Say what an hour of each trade costs before mark-up. */
    KEEP_LABOUR_RATES,
    /** Choose the workbook that quotes are written into. */
    KEEP_QUOTE_TEMPLATE,
    /** Set the limits and the tables of the fault finder. */
    SET_LIMITS,
    /** Change the settings of the workshop. */
    SET_UP_WORKSHOP,
    /** Take in whole jobs from files, with whatever signatures they carry. */
    TAKE_IN_JOBS,
    /** Take in old winding cards. */
    TAKE_IN_CARDS,
    /** Add, change and merge customers and their contacts. */
    KEEP_CONTACTS,
    /** Add people of the shop, give roles, set and reset secrets. */
    KEEP_PEOPLE,
    /** Erase a name or a photo for good. */
    ERASE;

    /** The right that saving a part needs; what more a movement of stock or a change of its description needs, it asks for. */
    public static Right toSave(PartKind kind) {
        return switch (kind) {
            case BOOKING, STANDING, HAND_BACK -> BOOK_IN;
            case NAMEPLATE -> COPY_NAMEPLATE;
            case QUOTE -> QUOTE;
            case INSPECTION, CHECKLIST, FAULT_FINDING, WINDING, IN_PROCESS, IMPREGNATION, RECTIFIER -> WORK_AT_BENCH;
            case CORE, RUN_UP -> TEST;
            case SIGN_OFFS -> SIGN;
            case ISSUED_COPIES -> ISSUE_COPIES;
            case HOURS -> BOOK_HOURS;
            case WORKSHOP -> SET_UP_WORKSHOP;
            case INSTRUMENTS -> KEEP_INSTRUMENTS;
            case WIRE_STOCK -> KEEP_WIRE_STOCK;
            case STOCK_ITEM -> ISSUE_STOCK;
            case CAPACITIES -> KEEP_CAPACITIES;
            case LABOUR_RATES -> KEEP_LABOUR_RATES;
            case QUOTE_TEMPLATE -> KEEP_QUOTE_TEMPLATE;
            case CUSTOMER -> KEEP_CONTACTS;
            case LIMITS, FAULT_TABLES -> SET_LIMITS;
            case STAFF -> KEEP_PEOPLE;
            case OLD_CARD -> TAKE_IN_CARDS;
        };
    }

    /** The right that a movement of stock needs. */
    public static Right toMove(StockMovement.Kind kind) {
        return switch (kind) {
            case ISSUE, RETURN -> ISSUE_STOCK;
            case RECEIVE, RESERVE, RELEASE, ADJUST -> KEEP_STOCK;
        };
    }
}
