package brakewright.review;

import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing found when settings were held against the limits.
 *
 * @param topic what it is about
 * @param signal how grave it is
 * @param subject the setting concerned; empty where it is none in particular
 * @param constraint the constraint exceeded; empty where it is none
 * @param value what was found; empty where there is no number
 * @param limit what it is held against; empty where there is none
 * @param unit of both
 * @param charge the charge state concerned [1]
 * @param speed the speed concerned [m/s]
 * @param temperatureC the cell temperature concerned [°C]
 * @param condition under which this finding would not arise; empty where it does not bear on the
 *     verdict
 */
public record Finding(
        Topic topic,
        Signal signal,
        Optional<LimitId> subject,
        Optional<ConstraintId> constraint,
        OptionalDouble value,
        OptionalDouble limit,
        String unit,
        OptionalDouble charge,
        OptionalDouble speed,
        OptionalDouble temperatureC,
        Optional<Condition> condition) {

    /**
     * Starts a finding that has no numbers yet.
     *
     * @param topic what it is about
     * @param signal how grave it is
     * @return the finding
     */
    static Finding of(Topic topic, Signal signal) {
        return new Finding(
                topic,
                signal,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    Finding about(LimitId id) {
        return new Finding(
                topic,
                signal,
                Optional.of(id),
                constraint,
                value,
                limit,
                unit,
                charge,
                speed,
                temperatureC,
                condition);
    }

    Finding against(ConstraintId id) {
        return new Finding(
                topic,
                signal,
                subject,
                Optional.of(id),
                value,
                limit,
                unit,
                charge,
                speed,
                temperatureC,
                condition);
    }

    Finding valued(double found, String itsUnit) {
        return new Finding(
                topic,
                signal,
                subject,
                constraint,
                OptionalDouble.of(found),
                limit,
                itsUnit,
                charge,
                speed,
                temperatureC,
                condition);
    }

    Finding valued(double found, double bound, String itsUnit) {
        return new Finding(
                topic,
                signal,
                subject,
                constraint,
                OptionalDouble.of(found),
                OptionalDouble.of(bound),
                itsUnit,
                charge,
                speed,
                temperatureC,
                condition);
    }

    Finding atCharge(double state) {
        return new Finding(
                topic,
                signal,
                subject,
                constraint,
                value,
                limit,
                unit,
                OptionalDouble.of(state),
                speed,
                temperatureC,
                condition);
    }

    Finding atSpeed(double metresPerSecond) {
        return new Finding(
                topic,
                signal,
                subject,
                constraint,
                value,
                limit,
                unit,
                charge,
                Double.isFinite(metresPerSecond)
                        ? OptionalDouble.of(metresPerSecond)
                        : OptionalDouble.empty(),
                temperatureC,
                condition);
    }

    Finding atTemperature(double degreesC) {
        return new Finding(
                topic,
                signal,
                subject,
                constraint,
                value,
                limit,
                unit,
                charge,
                speed,
                OptionalDouble.of(degreesC),
                condition);
    }

    Finding unless(Condition itsCondition) {
        return new Finding(
                topic,
                signal,
                subject,
                constraint,
                value,
                limit,
                unit,
                charge,
                speed,
                temperatureC,
                Optional.of(itsCondition));
    }

    /**
     * Returns the name of this finding, unique on a worksheet but for the temperature.
     *
     * @return topic, and the constraint or setting concerned
     */
    public String id() {
        return topic.key()
                + constraint.map(each -> ":" + each.key()).orElse("")
                + (constraint.isEmpty() ? subject.map(each -> ":" + each.key()).orElse("") : "");
    }
}
