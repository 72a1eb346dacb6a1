package org.copperbook.desk.tests.run;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;

/** One line per test as it ends, so that a run that hangs shows after which test. */
final class Progress implements TestExecutionListener {

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
    }

    static String name(TestIdentifier test) {
        return test.getSource()
                .filter(MethodSource.class::isInstance).map(MethodSource.class::cast)
                .map(method -> method.getClassName().substring(method.getClassName().lastIndexOf('.') + 1) + "."
                        + method.getMethodName() + (test.getDisplayName().startsWith("[") ? test.getDisplayName() : ""))
                .orElse(test.getDisplayName());
    }
}
