package org.copperbook.desk.picture;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.nameplate.Nameplate;

/** What stands over a printed picture: on paper nothing else tells to which job and which machine it belongs. */
public final class PictureHeading {

    private PictureHeading() {
    }

    /**
     * The lines over a picture of a job.
     *
     * @param what what of the machine it shows, for instance a winding
     * @param day  day of printing
     */
    public static List<String> of(Job job, String what, LocalDate day) {
        String plate = job.nameplate().map(PictureHeading::plate).orElse("");
        String machine = Stream.of(job.booking().map(Booking::machine).orElse(null), plate)
                .filter(s -> s != null && !s.isBlank()).collect(Collectors.joining(", "));
        String printed = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(Locale.getDefault(Locale.Category.FORMAT))
                .format(day);
        return List.of(DeskWords.text(machine.isEmpty() ? "picture.headingJob" : "picture.heading", job.number(), machine),
                DeskWords.text("picture.headingPrinted", what, printed));
    }

    private static String plate(Nameplate plate) {
        String serial = plate.serial() == null || plate.serial().isBlank() ? null
                : DeskWords.text("picture.headingSerial", plate.serial());
        return Stream.of(plate.maker(), plate.type(), serial).filter(Objects::nonNull).filter(s -> !s.isBlank())
                .collect(Collectors.joining(" "));
    }
}
