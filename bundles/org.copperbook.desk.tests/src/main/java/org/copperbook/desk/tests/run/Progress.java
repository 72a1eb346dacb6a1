package org.copperbook.desk.tests.run;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;

/** One line per test as it ends, so that a run that hangs shows after which test; and at once why a test failed. */
final class Progress implements TestExecutionListener {

    private static final int LINES_OF_A_REASON = 20;

    private final Map<String, Long> began = new HashMap<>();

    @Override
    public void executionStarted(TestIdentifier test) {
        began.put(test.getUniqueId(), System.nanoTime());
    }

    @Override
    public void executionSkipped(TestIdentifier test, String reason) {
        System.out.printf("SKIPPED    %s: %s%n", name(test), reason);
    }

    @Override
    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
        boolean passed = result.getStatus() == TestExecutionResult.Status.SUCCESSFUL;
        if (test.isTest() || !passed) {
            double seconds = (System.nanoTime() - began.get(test.getUniqueId())) / 1e9;
            System.out.printf(Locale.ROOT, "%-10s %s (%.2f s)%n", passed ? "passed" : result.getStatus(), name(test),
                    seconds);
        }
        if (!passed) {
            result.getThrowable().map(Throwable::toString).orElse("not said").lines().limit(LINES_OF_A_REASON)
                    .forEach(line -> System.out.println("because    " + line));
        }
    }

    static String name(TestIdentifier test) {
        return test.getSource()
                .filter(MethodSource.class::isInstance).map(MethodSource.class::cast)
                .map(method -> method.getClassName().substring(method.getClassName().lastIndexOf('.') + 1) + "."
                        + method.getMethodName() + (test.getDisplayName().startsWith("[") ? test.getDisplayName() : ""))
                .orElse(test.getDisplayName());
    }
}
