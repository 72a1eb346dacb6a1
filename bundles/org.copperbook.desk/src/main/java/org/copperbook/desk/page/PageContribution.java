package org.copperbook.desk.page;

import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.PartKind;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;

/**
 * A page that a plug-in contributes, as read from the extension registry. Its class is not loaded before the page is
 * opened.
 *
 * @param id       id of the contribution
 * @param name     name shown
 * @param kind     kind of part it shows
 * @param order    place among the pages of the same kind of part, smallest first; kinds stand in the order of a job's life
 * @param group    "office", "bench" or "testbay": the perspective whose people work on it most
 * @param complete JSON pointers that hold something when the part counts as complete; empty when any content does
 * @param element  the element that makes the page
 */
public record PageContribution(String id, String name, PartKind kind, int order, String group, List<String> complete,
        IConfigurationElement element) {

    public PageContribution {
        complete = List.copyOf(complete);
    }

    /**
     * Makes the page.
     *
     * @throws CoreException when the plug-in cannot make it
     */
    public PartPage create() throws CoreException {
        return (PartPage) element.createExecutableExtension("class");
    }

    /**
     * What the plug-in says about several parts of the kind.
     *
     * @throws CoreException when the plug-in cannot make it
     */
    public Optional<ManyParts> many() throws CoreException {
        return element.getAttribute("many") == null ? Optional.empty()
                : Optional.of((ManyParts) element.createExecutableExtension("many"));
    }
}
