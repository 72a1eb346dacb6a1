package org.copperbook.jobs.quote;

/** A quote that cannot be added up; the message names the place and the mend. */
public class UnpriceableQuoteException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** A quote whose amounts a spreadsheet cannot hold to the last digit. */
    public static UnpriceableQuoteException beyondSpreadsheets(String message) {
        return new UnpriceableQuoteException(message, null);
    }

    UnpriceableQuoteException(String message, Throwable cause) {
        super(message, cause);
    }
}
