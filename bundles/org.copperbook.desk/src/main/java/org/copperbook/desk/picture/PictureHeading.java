package org.copperbook.desk.picture;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.nameplate.Nameplate;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** What stands over a printed picture: on paper nothing else tells to which job and which machine it belongs. */
public final class PictureHeading {

    private static final String KEY = "org.copperbook.jobOnPage";

    private PictureHeading() {
    }

    /** Tells all pictures on a page whose they are. */
    public static void onPage(Composite page, Supplier<Job> job) {
        page.setData(KEY, job);
    }

    /** The lines over a picture of the page that a control stands on; none where it stands on no page of a job. */
    static List<String> around(Control control, String what, LocalDate day) {
        for (Composite up = control.getParent(); up != null; up = up.getParent()) {
            if (up.getData(KEY) instanceof Supplier<?> job && job.get() instanceof Job it) {
                return of(it, what, day);
            }
        }
        return List.of();
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
        String printed = Days.ofLocale().day(day);
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
