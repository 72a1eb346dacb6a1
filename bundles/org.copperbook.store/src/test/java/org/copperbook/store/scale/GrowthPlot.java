package org.copperbook.store.scale;

import java.util.List;
import java.util.Locale;

/** Medians over the number of jobs, both logarithmic, as a small picture. */
final class GrowthPlot {

    private static final int WIDTH = 720;
    private static final int HEIGHT = 400;
    private static final int LEFT = 64;
    private static final int RIGHT = 190;
    private static final int TOP = 24;
    private static final int BOTTOM = 48;
    private static final double LOWEST = 0.01;
    private static final double HIGHEST = 1000;
    private static final String[] INKS = {"#1b6ca8", "#b5541c", "#2e7d4f", "#7a3f9d", "#8a6d00", "#444444", "#b02a5b"};

    private GrowthPlot() {
    }

    static String svg(List<Timing> timings) {
        int least = timings.stream().mapToInt(Timing::jobs).min().orElse(1);
        int most = Math.max(least * 10, timings.stream().mapToInt(Timing::jobs).max().orElse(1));
        StringBuilder s = new StringBuilder(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\""
                + " viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"12\"><rect width=\"%d\" height=\"%d\""
                + " fill=\"white\"/>%n", WIDTH, HEIGHT, WIDTH, HEIGHT));
        for (double ms = LOWEST; ms <= HIGHEST * 1.01; ms *= 10) {
            double y = y(ms);
            s.append(String.format(Locale.ROOT, "<line x1=\"%d\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#ccc\"/>"
                    + "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s ms</text>%n", LEFT, WIDTH - RIGHT, y, y, LEFT - 6,
                    y + 4, ms < 1 ? String.format(Locale.ROOT, ms < 0.1 ? "%.2f" : "%.1f", ms) : Math.round(ms)));
        }
        for (int jobs : timings.stream().mapToInt(Timing::jobs).distinct().toArray()) {
            s.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%,d jobs</text>%n",
                    x(jobs, least, most), HEIGHT - BOTTOM + 20, jobs));
        }
        List<String> steps = timings.stream().map(Timing::step).distinct().toList();
        for (int i = 0; i < steps.size(); i++) {
            String step = steps.get(i);
            String ink = INKS[i % INKS.length];
            List<Timing> of = timings.stream().filter(t -> t.step().equals(step)).toList();
            line(s, of.stream().map(t -> point(t.jobs(), t.median(), least, most)).toList(), ink, "");
            line(s, of.stream().map(t -> point(t.jobs(), t.bare(), least, most)).toList(), ink,
                    " stroke-dasharray=\"3 4\"");
            int y = TOP + 14 + i * 20;
            s.append(String.format(Locale.ROOT, "<rect x=\"%d\" y=\"%d\" width=\"14\" height=\"3\" fill=\"%s\"/><text"
                    + " x=\"%d\" y=\"%d\">%s</text>%n", WIDTH - RIGHT + 12, y - 5, ink, WIDTH - RIGHT + 32, y, step));
        }
        s.append(String.format("<text x=\"%d\" y=\"%d\" fill=\"#555\">dotted: the bare query</text>%n</svg>%n",
                WIDTH - RIGHT + 12, TOP + 22 + steps.size() * 20));
        return s.toString();
    }

    private static void line(StringBuilder s, List<String> points, String ink, String dashes) {
        s.append("<polyline fill=\"none\" stroke=\"").append(ink).append("\" stroke-width=\"2\"").append(dashes)
                .append(" points=\"").append(String.join(" ", points)).append("\"/>\n");
    }

    private static String point(int jobs, double ms, int least, int most) {
        return String.format(Locale.ROOT, "%.1f,%.1f", x(jobs, least, most), y(ms));
    }

    private static double x(int jobs, int least, int most) {
        double width = WIDTH - LEFT - RIGHT - 40;
        return LEFT + 20 + width * Math.log((double) jobs / least) / Math.log((double) most / least);
    }

    private static double y(double ms) {
        double share = Math.log(Math.max(LOWEST, ms) / LOWEST) / Math.log(HIGHEST / LOWEST);
        return HEIGHT - BOTTOM - share * (HEIGHT - TOP - BOTTOM);
    }
}
