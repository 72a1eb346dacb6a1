package org.copperbook.office.quote;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Consumer;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** Language, currency and terms of the customer of the register, for a quote that is begun; read behind the window. */
final class CustomersWishes {

    private CustomersWishes() {
    }

    /**
     * Reads the customer of the job.
     *
     * @param page nothing is told once it is disposed
     * @param then told in the window's thread, if there is one
     */
    static void read(PageSite site, Words words, Control page, Consumer<Customer> then) {
        JobStore store = site.store();
        Job job = site.document().job();
        Display display = page.getDisplay();
        new DeskJob(words.text("quote.readingCustomer"), monitor -> {
            try {
                store.customerOf(job).ifPresent(c -> {
                    if (!display.isDisposed()) {
                        display.asyncExec(() -> {
                            if (!page.isDisposed()) {
                                then.accept(c);
                            }
                        });
                    }
                });
            } catch (StoreException e) {
                ILog.of(CustomersWishes.class).warn("the customer could not be read for a quote", e);
            }
        }).schedule();
    }

    /** Puts them where nothing was typed; the currency also where it is only the shop's own. */
    static ObjectNode put(ObjectNode tree, Customer customer, String shopsCurrency) {
        wish(tree, "language", customer.language());
        if (tree.path("currency").asText("").equals(shopsCurrency)) {
            tree.remove("currency");
        }
        wish(tree, "currency", customer.currency() == null || customer.currency().isBlank() ? shopsCurrency : customer.currency());
        wish(tree, "terms", customer.paymentTerms());
        return tree;
    }

    private static void wish(ObjectNode tree, String field, String value) {
        if (value != null && !value.isBlank() && tree.path(field).asText("").isBlank()) {
            tree.put(field, value.strip());
        }
    }
}
