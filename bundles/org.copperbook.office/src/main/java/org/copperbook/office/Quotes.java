package org.copperbook.office;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import org.copperbook.desk.page.ManyParts;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuotePrices;

/** The quotes of a job: numbered from one, the next one offered. */
public final class Quotes implements ManyParts {

    private static final int VALID_DAYS = 30;

    private final Words words = Words.of(Quotes.class);

    @Override
    public List<PartKey> offers(Job job) {
        return List.of(PartKey.quote(job.keys(PartKind.QUOTE).size() + 1));
    }

    @Override
    public String label(PartKey key) {
        return words.text("quote.label", key.name());
    }

    @Override
    public int place(PartKey key) {
        return key.name().matches("\\d{1,9}") ? Integer.parseInt(key.name()) : Integer.MAX_VALUE;
    }

    @Override
    public boolean isComplete(Part part) {
        return part instanceof Quote q && QuotePrices.isWhole(q);
    }

    @Override
    public ObjectNode beginning(PartKey key, Job job, PartJson json) {
        ObjectNode tree = json.mapper().createObjectNode();
        tree.put("schema", Quote.SCHEMA).put("revision", Integer.parseInt(key.name()));
        LocalDate today = LocalDate.now();
        tree.put("date", today.toString()).put("validUntil", today.plusDays(VALID_DAYS).toString());
        tree.putArray("alternatives").addObject().put("name", words.text("quote.fullRewind"));
        return tree;
    }
}
