package org.copperbook.jobs.faults.machine;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Figures of machines in the library's reference files, which name their published source row by row. A simulated machine
 * is drawn between the least and the greatest published figure.
 */
final class PublishedMachines {

    private static final Path FILES = Path.of("../org.copperbook.calc/src/test/resources/reference");
    private static final Pattern CELL = Pattern.compile("(?:^|,)(?:\"((?:[^\"]|\"\")*)\"|([^,]*))");
    /** Rated power factor of generating sets, lagging (ISO 8528-3, from memory). */
    private static final double POWER_FACTOR = 0.8;

    private final DoubleSummaryStatistics saturation = new DoubleSummaryStatistics();
    private final DoubleSummaryStatistics reactance = new DoubleSummaryStatistics();
    private final DoubleSummaryStatistics exciterVolts = new DoubleSummaryStatistics();
    private final DoubleSummaryStatistics exciterRotorOhms;
    private final DoubleSummaryStatistics mainRotorOhms;
    private final double diodeVolts;

    PublishedMachines() {
        Row curve = one("examples-generator.csv", "example SG-9", "open-circuit-short-circuit");
        double[][] open = curve.points("open");
        double slope = open[0][1] / open[0][0];
        double rated = curve.number("u");
        saturation.accept(between(open, rated) * slope / rated - 1);
        Row airGap = one("examples-generator.csv", "example SG-6", "impedance-per-phase", "u-open=202");
        Row fields = one("run-up.csv", "RU-06", "short-circuit-ratio");
        double airGapAmps = fields.number("if-current") * airGap.number("u") / airGap.number("u-open");
        saturation.accept(fields.number("if-voltage") / airGapAmps - 1);
        Stream.of("examples-generator.csv", "run-up.csv").flatMap(f -> rows(f).stream())
                .flatMap(r -> Stream.of("xs-pu", "x-pu").map(n -> r.expected(n))).filter(x -> !Double.isNaN(x))
                .forEach(reactance::accept);
        rows("withstand.csv").stream().filter(r -> r.calculation().equals("withstand-exciter-ceiling"))
                .forEach(r -> exciterVolts.accept(r.number("ceiling")));
        exciterRotorOhms = band("Exciter rotor");
        mainRotorOhms = band("Main rotor");
        diodeVolts = one("rectifier.csv", "RB-08", "diode-loss").number("threshold");
    }

    private static DoubleSummaryStatistics band(String winding) {
        Row r = rows("resistance.csv").stream().filter(x -> x.cells.get(1).startsWith(winding + ", published")).findFirst()
                .orElseThrow();
        return DoubleStream.of(r.number("low"), r.number("high")).summaryStatistics();
    }

    private static double drawn(Random r, DoubleSummaryStatistics published) {
        return Alternator.in(r, published.getMin(), published.getMax());
    }

    /** Field at rated no-load voltage over that of the air-gap line, less one. */
    double saturation(Random r) {
        return drawn(r, saturation);
    }

    /** Field at rated load over that at no load: the induced over the terminal voltage behind the synchronous reactance. */
    double fullLoadField(Random r) {
        double x = drawn(r, reactance);
        return Math.hypot(POWER_FACTOR, Math.sqrt(1 - POWER_FACTOR * POWER_FACTOR) + x);
    }

    /** Share of the exciter armature in the resistance that its current meets: two of its leads and the main rotor. */
    double sourceDrop(Random r) {
        double armature = drawn(r, exciterRotorOhms);
        return armature / (armature + drawn(r, mainRotorOhms));
    }

    /**
     * Two diodes in series over the main field's volts at no load.
     *
     * @param ceiling volts at the exciter's ceiling over those at no load
     */
    double diodeDrop(Random r, double ceiling) {
        return 2 * diodeVolts * ceiling / drawn(r, exciterVolts);
    }

    private static double between(double[][] curve, double volts) {
        for (int i = 1; i < curve.length; i++) {
            if (curve[i][1] >= volts) {
                double part = (volts - curve[i - 1][1]) / (curve[i][1] - curve[i - 1][1]);
                return curve[i - 1][0] + part * (curve[i][0] - curve[i - 1][0]);
            }
        }
        throw new IllegalStateException("the curve ends below " + volts + " V");
    }

    private static Row one(String file, String name, String calculation, String... inputs) {
        return rows(file).stream().filter(r -> r.cells.get(0).equals(name) && r.calculation().equals(calculation)
                && Arrays.stream(inputs).allMatch(r.cells.get(3)::contains)).findFirst()
                .orElseThrow(() -> new IllegalStateException("no " + name + ", " + calculation + " in " + file));
    }

    private static List<Row> rows(String file) {
        try (Stream<String> lines = Files.lines(FILES.resolve(file), StandardCharsets.UTF_8)) {
            return lines.skip(1).filter(l -> !l.isBlank()).map(Row::of).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A row: case, quantity, calculation, inputs, expected ... */
    private record Row(List<String> cells) {

        private static Row of(String line) {
            List<String> cells = new ArrayList<>();
            Matcher m = CELL.matcher(line);
            while (m.find()) {
                cells.add(m.group(1) != null ? m.group(1).replace("\"\"", "\"") : m.group(2));
            }
            return new Row(cells);
        }

        private String calculation() {
            return cells.get(2);
        }

        private double number(String input) {
            return Double.parseDouble(text(3, input).split(" ")[0]);
        }

        /** NaN where the row states none. */
        private double expected(String name) {
            String text = text(4, name);
            return text.isEmpty() ? Double.NaN : Double.parseDouble(text.split(" ")[0]);
        }

        private double[][] points(String input) {
            return Arrays.stream(text(3, input).split("; ")).map(p -> Arrays.stream(p.split(":"))
                    .mapToDouble(Double::parseDouble).toArray()).toArray(double[][]::new);
        }

        private String text(int cell, String name) {
            return Arrays.stream(cells.get(cell).split(" \\| ")).filter(p -> p.startsWith(name + "="))
                    .map(p -> p.substring(name.length() + 1)).findFirst().orElse("");
        }
    }
}
