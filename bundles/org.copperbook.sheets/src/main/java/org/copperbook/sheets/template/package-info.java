/**
 * Quotes in a workbook of the workshop's own: named cells are filled, everything else is left as it is.
 *
 * <p>Cells are found by names defined in the workbook, letter case does not matter. Texts and numbers of the quote:
 * {@code customer contact order_number machine rating_plate job_number quote_number revision date valid_until currency terms
 * exclusions workshop workshop_address fingerprint}. Of the alternative shown (the one agreed, else the first), and with
 * {@code _1}, {@code _2} ... behind them of each: {@code alternative note total_before_discount total_discount total_net
 * total_tax total_gross}. Lines: {@code lines} names cells of one row, which is repeated for every line; in that row
 * {@code line_number line_kind line_text line_trade line_quantity line_unit line_price line_discount line_tax line_amount}.
 * Other cells of the row are repeated with their formulas. A sum below that is to reach over all lines has to reach one
 * row further than the named one. Cost, mark-up and margin have no names.
 */
package org.copperbook.sheets.template;
