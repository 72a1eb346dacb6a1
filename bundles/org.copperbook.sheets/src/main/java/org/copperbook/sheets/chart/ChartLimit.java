package org.copperbook.sheets.chart;

/** A limit across a chart, along the upright axis. */
public sealed interface ChartLimit {

    /** What the limit is called, with its source. */
    String title();

    /** A line: values beyond it fail. */
    record Line(String title, double value) implements ChartLimit {
    }

    /** A band: values inside it meet. */
    record Band(String title, double from, double to) implements ChartLimit {

        public Band {
            if (!(from <= to)) {
                throw new IllegalArgumentException("a band runs from its lower to its upper end");
            }
        }
    }
}
