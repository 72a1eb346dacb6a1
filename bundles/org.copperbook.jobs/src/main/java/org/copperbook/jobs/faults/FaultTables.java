package org.copperbook.jobs.faults;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.faults.FaultKnowledge;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * How likely each finding is for each part that may be at fault. The product ships a set; a workshop may keep its own in
 * its place. Likelihoods are probabilities from 0 to 1.
 *
 * @param schema    layout version
 * @param name      name of the tables
 * @param origin    where the figures come from
 * @param settledAt probability of the first suspect at which testing stops, above 0.5 and at most 1
 * @param suspects  parts that may be at fault, with their shares of all faults, which add up to 1
 * @param tests     questions and tests
 * @param practice  rows of the trade's decision table
 * @param more      fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record FaultTables(int schema, String name, String origin, Double settledAt, List<SuspectRow> suspects,
        List<TestRow> tests, List<TableRow> practice, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public FaultTables {
        suspects = suspects == null ? List.of() : List.copyOf(suspects);
        tests = tests == null ? List.of() : List.copyOf(tests);
        practice = practice == null ? List.of() : List.copyOf(practice);
        more = more == null ? Map.of() : more;
    }

    /**
     * A part that may be at fault.
     *
     * @param id      name in files
     * @param inWords name in the trade's words
     * @param share   share of all faults, above 0 and below 1
     */
    public record SuspectRow(String id, String inWords, Double share) {
    }

    /**
     * A question or test.
     *
     * @param id       name in files
     * @param minutes  working time, min, above 0
     * @param question what is asked
     * @param several  whether more than one outcome can hold at once
     * @param hazards  steps whose cautions are shown before it
     * @param cautions further cautions
     * @param outcomes what can come out; for each suspect they add up to 1
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record TestRow(String id, Double minutes, String question, Boolean several, List<Hazardous> hazards,
            List<String> cautions, List<OutcomeRow> outcomes) {
        public TestRow {
            hazards = hazards == null ? List.of() : List.copyOf(hazards);
            cautions = cautions == null ? List.of() : List.copyOf(cautions);
            outcomes = outcomes == null ? List.of() : List.copyOf(outcomes);
        }
    }

    /**
     * What can come out of a test.
     *
     * @param id          name in files
     * @param inWords     in the trade's words
     * @param likelihoods probability by suspect
     */
    public record OutcomeRow(String id, String inWords, Map<String, Double> likelihoods) {
        public OutcomeRow {
            likelihoods = likelihoods == null ? Map.of() : Map.copyOf(likelihoods);
        }
    }

    /**
     * A row of the decision table.
     *
     * @param test     test it speaks on
     * @param outcome  outcome it speaks on
     * @param unless   findings "test=outcome" that take the word from it
     * @param says     what practice makes of it
     * @param sound    parts it clears
     * @param suspects parts it leaves
     * @param checks   tests it asks for
     * @param inOrder  whether suspects and checks stand in the order in which they are taken
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record TableRow(String test, String outcome, List<String> unless, String says, List<String> sound,
            List<String> suspects, List<String> checks, Boolean inOrder) {
        public TableRow {
            unless = unless == null ? List.of() : List.copyOf(unless);
            sound = sound == null ? List.of() : List.copyOf(sound);
            suspects = suspects == null ? List.of() : List.copyOf(suspects);
            checks = checks == null ? List.of() : List.copyOf(checks);
        }
    }

    /** A workshop that keeps none of its own and works by those that ship. */
    public static FaultTables none() {
        return new FaultTables(SCHEMA, null, null, null, null, null, null, null);
    }

    /** Whether these are tables at all. */
    @JsonIgnore
    public boolean isThere() {
        return !suspects.isEmpty() || !tests.isEmpty();
    }

    /** What is wrong with the tables, each in one sentence that names the place; empty when they can be used. */
    public List<String> problems() {
        return FaultTablesCheck.problems(this);
    }

    /**
     * The tables as the finder works with them.
     *
     * @throws IllegalStateException when the tables have problems; ask {@link #problems} first
     */
    public FaultKnowledge knowledge() {
        List<String> problems = problems();
        if (!problems.isEmpty()) {
            throw new IllegalStateException(String.join(" ", problems));
        }
        return FaultTablesReading.knowledge(this);
    }

    /** The test with an id, which {@link #knowledge} knows too. */
    public TestRow test(String id) {
        return tests.stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }
}
