package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.editor.OutlineRow;
import org.copperbook.desk.page.PageRegistry;
import org.copperbook.desk.tests.run.OwnStart;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKind;
import org.copperbook.store.RegisterQuery;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;

/**
 * A plug-in taken out takes its pages along and nothing else. The workbench keeps the views of a plug-in as they were when
 * it started, and cannot make one again after the plug-in has been away; so no other test shares this start.
 */
@OwnStart
class WithoutAPluginTest {

    private static final String RECTIFIER = "org.copperbook.rectifier";

    private final Desktop desktop = new Desktop();
    private final BundleContext framework = FrameworkUtil.getBundle(WithoutAPluginTest.class).getBundleContext();

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void aJobOpensWithoutThePagesOfAPluginThatIsNotThere() throws Exception {
        desktop.beSomebody();
        String number = desktop.session().store().register(RegisterQuery.first(50)).rows().stream()
                .filter(r -> !r.voided() && desktop.session().store().load(r.jobId()).rectifier().isPresent())
                .findFirst().orElseThrow().number();
        List<PartKind> before = kinds(number);
        assertTrue(before.contains(PartKind.RECTIFIER));
        Bundle plugin = Arrays.stream(framework.getBundles()).filter(b -> RECTIFIER.equals(b.getSymbolicName()))
                .findFirst().orElseThrow();
        String location = "reference:" + FileLocator.getBundleFileLocation(plugin).orElseThrow().toURI();
        plugin.uninstall();
        try (ErrorLog log = new ErrorLog()) {
            desktop.until("the registry has let go of the plug-in", () -> !contributed());
            List<PartKind> without = kinds(number);
            assertFalse(without.contains(PartKind.RECTIFIER));
            assertEquals(before.stream().filter(k -> k != PartKind.RECTIFIER).toList(), without);
            assertTrue(desktop.session().store().load(desktop.session().store().idOf(number).orElseThrow()).rectifier()
                    .isPresent(), "what was recorded stays");
            assertEquals(List.of(), log.errors());
        } finally {
            framework.installBundle(location).start(Bundle.START_ACTIVATION_POLICY);
        }
        desktop.until("the plug-in is back", WithoutAPluginTest::contributed);
        assertEquals(before, kinds(number));
    }

    private List<PartKind> kinds(String number) throws Exception {
        JobEditor editor = desktop.open(number);
        List<PartKind> kinds = editor.outline().stream().filter(OutlineRow.Page.class::isInstance)
                .map(r -> ((OutlineRow.Page) r).key()).peek(key -> {
                    assertTrue(editor.show(key));
                    desktop.work();
                    assertTrue(editor.page().isPresent(), key.toString());
                }).map(key -> key.kind()).distinct().toList();
        desktop.closeAll();
        return kinds;
    }

    private static boolean contributed() {
        return PageRegistry.read(Platform.getExtensionRegistry()).stream().anyMatch(p -> p.kind() == PartKind.RECTIFIER);
    }
}
