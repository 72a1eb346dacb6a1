package org.copperbook.jobs.quote;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.copperbook.jobs.inspection.Finding;
import org.copperbook.jobs.shop.LabourRates;

/**
 * Which trade of the shop does the work that a finding proposes, by the words of the finding in the languages that ship.
 * Common practice, no source; the trades are those that the shop has rates for, so nothing comes of it where none fits.
 */
public final class TradeOfWork {

    private enum Field {
        WINDING("\\b(re-?)?w(ind(ings?)?|ound)\\b|\\bcoil|varnish|insulat|impregnat|wedge|wickel|wickl|spule|isolier|tr\u00e4nk",
                "wind(er|ing)|wickl"),
        FITTING("bearing|shaft|journal|coupling|keyway|end ?shield|\\bfan\\b|lager|welle\\b|kupplung|l\u00fcfter",
                "fitter|mechanic|machinist|schlosser|mechanik"),
        TESTING("\\btest|\\bmeasur|\\bflash|pr\u00fcf|\\bmess", "test|pr\u00fcf");

        private final Pattern work;
        private final Pattern trade;

        Field(String work, String trade) {
            this.work = words(work);
            this.trade = words(trade);
        }
    }

    private static final Pattern WOUND = words("stator|rotor|armature|exciter|anker|l\u00e4ufer|st\u00e4nder|erreger");

    private TradeOfWork() {
    }

    private static Pattern words(String any) {
        return Pattern.compile(any, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** The trade; nothing where the words do not say which, or where no trade or more than one fits. */
    public static Optional<String> of(Finding finding, LabourRates rates) {
        return field(finding).flatMap(field -> {
            List<String> fitting = ProposedLines.trades(rates).stream().filter(t -> field.trade.matcher(t).find()).toList();
            return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
        });
    }

    /** The work goes before the place, since a winding is flashed and a shaft is measured; a wound part is wound if nothing else. */
    private static Optional<Field> field(Finding finding) {
        Optional<Field> byWork = only(named(finding.proposedWork()));
        if (byWork.isPresent()) {
            return byWork;
        }
        Set<Field> byPlace = named(finding.where());
        return byPlace.isEmpty() && finding.where() != null && WOUND.matcher(finding.where()).find() ? Optional.of(Field.WINDING)
                : only(byPlace);
    }

    private static Optional<Field> only(Set<Field> fields) {
        return fields.size() == 1 ? Optional.of(fields.iterator().next()) : Optional.empty();
    }

    private static Set<Field> named(String text) {
        Set<Field> fields = EnumSet.noneOf(Field.class);
        for (Field f : Field.values()) {
            if (text != null && f.work.matcher(text).find()) {
                fields.add(f);
            }
        }
        return fields;
    }
}
