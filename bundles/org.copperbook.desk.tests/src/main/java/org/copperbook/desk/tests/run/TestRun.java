package org.copperbook.desk.tests.run;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.engine.JupiterTestEngine;
import org.junit.platform.engine.discovery.ClassSelector;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.launcher.Launcher;
import org.junit.platform.launcher.core.LauncherConfig;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;
import org.junit.platform.launcher.listeners.TestExecutionSummary;
import org.junit.platform.reporting.legacy.xml.LegacyXmlReportGeneratingListener;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.wiring.BundleWiring;

/**
 * Finds the test classes of this bundle (names ending in {@code Test}), runs them and writes down how they went.
 *
 * @param reports folder for the JUnit XML report and for a picture of the screen at each failure
 * @param only    simple name of the one class to run, {@code *} for all but those with a start of their own,
 *                {@code share-1-of-2} for one of so many shares of these, or the word of an {@link OwnStart.Way} for
 *                those of that way
 */
record TestRun(Path reports, String only) {

    private static final Pattern SHARE = Pattern.compile("share-(\\d+)-of-(\\d+)");

    /** @return whether at least one test ran, and none failed or was skipped */
    boolean execute() {
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        thread.setContextClassLoader(TestRun.class.getClassLoader());
        try {
            return print(runAll());
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    private TestExecutionSummary runAll() {
        var summary = new SummaryGeneratingListener();
        Launcher launcher = LauncherFactory.create(LauncherConfig.builder()
                // Service files are not seen across bundles; what is used is named.
                .enableTestEngineAutoRegistration(false)
                .enableLauncherSessionListenerAutoRegistration(false)
                .enableLauncherDiscoveryListenerAutoRegistration(false)
                .enablePostDiscoveryFilterAutoRegistration(false)
                .enableTestExecutionListenerAutoRegistration(false)
                .addTestEngines(new JupiterTestEngine())
                .addTestExecutionListeners(summary, new Progress(), new FailurePicture(reports),
                        new LegacyXmlReportGeneratingListener(reports, new PrintWriter(System.err, true)))
                .build());
        launcher.execute(LauncherDiscoveryRequestBuilder.request().selectors(testClasses()).build());
        return summary.getSummary();
    }

    private List<ClassSelector> testClasses() {
        Bundle bundle = FrameworkUtil.getBundle(TestRun.class);
        Matcher share = SHARE.matcher(only);
        boolean shared = share.matches();
        boolean together = only.isBlank() || only.equals("*") || shared;
        Optional<OwnStart.Way> way = OwnStart.Way.of(only);
        List<Class<?>> found = new ArrayList<>();
        for (String pattern : (together || way.isPresent() ? "*Test" : only).split(",")) {
            for (String resource : bundle.adapt(BundleWiring.class).listResources("org/copperbook", pattern + ".class",
                    BundleWiring.LISTRESOURCES_RECURSE | BundleWiring.LISTRESOURCES_LOCAL)) {
                String name = resource.substring(0, resource.length() - ".class".length()).replace('/', '.');
                try {
                    found.add(bundle.loadClass(name));
                } catch (ClassNotFoundException missing) {
                    throw new IllegalStateException("Listed in the bundle but not loadable: " + name, missing);
                }
            }
        }
        if (together || way.isPresent()) {
            found.removeIf(test -> !way.equals(Optional.ofNullable(test.getAnnotation(OwnStart.class))
                    .map(OwnStart::value)));
        }
        List<ClassSelector> all = found.stream().map(DiscoverySelectors::selectClass)
                .sorted(Comparator.comparing(ClassSelector::getClassName)).toList();
        return shared ? everyNth(all, Integer.parseInt(share.group(1)) - 1, Integer.parseInt(share.group(2))) : all;
    }

    private static List<ClassSelector> everyNth(List<ClassSelector> all, int first, int n) {
        return IntStream.range(0, all.size()).filter(i -> i % n == first).mapToObj(all::get).toList();
    }

    private boolean print(TestExecutionSummary summary) {
        summary.printFailuresTo(new PrintWriter(System.out, true), 30);
        long wrong = summary.getFailures().stream()
                .filter(failure -> failure.getException() instanceof AssertionError).count();
        long errors = summary.getTotalFailureCount() - wrong;
        long skipped = summary.getTestsSkippedCount() + summary.getTestsAbortedCount()
                + summary.getContainersSkippedCount() + summary.getContainersAbortedCount();
        System.out.printf(Locale.ROOT, "Window tests took %.1f s%n",
                (summary.getTimeFinished() - summary.getTimeStarted()) / 1000.0);
        System.out.printf("Tests run: %d, Failures: %d, Errors: %d, Skipped: %d%n",
                summary.getTestsFoundCount(), wrong, errors, skipped);
        System.out.printf("%d passed, %d failed%n", summary.getTestsSucceededCount(),
                summary.getTotalFailureCount() + skipped);
        if (summary.getTestsStartedCount() == 0) {
            System.out.println("No window test was found: that is a failure too.");
        }
        return summary.getTestsSucceededCount() > 0 && summary.getTotalFailureCount() == 0 && skipped == 0;
    }
}
