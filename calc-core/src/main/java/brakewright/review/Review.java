package brakewright.review;

import brakewright.limit.BrakingTime;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.operation.RegenOvershoot;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The settings of a vehicle held against its limits.
 *
 * @param verdict on pack and parts
 * @param brake the verdict on the brake
 * @param findings gravest first
 * @param braking how long braking is taken to last
 * @param safeCharge the charge state up to which braking in full or in part is safe for the packs;
 *     0 where it is at no charge in use [1]
 */
public record Review(
        Verdict verdict,
        BrakeVerdict brake,
        List<Finding> findings,
        BrakingTime braking,
        double safeCharge) {

    /** What the verdict on the brake tells. */
    private static final Set<Topic> OF_BRAKE = Set.of(Topic.BRAKE_WEAK, Topic.BRAKE_TAKEN_AWAY);

    /** Copies the findings. */
    public Review {
        findings = List.copyOf(findings);
    }

    /**
     * Returns all that the verdict rests on.
     *
     * @return what is exceeded, and the strictest conditions
     */
    public VerdictPart all() {
        return VerdictPart.of(findings, verdict);
    }

    /**
     * Returns what of it is about the packs.
     *
     * @return what the cells and their protection do not bear
     */
    public VerdictPart pack() {
        return VerdictPart.of(findings, true);
    }

    /**
     * Returns what of it is about motor, controller, wiring, tyres and rider.
     *
     * @return what they do not bear
     */
    public VerdictPart parts() {
        return VerdictPart.of(findings, false);
    }

    /**
     * Returns how grave the gravest is that neither verdict tells, as that packs follow one that
     * opens.
     *
     * @return danger or warning; empty where there is neither, or a verdict tells of excess anyway
     */
    public Optional<Signal> ofAnotherKind() {
        return verdict.outcome() != Verdict.Outcome.WITHIN_LIMITS
                ? Optional.empty()
                : findings.stream()
                        .filter(each -> !OF_BRAKE.contains(each.topic()))
                        .map(Finding::signal)
                        .findFirst()
                        .filter(each -> each == Signal.DANGER || each == Signal.WARNING);
    }

    /**
     * Returns whether a bound on the charge rests on how long braking is taken to last.
     *
     * @return true where it is longer than the pulse that cell resistances are given for
     */
    public boolean isBoundByLongBraking() {
        return verdict.conditions().stream().anyMatch(Condition.ChargeBelow.class::isInstance)
                && braking.seconds() > Cell.PULSE;
    }

    /**
     * Reviews a vehicle.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @return verdicts and findings
     */
    public static Review of(Build build, Limits limits, Operation operation) {
        Checks checks = Checks.all(build, limits, operation);
        List<RegenOvershoot> surges = RegenOvershoot.of(build, limits, operation);
        List<Finding> findings = told(checks.list(), build.battery().temperatureC());
        addSurges(findings, surges);
        Verdict verdict = Verdict.of(findings);
        BrakeVerdict brake = BrakeVerdict.of(build, limits, operation);
        findings.addAll(new SettingReview(build, limits, operation).findings());
        findings.addAll(new SharingReview(build, limits, operation).findings());
        findings.addAll(new BrakeReview(build, limits, operation, brake, surges).findings());
        findings.addAll(new DriveReview(build, operation).findings());
        findings.addAll(new FuseReview(build).findings());
        findings.addAll(new PlugReview(build).findings());
        findings.addAll(new FactReview(build, operation).findings());
        findings.addAll(new BypassReview(build, limits, operation).findings());
        findings.sort(Comparator.comparing(Finding::signal));
        return new Review(verdict, brake, findings, limits.brakingTime(), checks.safeCharge());
    }

    private static void addSurges(List<Finding> findings, List<RegenOvershoot> surges) {
        for (int i = 0; i < findings.size(); i++) {
            for (RegenOvershoot surge : surges) {
                if (isAbout(findings.get(i), surge)) {
                    findings.set(i, findings.get(i).withDetail(new FindingDetail.Surge(surge)));
                }
            }
        }
    }

    /**
     * A finding about the trip that a surge passes, or about the motor brake current that it
     * bounds.
     */
    private static boolean isAbout(Finding finding, RegenOvershoot surge) {
        return finding.pack().equals(surge.pack())
                && (finding.topic() == Topic.REGEN_OVERSHOOT
                        ? finding.constraint().equals(Optional.of(surge.trip()))
                        : finding.constraint().equals(Optional.of(ConstraintId.REGEN_OVERSHOOT))
                                && surge.trip() == ConstraintId.PROTECTION_CHARGE_TRIP);
    }

    /** Colder and warmer packs are worth a finding of their own only where they are worse. */
    private static List<Finding> told(List<Check> checks, double nominalC) {
        List<Finding> findings = new ArrayList<>();
        for (Check check : checks) {
            if (check.isExceeded()
                    && checks.stream().noneMatch(other -> saysMore(other, check, nominalC))) {
                findings.add(check.finding());
            }
        }
        return findings;
    }

    /**
     * A charge rating that falls with the charge is told at every temperature: where a voltage is
     * told at one, it would else be thought to be all that counts there.
     */
    private static boolean saysMore(Check other, Check check, double nominalC) {
        return other != check
                && check.held().against() != ConstraintId.CELL_CHARGE_RATING_AT_CHARGE
                && other.held().cellsC() == nominalC
                && check.held().cellsC() != nominalC
                && other.held().isAlike(check.held())
                && check.isNoWorseThan(other);
    }
}
