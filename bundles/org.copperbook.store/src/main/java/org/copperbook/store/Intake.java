package org.copperbook.store;

import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.shop.Person;
import org.copperbook.store.stock.StockMove;

/**
 * What is taken in at once: all of it or nothing.
 *
 * @param shopParts parts of the shop (settings, instruments, stock, limits); each becomes the current revision
 * @param people    people; one already known under the key is replaced
 * @param photos    bytes of photos the parts name by hash
 * @param jobs      whole jobs; one without a number gets the next free one
 * @param stockMoves movements of stock, made when the items and jobs are there
 */
public record Intake(Map<PartKey, Part> shopParts, List<Person> people, List<byte[]> photos,
        List<Job> jobs, List<StockMove> stockMoves) {

    public Intake {
        shopParts = Map.copyOf(shopParts);
        people = List.copyOf(people);
        photos = List.copyOf(photos);
        jobs = List.copyOf(jobs);
        stockMoves = List.copyOf(stockMoves);
    }

    /** Without movements of stock. */
    public Intake(Map<PartKey, Part> shopParts, List<Person> people, List<byte[]> photos, List<Job> jobs) {
        this(shopParts, people, photos, jobs, List.of());
    }

    /** Jobs only. */
    public static Intake of(Job... jobs) {
        return new Intake(Map.of(), List.of(), List.of(), List.of(jobs));
    }
}
