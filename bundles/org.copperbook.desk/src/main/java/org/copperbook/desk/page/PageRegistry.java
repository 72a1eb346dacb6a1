package org.copperbook.desk.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.copperbook.desk.Desk;
import org.copperbook.jobs.PartKind;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.ILog;

/** The pages that the plug-ins present contribute, in the order of the outline. */
public final class PageRegistry {

    private static final String PAGE = "page";

    private PageRegistry() {
    }

    /** Reads the contributions; one that cannot be read is logged and left out, and nothing else breaks. */
    public static List<PageContribution> read(IExtensionRegistry registry) {
        List<PageContribution> pages = new ArrayList<>();
        for (IConfigurationElement e : registry.getConfigurationElementsFor(Desk.JOB_PAGES)) {
            if (PAGE.equals(e.getName())) {
                try {
                    pages.add(read(e));
                } catch (IllegalArgumentException bad) {
                    ILog.of(PageRegistry.class).error("page " + e.getAttribute("id") + " of "
                            + e.getContributor().getName() + " is left out: " + bad.getMessage(), bad);
                }
            }
        }
        pages.sort(Comparator.comparingInt(PageContribution::order).thenComparing(PageContribution::id));
        return List.copyOf(pages);
    }

    private static PageContribution read(IConfigurationElement e) {
        String complete = e.getAttribute("complete");
        return new PageContribution(required(e, "id"), required(e, "name"), PartKind.of(required(e, "part")),
                Integer.parseInt(required(e, "order")), required(e, "group"),
                complete == null ? List.of() : Stream.of(complete.split(",")).map(String::strip).toList(), e);
    }

    private static String required(IConfigurationElement e, String attribute) {
        String value = e.getAttribute(attribute);
        if (value == null || value.isBlank()) {
            throw new IllegalArgumentException("attribute " + attribute + " is missing");
        }
        return value;
    }
}
