package org.copperbook.jobs.nameplate;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.copperbook.calc.insulation.ThermalClass;
import org.copperbook.jobs.nameplate.Nameplate.Rating;
import org.copperbook.jobs.nameplate.PlateCrossCheck.Contradiction;
import org.copperbook.jobs.nameplate.PlateCrossCheck.Figure;
import org.copperbook.jobs.nameplate.PlateCrossCheck.What;

/**
 * What a plate says besides its ratings: year, duty, class, overspeed, excitation.
 *
 * @param plate    the plate
 * @param ratings  its ratings without figures that cannot be
 * @param possible names what cannot be
 * @param found    where contradictions go
 */
record WholePlate(Nameplate plate, List<Rating> ratings, PossibleFigures possible, List<Contradiction> found) {

    /** Excitation seldom takes a larger share of the rating, even on small machines; common practice, no source. */
    static final double MOST_EXCITATION_PERCENT = 10;

    /** A rise in kelvin, which is above zero: "80", "80 K (P)". */
    private static final Pattern KELVIN = Pattern.compile("(?<![-\u2212\\d.,])0*[1-9]\\d*");

    void look(int thisYear) {
        if (plate.poles() != null && plate.poles() % 2 != 0) {
            add(What.ODD_POLES, plate.poles());
        }
        words(What.THERMAL_CLASS, plate.thermalClass(), ThermalClass::isNamedIn);
        words(What.RISE_LIMIT, plate.riseLimit(), w -> ThermalClass.isNamedIn(w) || KELVIN.matcher(w).find());
        words(What.DUTY, plate.duty(), DutyWords::nameADuty);
        year(thisYear);
        overspeed();
        ambient();
        excitation();
        possible.aboveZero(Figure.ROTOR_VOLTS, plate.rotorV());
        possible.aboveZero(Figure.ROTOR_AMPS, plate.rotorA());
        possible.aboveZero(Figure.MASS, plate.massKg());
        possible.aboveZero(Figure.SHAFT_HEIGHT, plate.shaftHeightMm());
        possible.aboveZero(Figure.INERTIA, plate.inertiaKgM2());
    }

    private void add(What what, Object... arguments) {
        found.add(new Contradiction(what, 0, List.of(arguments)));
    }

    private void words(What what, String stated, Predicate<String> understood) {
        if (stated != null && !stated.isBlank() && !understood.test(stated)) {
            add(what, stated.strip());
        }
    }

    /** Next year's machines are sold with next year on the plate. */
    private void year(int thisYear) {
        Integer year = plate.year();
        if (year != null && (year < PlateCrossCheck.FIRST_YEAR || year > thisYear + 1)) {
            add(What.YEAR, Integer.toString(year), Integer.toString(PlateCrossCheck.FIRST_YEAR), Integer.toString(thisYear + 1));
        }
    }

    private void ambient() {
        Double least = plate.minAmbientCelsius();
        Double most = plate.ambientCelsius();
        if (least != null && most != null && least >= most) {
            add(What.AMBIENT, least, most);
        }
    }

    /** Overspeed is what the rotor stands above its highest rated speed (IEC 60034-1, overspeed). */
    private void overspeed() {
        Double overspeed = possible.aboveZero(Figure.OVERSPEED, plate.overspeedRpm());
        ratings.stream().map(Rating::speedRpm).filter(Objects::nonNull).max(Double::compare)
                .filter(rated -> overspeed != null && overspeed < rated).ifPresent(rated -> add(What.OVERSPEED, overspeed, rated));
    }

    private void excitation() {
        Optional<Double> exciter = watts(possible.aboveZero(Figure.EXCITER_VOLTS, plate.excitationV()),
                possible.aboveZero(Figure.EXCITER_AMPS, plate.excitationA()));
        Optional<Double> field = watts(possible.aboveZero(Figure.MAIN_FIELD_VOLTS, plate.mainFieldV()),
                possible.aboveZero(Figure.MAIN_FIELD_AMPS, plate.mainFieldA()));
        exciter.ifPresent(w -> share(What.EXCITER_POWER, w));
        field.ifPresent(w -> share(What.MAIN_FIELD_POWER, w));
        // A brushless exciter amplifies: its field takes a small part of what it gives to the main field.
        exciter.filter(e -> field.isPresent() && e > field.get()).ifPresent(e -> add(What.EXCITER_ABOVE_MAIN_FIELD,
                e / PlateCrossCheck.KILO, field.get() / PlateCrossCheck.KILO));
    }

    private static Optional<Double> watts(Double volts, Double amps) {
        return volts == null || amps == null ? Optional.empty() : Optional.of(volts * amps);
    }

    private void share(What what, double watts) {
        ratings.stream().flatMap(r -> Stream.of(Optional.ofNullable(r.apparentPowerVA()), Optional.ofNullable(r.powerW())))
                .flatMap(Optional::stream).max(Double::compare).map(rated -> 100 * watts / rated)
                .filter(percent -> percent > MOST_EXCITATION_PERCENT)
                .ifPresent(percent -> add(what, watts / PlateCrossCheck.KILO, percent));
    }
}
