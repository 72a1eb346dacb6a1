package org.copperbook.sheets.cards;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether the figures of one card can stand together. */
final class CardSense {

    private static final Pattern PAIR = Pattern.compile("(\\d+)-(\\d+)");

    private CardSense() {
    }

    static List<CardLine.Problem> problems(JsonNode winding) {
        List<CardLine.Problem> problems = new ArrayList<>();
        if (!winding.has("turnsPerCoil")) {
            problems.add(row("row.no-turns"));
        }
        int slots = winding.path("slots").asInt();
        int poles = winding.path("poles").asInt();
        if (poles % 2 == 1) {
            problems.add(row("row.odd-poles", poles));
        }
        if (slots > 0) {
            Matcher m = PAIR.matcher(winding.path("span").asText(""));
            while (m.find()) {
                if (Integer.parseInt(m.group(1)) > slots || Integer.parseInt(m.group(2)) > slots) {
                    problems.add(row("row.span-outside", m.group(), slots));
                    break;
                }
            }
        }
        double bore = winding.path("boreM").asDouble();
        double outside = winding.path("outsideM").asDouble();
        if (bore > 0 && outside > 0 && outside <= bore) {
            problems.add(row("row.outside", mm(outside), mm(bore)));
        }
        return problems;
    }

    private static String mm(double metres) {
        return String.format(java.util.Locale.getDefault(), "%.1f", metres * 1000);
    }

    private static CardLine.Problem row(String key, Object... args) {
        return new CardLine.Problem("", "", CardWords.say(key, args));
    }
}
