package org.copperbook.desk.editor;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.document.PartTree;
import org.copperbook.desk.shell.Judgement;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.signoff.HoldPoint;

/** How far a part has come. */
public enum PartState {
    /** Nothing has been recorded. */
    EMPTY,
    /** Something has been recorded, and something is still missing. */
    BEGUN,
    /** Everything that belongs to it has been recorded. */
    COMPLETE,
    /** The hold point it belongs to has been signed. */
    SIGNED;

    /**
     * The state of a part.
     *
     * @param complete JSON pointers that hold something when the part is complete; empty when any content will do
     * @param whole    whether a part is complete beyond that
     */
    static PartState of(JobDocument document, PartKey key, List<String> complete, Predicate<Part> whole, Judgement judgement) {
        if (document.draft(key).part() == null && document.draft(key).asTyped().isEmpty()) {
            return EMPTY;
        }
        if (point(key).filter(p -> signed(p, judgement)).isPresent()) {
            return SIGNED;
        }
        boolean typed = document.draft(key).asTyped().isEmpty();
        boolean held = complete.stream().allMatch(p -> holds(document, key, p))
                && document.draft(key).part() != null && whole.test(document.draft(key).part());
        boolean measured = judgement.verdicts().stream().noneMatch(v -> v.current() && v.part().equals(key)
                && v.point() != null && v.outcome() == Outcome.NOT_MEASURED);
        return typed && held && measured ? COMPLETE : BEGUN;
    }

    /** The hold point that a part belongs to. */
    static Optional<HoldPoint> point(PartKey key) {
        return Optional.ofNullable(switch (key.kind()) {
            case WINDING -> key.name().endsWith(PartKey.AS_WOUND) ? HoldPoint.WINDING_PROVED
                    : HoldPoint.CAPTURE_COMPLETE;
            case CORE -> HoldPoint.CORE_PROVED;
            case IN_PROCESS -> HoldPoint.WINDING_PROVED;
            case RECTIFIER -> HoldPoint.RECTIFIER_COMPLETE;
            case RUN_UP -> HoldPoint.RELEASE;
            default -> null;
        });
    }

    private static boolean signed(HoldPoint point, Judgement judgement) {
        return judgement.holdPoints().stream()
                .anyMatch(s -> s.point() == point && s.state() == HoldPointState.State.SIGNED);
    }

    private static boolean holds(JobDocument document, PartKey key, String pointer) {
        var node = PartTree.at(document.tree(key), pointer);
        return !node.isMissingNode() && !node.isNull() && !(node.isContainerNode() && node.isEmpty());
    }
}
