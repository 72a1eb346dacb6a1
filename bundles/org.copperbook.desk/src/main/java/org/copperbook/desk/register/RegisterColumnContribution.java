package org.copperbook.desk.register;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.store.RegisterColumn;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.ILog;

/**
 * A column of the register as a plug-in contributes it.
 *
 * @param id    id of the column
 * @param name  heading
 * @param order place from the left, smallest first
 * @param chars width in average characters
 * @param sort  column of the store it sorts by; null when it cannot sort
 * @param cell  gives the texts
 */
record RegisterColumnContribution(String id, String name, int order, int chars, RegisterColumn sort,
        RegisterCell cell) {

    /** The columns of the plug-ins present, from the left; one that cannot be made is logged and left out. */
    static List<RegisterColumnContribution> read(IExtensionRegistry registry) {
        List<RegisterColumnContribution> columns = new ArrayList<>();
        for (IConfigurationElement e : registry.getConfigurationElementsFor(Desk.REGISTER_COLUMNS)) {
            try {
                String sort = e.getAttribute("sort");
                columns.add(new RegisterColumnContribution(e.getAttribute("id"), e.getAttribute("name"),
                        Integer.parseInt(e.getAttribute("order")), Integer.parseInt(e.getAttribute("width")),
                        sort == null ? null : RegisterColumn.valueOf(sort),
                        (RegisterCell) e.createExecutableExtension("class")));
            } catch (CoreException | IllegalArgumentException bad) {
                ILog.of(RegisterColumnContribution.class).error("register column " + e.getAttribute("id") + " of "
                        + e.getContributor().getName() + " is left out", bad);
            }
        }
        columns.sort(Comparator.comparingInt(RegisterColumnContribution::order));
        return List.copyOf(columns);
    }
}
