package org.copperbook.desk.editor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.page.ManyParts;
import org.copperbook.desk.page.PageContribution;
import org.copperbook.desk.shell.Judgement;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.signoff.HoldPoint;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;

/** Works out the rows of a job's outline: the pages that fit the job in the order of its life, hold points between. */
final class Outline {

    private record Placed(int rank, int order, OutlineRow row) {
    }

    private final List<PageContribution> pages;
    private final Map<String, ManyParts> many = new LinkedHashMap<>();

    Outline(List<PageContribution> pages) {
        this.pages = pages;
        for (PageContribution p : pages) {
            try {
                p.many().ifPresent(m -> many.put(p.id(), m));
            } catch (CoreException e) {
                ILog.of(Outline.class).error("page " + p.id() + " cannot say which parts it adds", e);
            }
        }
    }

    /** The rows for a job as it stands. Parts that are begun stay in the outline when the job would not need them. */
    List<OutlineRow> rows(JobDocument document, Set<PartKey> opened, Judgement judgement) {
        Job job = document.job();
        List<Placed> placed = new ArrayList<>();
        for (PageContribution p : pages) {
            if (p.kind().many()) {
                severalRows(p, document, opened, judgement, job, placed);
            } else if (fits(p.kind(), job)) {
                placed.add(row(p, PartKey.of(p.kind()), p.name(), document, judgement));
            }
        }
        for (HoldPointState s : judgement.holdPoints()) {
            if (s.applies()) {
                placed.add(new Placed(rank(s.point()), 0,
                        new OutlineRow.Point(s, DeskWords.get().of(s.point()))));
            }
        }
        placed.sort(Comparator.comparingInt(Placed::rank).thenComparingInt(Placed::order));
        return placed.stream().map(Placed::row).toList();
    }

    /** What a plug-in says about several parts of the kind of a page; null when it says nothing. */
    ManyParts many(PageContribution page) {
        return many.get(page.id());
    }

    private void severalRows(PageContribution p, JobDocument document, Set<PartKey> opened, Judgement judgement,
            Job job, List<Placed> placed) {
        ManyParts names = many.get(p.id());
        Comparator<PartKey> byPlace = Comparator.comparingInt(k -> names == null ? 0 : names.place(k));
        Set<PartKey> keys = new TreeSet<>(byPlace.thenComparing(Comparator.naturalOrder()));
        keys.addAll(job.keys(p.kind()));
        opened.stream().filter(k -> k.kind() == p.kind()).forEach(keys::add);
        for (PartKey key : keys) {
            placed.add(row(p, key, names == null ? key.name() : names.label(key), document, judgement));
        }
        if (names != null && !names.offers(job).isEmpty()) {
            int last = p.kind() == PartKind.WINDING ? WINDING_AS_WOUND : rank(p.kind());
            placed.add(new Placed(last, Integer.MAX_VALUE,
                    new OutlineRow.Add(p, DeskWords.text("outline.add", p.name()))));
        }
    }

    private Placed row(PageContribution p, PartKey key, String label, JobDocument document,
            Judgement judgement) {
        int rank = key.kind() == PartKind.WINDING && key.name().endsWith(PartKey.AS_WOUND) ? WINDING_AS_WOUND
                : rank(key.kind());
        return new Placed(rank, p.order(), new OutlineRow.Page(p, key, label,
                PartState.of(document, key, p.complete(), part -> many(p) == null || many(p).isComplete(part), judgement),
                document.dirty(key)));
    }

    /**
     * A motor has no rotating rectifier and no exciter whose fault to find; while nobody has said what the machine is,
     * everything is offered.
     */
    private static boolean fits(PartKind kind, Job job) {
        if (kind != PartKind.RECTIFIER && kind != PartKind.FAULT_FINDING || job.parts().containsKey(PartKey.of(kind))) {
            return true;
        }
        return job.booking().map(b -> b.machineKind() == null || b.machineKind().hasRectifier()).orElse(true);
    }

    private static final int STEP = 10;
    private static final int WINDING_AS_WOUND = rank(PartKind.CORE) + 7;

    private static int rank(PartKind kind) {
        return kind.ordinal() * STEP;
    }

    private static int rank(HoldPoint point) {
        return switch (point) {
            case CAPTURE_COMPLETE -> rank(PartKind.WINDING) + 5;
            case CORE_PROVED -> rank(PartKind.CORE) + 5;
            case WINDING_PROVED -> rank(PartKind.IN_PROCESS) + 5;
            case RECTIFIER_COMPLETE -> rank(PartKind.RECTIFIER) + 5;
            case RELEASE -> rank(PartKind.RUN_UP) + 5;
        };
    }
}
