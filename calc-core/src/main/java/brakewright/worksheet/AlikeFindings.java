package brakewright.worksheet;

import brakewright.review.Condition;
import brakewright.review.Finding;
import brakewright.review.Review;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Findings that differ in nothing but the cell temperature or the pack they are about.
 *
 * @param findings the strictest first, never empty
 */
public record AlikeFindings(List<Finding> findings) {

    /** Of conditions on the charge the one that leaves least of it. */
    private static final Comparator<Finding> STRICTNESS =
            Comparator.comparingDouble(AlikeFindings::chargeLeft);

    /** Copies the findings. */
    public AlikeFindings {
        if (findings.isEmpty()) {
            throw new IllegalArgumentException("findings that are alike must be at least one");
        }
        findings = List.copyOf(findings);
    }

    /**
     * Gathers what a review found.
     *
     * @param review any
     * @return gravest first
     */
    public static List<AlikeFindings> of(Review review) {
        return gathered(review.findings());
    }

    /**
     * Gathers those that are alike.
     *
     * @param findings in any order
     * @return in the order in which the first of each stands
     */
    static List<AlikeFindings> gathered(List<Finding> findings) {
        List<List<Finding>> groups = new ArrayList<>();
        for (Finding finding : findings) {
            groups.stream()
                    .filter(group -> isAlike(group.get(0), finding))
                    .findFirst()
                    .orElseGet(
                            () -> {
                                List<Finding> group = new ArrayList<>();
                                groups.add(group);
                                return group;
                            })
                    .add(finding);
        }
        groups.forEach(group -> group.sort(STRICTNESS));
        return groups.stream().map(AlikeFindings::new).toList();
    }

    /**
     * Returns the finding that stands for all.
     *
     * @return the strictest
     */
    public Finding first() {
        return findings.get(0);
    }

    /**
     * Returns whether another finding is about the same.
     *
     * @param other the other
     * @return true where only cell temperature or pack differ
     */
    public boolean isAbout(Finding other) {
        return isAlike(first(), other);
    }

    private static boolean isAlike(Finding one, Finding other) {
        return one.topic() == other.topic()
                && one.signal() == other.signal()
                && one.subject().equals(other.subject())
                && one.constraint().equals(other.constraint());
    }

    private static double chargeLeft(Finding finding) {
        Condition condition = finding.condition().orElse(new Condition.Never());
        return condition instanceof Condition.ChargeBelow below
                ? below.charge()
                : condition instanceof Condition.ChargeAbove above ? 1.0 - above.charge() : 0.0;
    }
}
