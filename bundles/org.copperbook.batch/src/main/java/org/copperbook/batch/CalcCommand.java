package org.copperbook.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.Catalogue;
import org.copperbook.calc.catalogue.Evaluation;
import org.copperbook.calc.catalogue.Input;
import org.copperbook.calc.catalogue.InputProblem;
import org.copperbook.calc.catalogue.Output;
import org.copperbook.calc.quantity.DecimalMark;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Does one calculation of the library, or a file of them. */
@Command(name = "calc", mixinStandardHelpOptions = true)
final class CalcCommand implements Callable<Integer> {

    private static final int SHOWN_DIGITS = 6;
    private static final int LONGEST_LINE = 1_000_000;

    private final BatchContext context;
    private final Catalogue catalogue = Catalogue.standard();

    @Spec
    private CommandSpec spec;

    @Option(names = "--list", descriptionKey = "calc.list")
    private boolean list;

    @Option(names = "--from", paramLabel = "FILE", descriptionKey = "calc.from")
    private Path from;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    @Option(names = "--decimal-comma", descriptionKey = "calc.decimal-comma")
    private boolean decimalComma;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", descriptionKey = "calc.name")
    private String name;

    @Parameters(index = "1..*", paramLabel = "KEY=VALUE", descriptionKey = "calc.value")
    private List<String> values = List.of();

    CalcCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        int asked = (list ? 1 : 0) + (from != null ? 1 : 0) + (name != null ? 1 : 0);
        if (asked != 1 && !(list && name != null && from == null && values.isEmpty())) {
            throw new ParameterException(spec.commandLine(), BatchText.of("calc.one-of"));
        }
        if (list) {
            list();
            return ExitCode.DONE;
        }
        return from != null ? fromFile() : one();
    }

    private void list() {
        if (name != null && catalogue.find(name).isEmpty()) {
            throw new BadUse(BatchText.of("calc.unknown", name));
        }
        List<Calculation> shown = catalogue.all().stream().filter(c -> name == null || c.name().equals(name)).toList();
        if (json) {
            CommonOptions.print(context, Map.of("calculations", shown.stream().map(CalcCommand::described).toList()));
            return;
        }
        for (Calculation c : shown) {
            context.out().println(BatchText.of("calc.head", c.name(), c.title(), c.area()));
            for (Input i : c.inputs()) {
                context.out().println(BatchText.of(i.required() ? "calc.input" : "calc.input-optional", i.name(), i.doc(),
                        i.defaultText() == null ? "" : BatchText.of("calc.default", i.defaultText())));
            }
            for (Output o : c.outputs()) {
                context.out().println(BatchText.of("calc.output", o.name(), o.doc(), o.unit() == null ? "" : o.unit()));
            }
            context.out().println(BatchText.of("calc.source", c.formula(), c.source()));
        }
    }

    private int one() {
        Map<String, String> inputs = new LinkedHashMap<>();
        for (String v : values) {
            int equals = v.indexOf('=');
            if (equals < 1) {
                throw new BadUse(BatchText.of("calc.not-key-value", v));
            }
            if (inputs.put(v.substring(0, equals).strip(), v.substring(equals + 1)) != null) {
                throw new BadUse(BatchText.of("calc.twice", v.substring(0, equals)));
            }
        }
        Evaluation done;
        try {
            done = catalogue.evaluate(name, inputs, mark());
        } catch (InputProblem | OutOfRange e) {
            throw new BadUse(BatchText.of("calc.refused", name, e.getMessage()));
        }
        if (json) {
            CommonOptions.print(context, result(done));
            return ExitCode.DONE;
        }
        for (String key : done.values().keySet()) {
            context.out().println(key + " = " + done.text(key, SHOWN_DIGITS, mark()));
        }
        done.warnings().forEach(w -> context.err().println(OneLine.of(BatchText.of("calc.warning", w))));
        return ExitCode.DONE;
    }

    /** One case a line, one result a line; a bad case gets its error in its own line and the others go on. */
    private int fromFile() {
        if (!Files.isRegularFile(from)) {
            throw new BadUse(BatchText.of("file.missing", from));
        }
        boolean allGood = true;
        int number = 0;
        try (BufferedReader lines = Files.newBufferedReader(from)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                if (line.isBlank()) {
                    continue;
                }
                ObjectNode answer = answer(line);
                answer.put("line", number);
                allGood &= !answer.has("error");
                context.out().println(answer);
            }
        } catch (CharacterCodingException e) {
            throw new BadUse(BatchText.of("file.not-utf8", from, number + 1));
        } catch (IOException e) {
            throw new BadUse(BatchText.of("file.unreadable", from, e.getMessage()));
        }
        if (!allGood) {
            throw new BadUse(BatchText.of("calc.some-refused", from));
        }
        return ExitCode.DONE;
    }

    private ObjectNode answer(String line) {
        ObjectNode answer = context.json().mapper().createObjectNode();
        try {
            JsonNode asked = line.length() > LONGEST_LINE ? null : context.json().mapper().readTree(line);
            if (asked == null || !asked.path("name").isTextual() || !asked.path("inputs").isObject()) {
                return answer.put("error", BatchText.of("calc.case-shape"));
            }
            answer.put("name", asked.path("name").asText());
            Map<String, String> inputs = new LinkedHashMap<>();
            asked.path("inputs").properties().forEach(e -> inputs.put(e.getKey(), e.getValue().asText()));
            Evaluation done = catalogue.evaluate(asked.path("name").asText(), inputs, mark());
            answer.setAll((ObjectNode) context.json().mapper().valueToTree(result(done)));
        } catch (JsonProcessingException e) {
            answer.put("error", OneLine.of(e.getOriginalMessage()));
        } catch (InputProblem | OutOfRange e) {
            answer.put("error", OneLine.of(e.getMessage()));
        }
        return answer;
    }

    private DecimalMark mark() {
        return decimalComma ? DecimalMark.COMMA : DecimalMark.DOT;
    }

    private static Map<String, Object> result(Evaluation done) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("name", done.calculation().name());
        document.put("values", done.values());
        Map<String, String> texts = new LinkedHashMap<>();
        done.values().keySet().forEach(k -> texts.put(k, done.text(k, SHOWN_DIGITS, DecimalMark.DOT)));
        document.put("texts", texts);
        document.put("warnings", done.warnings());
        document.put("source", done.calculation().source());
        return document;
    }

    private static Map<String, Object> described(Calculation c) {
        Map<String, Object> d = new LinkedHashMap<>();
        d.put("name", c.name());
        d.put("area", c.area());
        d.put("title", c.title());
        d.put("inputs", c.inputs().stream().map(i -> {
            Map<String, Object> m = new LinkedHashMap<>();
            m.put("name", i.name());
            m.put("required", i.required());
            m.put("default", i.defaultText());
            m.put("doc", i.doc());
            return m;
        }).toList());
        d.put("outputs", c.outputs().stream().map(o -> {
            Map<String, Object> m = new LinkedHashMap<>();
            m.put("name", o.name());
            m.put("unit", o.unit());
            m.put("doc", o.doc());
            return m;
        }).toList());
        d.put("formula", c.formula());
        d.put("source", c.source());
        return d;
    }
}
