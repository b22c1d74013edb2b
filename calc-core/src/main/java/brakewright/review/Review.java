package brakewright.review;

import brakewright.limit.Limits;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The settings of a vehicle held against its limits.
 *
 * @param verdict on the whole
 * @param findings gravest first
 */
public record Review(Verdict verdict, List<Finding> findings) {

    /** Copies the findings. */
    public Review {
        findings = List.copyOf(findings);
    }

    /**
     * Reviews a vehicle.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @return verdict and findings
     */
    public static Review of(Build build, Limits limits, Operation operation) {
        List<Finding> findings = new ArrayList<>();
        Operation trusted = operation.trusted(limits);
        findings.addAll(new PackReview(build, limits, trusted).findings());
        findings.addAll(new SettingReview(build, limits).findings());
        findings.addAll(new SagReview(build, limits, trusted).findings());
        findings.addAll(new SharingReview(build, operation).findings());
        findings.addAll(new BrakeReview(build, limits, operation).findings());
        findings.addAll(new DriveReview(build, operation).findings());
        findings.addAll(new FactReview(build, operation).findings());
        findings.sort(Comparator.comparing(Finding::signal));
        return new Review(Verdict.of(findings), findings);
    }
}
