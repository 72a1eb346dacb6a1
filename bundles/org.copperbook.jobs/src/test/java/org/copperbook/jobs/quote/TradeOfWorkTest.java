package org.copperbook.jobs.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.inspection.Finding;
import org.copperbook.jobs.shop.LabourRates;
import org.junit.jupiter.api.Test;

class TradeOfWorkTest {

    private static Optional<String> trade(String where, String work, String... trades) {
        List<LabourRates.Rate> rates = Arrays.stream(trades).map(t -> new LabourRates.Rate(t, BigDecimal.TEN, null, null, Map.of())).toList();
        return TradeOfWork.of(new Finding(where, Finding.Severity.MUST_BE_DONE, "found", work, List.of(), Map.of()),
                new LabourRates(LabourRates.SCHEMA, rates, Map.of()));
    }

    private static Optional<String> usual(String where, String work) {
        return trade(where, work, "Winder", "winder", "fitter", "tester");
    }

    @Test
    void windingsAreTheWindersBearingsTheFittersAndTestsTheTesters() {
        assertEquals(Optional.of("Winder"), usual("main-stator", "rewind the main stator"));
        assertEquals(Optional.of("fitter"), usual("drive-end bearing", "sleeve the seat, new one"));
        assertEquals(Optional.of("fitter"), usual("frame", "straighten the shaft"));
        assertEquals(Optional.of("tester"), usual(null, "measure all again"));
    }

    @Test
    void theWorkGoesBeforeThePlaceAndThePlaceSaysWhereTheWorkDoesNot() {
        assertEquals(Optional.of("tester"), usual("exciter-stator", "flash the field"));
        assertEquals(Optional.of("fitter"), usual("main-rotor", "change the bearing"));
        assertEquals(Optional.of("Winder"), usual("main-rotor", "dry with the other"));
        assertEquals(Optional.of("Winder"), usual("winding", "new bearing and rewind"), "the work is of two trades");
        assertEquals(Optional.of("fitter"), usual("rotor shaft", "straighten"), "the shaft of a wound part is no winding");
    }

    @Test
    void thereIsNoneWhereTheWordsDoNotSayOrNoTradeOrMoreThanOneFits() {
        assertEquals(Optional.empty(), usual("rectifier", "change the complete set"));
        assertEquals(Optional.empty(), usual(null, "clean the window of the terminal box"));
        assertEquals(Optional.empty(), trade("main-stator", "rewind", "fitter", "tester"));
        assertEquals(Optional.empty(), trade("main-stator", "rewind", "winder", "second winder"));
        assertEquals(Optional.empty(), trade("main-stator", "rewind"));
    }

    @Test
    void tradesAndFindingsMayBeInTheOtherLanguageThatShips() {
        assertEquals(Optional.of("Wickler"), trade("Ständer", "neu wickeln", "Wickler", "Schlosser", "Prüffeld"));
        assertEquals(Optional.of("Schlosser"), trade(null, "Lager wechseln", "Wickler", "Schlosser", "Prüffeld"));
        assertEquals(Optional.of("Prüffeld"), trade(null, "Isolation messen", "Wickler", "Schlosser", "Prüffeld"));
    }
}
