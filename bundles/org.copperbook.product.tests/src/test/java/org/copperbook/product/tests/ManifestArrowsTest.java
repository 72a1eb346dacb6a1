package org.copperbook.product.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import org.eclipse.osgi.util.ManifestElement;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;

/**
 * What the bundles declare to the framework follows the same arrows as their classes: a bundle taken away must take
 * nothing below it along.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ManifestArrowsTest {

    private final Map<String, Attributes> manifests = new HashMap<>();

    @BeforeAll
    void readAllManifests() throws IOException, BundleException {
        for (URL url : Collections.list(ManifestArrowsTest.class.getClassLoader().getResources(
                "META-INF/MANIFEST.MF"))) {
            try (InputStream in = url.openStream()) {
                Attributes attributes = new Manifest(in).getMainAttributes();
                values(attributes, Constants.BUNDLE_SYMBOLICNAME).forEach(name -> manifests.put(name, attributes));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void importsAndRequiresOnlyWhatStandsBelowIt(ProductBundle bundle) throws Exception {
        Attributes manifest = manifestOf(bundle);
        List<String> wrong = Stream.concat(values(manifest, Constants.REQUIRE_BUNDLE),
                        values(manifest, Constants.IMPORT_PACKAGE))
                .filter(name -> bundle.forbidden().stream().anyMatch(other -> belongsTo(name, other))).toList();
        assertEquals(List.of(), wrong);
    }

    @ParameterizedTest
    @MethodSource("org.copperbook.product.tests.ProductBundle#withoutWindow")
    void asksForNoWindow(ProductBundle bundle) throws Exception {
        Attributes manifest = manifestOf(bundle);
        List<String> wrong = Stream.concat(values(manifest, Constants.REQUIRE_BUNDLE),
                        values(manifest, Constants.IMPORT_PACKAGE))
                .filter(name -> Stream.of("org.eclipse.swt", "org.eclipse.jface", "org.eclipse.ui", "org.eclipse.e4.ui")
                        .anyMatch(window -> name.equals(window) || name.startsWith(window + "."))).toList();
        assertEquals(List.of(), wrong);
    }

    @ParameterizedTest
    @EnumSource
    void offersOnlyItsOwnPackages(ProductBundle bundle) throws Exception {
        List<String> foreign = values(manifestOf(bundle), Constants.EXPORT_PACKAGE)
                .filter(name -> !belongsTo(name, bundle)).toList();
        assertEquals(List.of(), foreign);
    }

    /** An arrow that no manifest declares could not be held either: the imports must really be written. */
    @ParameterizedTest
    @EnumSource(names = {"JOBS", "STORE", "SHEETS", "DESK", "INSPECTION", "WINDING", "RECTIFIER", "RUNUP", "OFFICE",
        "BATCH"})
    void declaresWhatItUsesOfTheBundlesBelow(ProductBundle bundle) throws Exception {
        assertTrue(values(manifestOf(bundle), Constants.IMPORT_PACKAGE)
                .anyMatch(name -> name.startsWith("org.copperbook.")), bundle + " imports nothing of the product");
    }

    private static boolean belongsTo(String name, ProductBundle bundle) {
        return name.equals(bundle.symbolicName()) || name.startsWith(bundle.symbolicName() + ".");
    }

    private static Stream<String> values(Attributes manifest, String header) throws BundleException {
        ManifestElement[] elements = ManifestElement.parseHeader(header, manifest.getValue(header));
        return elements == null ? Stream.empty()
                : Arrays.stream(elements).flatMap(element -> Arrays.stream(element.getValueComponents()));
    }

    private Attributes manifestOf(ProductBundle bundle) throws IOException {
        Attributes found = manifests.get(bundle.symbolicName());
        if (found == null) {
            throw new IOException("No manifest of " + bundle.symbolicName() + " on the class path");
        }
        return found;
    }
}
