package org.copperbook.store;

import java.util.Optional;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.OwnTemplate;
import org.copperbook.store.StoreException.Kind;

/**
 * The workbook that the workshop has its quotes written into, as the store keeps it.
 *
 * @param name  name of the file as it was chosen
 * @param bytes what is in it; not to be changed
 */
public record KeptTemplate(String name, byte[] bytes) {

    public static final PartKey KEY = PartKey.of(PartKind.QUOTE_TEMPLATE);

    /**
     * The one that counts now; nothing while quotes are written as they ship.
     *
     * @throws StoreException NOT_FOUND when one was chosen whose bytes are not here
     */
    public static Optional<KeptTemplate> of(JobStore store) {
        return store.current(JobStore.SHOP, KEY).map(s -> (OwnTemplate) s.part()).filter(OwnTemplate::isThere)
                .map(t -> read(store, t));
    }

    /**
     * What a record of it means.
     *
     * @throws StoreException NOT_FOUND when its bytes are not here
     */
    public static KeptTemplate read(JobStore store, OwnTemplate template) {
        String name = template.name() == null ? template.kept() : template.name();
        return new KeptTemplate(name, store.photo(template.kept()).orElseThrow(() -> new StoreException(Kind.NOT_FOUND,
                StoreText.of("template.gone", name))));
    }
}
