package org.copperbook.desk.page;

import java.util.Arrays;
import java.util.Set;
import org.copperbook.desk.Desk;
import org.copperbook.jobs.PartKind;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IWorkbenchPage;

/** The pages over the shop's own parts that the plug-ins present contribute. */
public final class ShopPages {

    private ShopPages() {
    }

    /** Opens those that show any of some kinds of parts; one that cannot be opened is logged and left out. */
    public static void open(IExtensionRegistry registry, Set<PartKind> kinds, IWorkbenchPage window) {
        for (IConfigurationElement e : registry.getConfigurationElementsFor(Desk.SHOP_PAGES)) {
            try {
                if (Arrays.stream(e.getAttribute("parts").split(",")).map(String::strip).map(PartKind::of)
                        .anyMatch(kinds::contains)) {
                    ((ShopPage) e.createExecutableExtension("class")).openIn(window);
                }
            } catch (CoreException | IllegalArgumentException bad) {
                ILog.of(ShopPages.class).error("a page over the shop's parts of " + e.getContributor().getName()
                        + " could not be opened: " + bad.getMessage(), bad);
            }
        }
    }
}
