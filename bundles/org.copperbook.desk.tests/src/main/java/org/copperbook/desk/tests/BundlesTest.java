package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.List;
import org.eclipse.core.runtime.IExtension;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;

/** The product folder holds everything its bundles ask for, and nothing that is not a bundle. */
class BundlesTest {

    private final BundleContext framework = FrameworkUtil.getBundle(BundlesTest.class).getBundleContext();

    @Test
    void everyBundleOfTheProductResolves() {
        List<String> unresolved = Arrays.stream(framework.getBundles())
                .filter(bundle -> bundle.getState() == Bundle.INSTALLED).map(Bundle::getLocation).toList();
        assertEquals(List.of(), unresolved);
    }

    @Test
    void everyJarOfTheProductIsABundle() {
        List<String> nameless = Arrays.stream(framework.getBundles())
                .filter(bundle -> bundle.getSymbolicName() == null).map(Bundle::getLocation).toList();
        assertEquals(List.of(), nameless);
    }

    @Test
    void noBundleIsThereTwice() {
        List<String> names = Arrays.stream(framework.getBundles()).map(Bundle::getSymbolicName).sorted().toList();
        assertEquals(names.stream().distinct().toList(), names);
    }

    @Test
    void everyContributionOfOurBundlesReachesAKnownExtensionPoint() {
        var registry = Platform.getExtensionRegistry();
        List<IExtension> ours = Arrays.stream(framework.getBundles()).map(Bundle::getSymbolicName)
                .filter(name -> name.startsWith("org.copperbook."))
                .flatMap(name -> Arrays.stream(registry.getExtensions(name))).toList();
        assertFalse(ours.isEmpty());
        List<String> lost = ours.stream().map(IExtension::getExtensionPointUniqueIdentifier)
                .filter(point -> registry.getExtensionPoint(point) == null).distinct().toList();
        assertEquals(List.of(), lost);
    }
}
