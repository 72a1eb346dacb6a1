package org.copperbook.sheets.chart;

import org.apache.poi.xddf.usermodel.chart.ErrorDirection;
import org.apache.poi.xddf.usermodel.chart.XDDFErrorBars;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTErrBars;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrBarType;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrValType;

/**
 * Upright bars as long as the expanded uncertainty in both directions, from numbers in cells. POI's own class can only
 * change bars that a file already has: of new ones it takes kind and values for granted.
 */
final class UncertaintyBars extends XDDFErrorBars {

    /** @param expandedU cells with the expanded uncertainty of each value, in the unit of the value; an empty cell has no bar */
    UncertaintyBars(XDDFNumericalDataSource<Double> expandedU) {
        super(begun());
        setErrorDirection(ErrorDirection.Y);
        setPlus(expandedU);
        setMinus(expandedU);
    }

    private static CTErrBars begun() {
        CTErrBars bars = CTErrBars.Factory.newInstance();
        bars.addNewErrBarType().setVal(STErrBarType.BOTH);
        bars.addNewErrValType().setVal(STErrValType.CUST);
        return bars;
    }
}
