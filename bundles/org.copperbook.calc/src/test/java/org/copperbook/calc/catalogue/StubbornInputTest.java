package org.copperbook.calc.catalogue;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever is typed, a calculation answers with finite numbers or with an explained refusal; never with a crash, and never
 * with a number that is none.
 */
class StubbornInputTest {

    private static final Catalogue CATALOGUE = Catalogue.standard();
    private static final int ROUNDS = 120;

    private static final List<String> NUMBERS = List.of("0", "1", "-1", "20", "0.5", "1e-12", "1e12", "1e308", "-1e308",
            "75", "400", "1500", "3", "100", "0.001", "OL", "50", "1e-300", "5 %", "kg", "", "1,234", "--3");
    private static final List<String> WHOLES = List.of("0", "1", "2", "3", "4", "6", "12", "24", "36", "-4", "7",
            "2147483647", "x", "1.5");
    private static final List<String> TEXTS = List.of("", "AWG 18", "18SWG", "1.0mm", "0.42 mohm", "3 x 1.0mm", "V", "x=y",
            ";;", "1-6x10, -7-12x10", "EUR", "XTS", "1.0mm=12; 0.9mm=3", "14.35", "complaint=no-output", "\u2603");

    static Stream<String> names() {
        return CATALOGUE.all().stream().map(Calculation::name);
    }

    @ParameterizedTest
    @MethodSource("names")
    void answersOrRefuses(String name) {
        Calculation calculation = CATALOGUE.find(name).orElseThrow();
        Random random = new Random(name.hashCode());
        for (int round = 0; round < ROUNDS; round++) {
            Map<String, String> inputs = inputs(calculation, random);
            try {
                Evaluation e = CATALOGUE.evaluate(name, inputs);
                e.values().forEach((key, value) -> {
                    if (value instanceof Double d && !Double.isFinite(d)) {
                        fail(name + " " + inputs + " gives " + key + " = " + d);
                    }
                });
            } catch (InputProblem | OutOfRange expected) {
                if (expected.getMessage().isBlank()) {
                    fail(name + " refuses without a reason");
                }
            } catch (RuntimeException e) {
                fail(name + " " + inputs + " crashes", e);
            }
        }
    }

    private static Map<String, String> inputs(Calculation calculation, Random random) {
        Map<String, String> inputs = new HashMap<>();
        boolean sane = random.nextBoolean();
        for (Input input : calculation.inputs()) {
            if (!input.required() && random.nextBoolean()) {
                continue;
            }
            inputs.put(input.name(), text(input.type(), random, sane));
        }
        return inputs;
    }

    private static String text(InputType type, Random random, boolean sane) {
        if (type instanceof InputType.Number) {
            return number(random, sane);
        }
        if (type instanceof InputType.Numbers) {
            return list(random, sane, 1 + random.nextInt(4), "");
        }
        if (type instanceof InputType.Points) {
            return list(random, sane, 1 + random.nextInt(5), ":");
        }
        if (type instanceof InputType.Whole) {
            return pick(WHOLES, random);
        }
        if (type instanceof InputType.Choice c) {
            return random.nextInt(20) == 0 ? "none of them" : pick(c.options(), random);
        }
        if (type instanceof InputType.Flag) {
            return pick(List.of("yes", "no"), random);
        }
        return pick(TEXTS, random);
    }

    private static String number(Random random, boolean sane) {
        return sane ? Double.toString(Math.round(random.nextDouble() * 1000) / 10.0) : pick(NUMBERS, random);
    }

    private static String list(Random random, boolean sane, int count, String joint) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            parts.add(joint.isEmpty() ? number(random, sane) : number(random, sane) + joint + number(random, sane));
        }
        return String.join("; ", parts);
    }

    private static String pick(List<String> from, Random random) {
        return from.get(random.nextInt(from.size()));
    }
}
