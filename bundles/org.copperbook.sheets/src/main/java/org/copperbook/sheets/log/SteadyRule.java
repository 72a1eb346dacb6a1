package org.copperbook.sheets.log;

/**
 * When a machine is steady enough for its readings to make a point.
 *
 * @param seconds least duration, s
 * @param band    half width of the band around the mean, fraction, in which every steady column must stay
 * @param minutes distance of the temperatures taken, min
 */
public record SteadyRule(double seconds, double band, double minutes) {

    /** Ten seconds within half a per cent of the mean; temperatures every five minutes. Common practice, no source. */
    public static final SteadyRule USUAL = new SteadyRule(10, 0.005, 5);

    public SteadyRule {
        if (!(seconds > 0) || !(band > 0 && band < 0.5) || !(minutes > 0)) {
            throw new IllegalArgumentException("a rule needs a duration, a band below one half and a distance");
        }
    }

    /** The rule in words, for the record. */
    public String words() {
        return LogWords.say("rule", seconds, band * 100, minutes);
    }
}
