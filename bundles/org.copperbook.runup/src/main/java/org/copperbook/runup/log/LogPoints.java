package org.copperbook.runup.log;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.ThreeVolts;
import org.copperbook.jobs.runup.LogFile;
import org.copperbook.jobs.runup.LogQuantity;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.sheets.log.LogMapping;
import org.copperbook.sheets.log.LogProblem;
import org.copperbook.sheets.log.LogReport;
import org.copperbook.sheets.log.SteadyPoint;
import org.copperbook.sheets.log.SteadyRule;

/** Turns what was chosen of a log into rows of the record, each of which says from which rows of which file it comes. */
final class LogPoints {

    private final ObjectMapper mapper;
    private final String file;
    private final LogReport report;

    LogPoints(ObjectMapper mapper, String file, LogReport report) {
        this.mapper = mapper;
        this.file = file;
        this.report = report;
    }

    /** A run-up point out of a steady stretch. */
    ObjectNode point(SteadyPoint p, RunPoint.Kind kind, RunPoint.Source source, String by, String cautionsBy, String from) {
        Map<LogQuantity, Double> m = p.means();
        ThreeVolts volts = new ThreeVolts(observed(m, LogQuantity.VOLTS_UV), observed(m, LogQuantity.VOLTS_VW),
                observed(m, LogQuantity.VOLTS_WU), null);
        boolean none = volts.values().isEmpty();
        return mapper.valueToTree(new RunPoint(kind, source, rounded(m.get(LogQuantity.SPEED)),
                rounded(m.get(LogQuantity.FREQUENCY)), rounded(m.get(LogQuantity.EXCITER_VOLTS)),
                rounded(m.get(LogQuantity.EXCITER_AMPS)), null, none ? null : volts, null,
                rounded(m.get(LogQuantity.LOAD_WATTS)), rounded(m.get(LogQuantity.LOAD_VARS)),
                rounded(m.get(LogQuantity.LINE_AMPS)), null, by, cautionsBy, null, from, null));
    }

    /** Bearing temperatures out of a log: minutes from its first row. */
    ObjectNode temperature(SteadyPoint p) {
        Map<LogQuantity, Double> m = p.means();
        return mapper.valueToTree(new RunUp.BearingTemperature(rounded((p.begins() + p.seconds()) / 60),
                rounded(m.get(LogQuantity.DRIVE_END_CELSIUS)), rounded(m.get(LogQuantity.OTHER_END_CELSIUS)),
                rounded(m.get(LogQuantity.AIR_CELSIUS)), null));
    }

    /** The file itself, with what was wrong in it and a thinned trace. */
    ObjectNode file(LogMapping mapping, SteadyRule rule, String kept, int points, String by, Instant at) {
        List<LogFile.Trace> traces = new ArrayList<>();
        report.lows().forEach((q, lows) -> traces.add(new LogFile.Trace(q, list(lows), list(report.highs().get(q)), null)));
        traces.sort(java.util.Comparator.comparing(LogFile.Trace::quantity));
        List<String> columns = mapping.columns().stream().filter(c -> c.quantity() != null)
                .map(c -> c.title() + " = " + c.quantity().name() + " (" + c.unit() + ")").toList();
        return mapper.valueToTree(new LogFile(file, report.hash(), kept, report.bytes(), report.rows(), report.used(),
                report.begins(), report.seconds(), columns, report.problems().stream().map(LogProblem::text).toList(),
                rule.words(), points, traces, by, at, null));
    }

    /** Adds rows to a list of the record. */
    static void add(ObjectNode tree, String list, List<ObjectNode> rows) {
        ArrayNode all = tree.path(list).isArray() ? (ArrayNode) tree.get(list) : tree.putArray(list);
        rows.forEach(all::add);
    }

    private static Observed observed(Map<LogQuantity, Double> m, LogQuantity q) {
        return m.get(q) == null ? null : Observed.of(rounded(m.get(q)));
    }

    /** Six digits: no logger shows more, and a record is read by people. */
    private static Double rounded(Double v) {
        return v == null ? null : new java.math.BigDecimal(v).round(new java.math.MathContext(6)).doubleValue();
    }

    private static List<Double> list(double[] values) {
        List<Double> list = new ArrayList<>();
        for (double v : values) {
            list.add(Double.isNaN(v) ? null : rounded(v));
        }
        return list;
    }
}
