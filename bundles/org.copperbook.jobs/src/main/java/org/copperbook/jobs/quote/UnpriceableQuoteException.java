package org.copperbook.jobs.quote;

/** A quote that cannot be added up; the message names the place and the mend. */
public class UnpriceableQuoteException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    UnpriceableQuoteException(String message, Throwable cause) {
        super(message, cause);
    }
}
