package brakewright.review;

import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Signal;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing found when settings were held against the limits.
 *
 * @param topic what it is about
 * @param signal how grave it is
 * @param subject the setting concerned; empty where it is none in particular
 * @param constraint the constraint exceeded; empty where it is none
 * @param pack which of several packs it is about, or the whole
 * @param value what was found; empty where there is no number
 * @param limit what it is held against; empty where there is none
 * @param unit of both
 * @param charge the charge state concerned [1]
 * @param worstCharge where value and limit were found, the worst of the charge in use [1]
 * @param speed the speed concerned [m/s]
 * @param temperatureC the cell temperature concerned [°C]
 * @param condition under which this finding would not arise; empty where it does not bear on the
 *     verdict
 * @param detail what its topic tells beside that; empty where that is nothing
 */
public record Finding(
        Topic topic,
        Signal signal,
        Optional<LimitId> subject,
        Optional<ConstraintId> constraint,
        WhichPack pack,
        OptionalDouble value,
        OptionalDouble limit,
        Unit unit,
        OptionalDouble charge,
        OptionalDouble worstCharge,
        OptionalDouble speed,
        OptionalDouble temperatureC,
        Optional<Condition> condition,
        Optional<FindingDetail> detail) {

    /**
     * Starts a finding.
     *
     * @param topic what it is about
     * @param signal how grave it is
     * @return a builder without numbers
     */
    static Builder of(Topic topic, Signal signal) {
        return new Builder(topic, signal);
    }

    /**
     * Returns the name of this finding, unique on a worksheet but for the temperature.
     *
     * @return topic, the pack where there are several, and the constraint or setting concerned
     */
    public String id() {
        return topic.key()
                + pack.map(number -> ":pack-" + number).orElse("")
                + constraint.map(each -> ":" + each.key()).orElse("")
                + (constraint.isEmpty() ? subject.map(each -> ":" + each.key()).orElse("") : "");
    }

    /** The same finding, with what its topic tells beside. */
    Finding withDetail(FindingDetail other) {
        return new Finding(
                topic,
                signal,
                subject,
                constraint,
                pack,
                value,
                limit,
                unit,
                charge,
                worstCharge,
                speed,
                temperatureC,
                condition,
                Optional.of(other));
    }

    /** Collects what a finding consists of. */
    static final class Builder {

        private final Topic topic;
        private final Signal signal;
        private Optional<LimitId> subject = Optional.empty();
        private Optional<ConstraintId> constraint = Optional.empty();
        private WhichPack pack = WhichPack.WHOLE;
        private OptionalDouble value = OptionalDouble.empty();
        private OptionalDouble limit = OptionalDouble.empty();
        private Unit unit = Unit.NONE;
        private OptionalDouble charge = OptionalDouble.empty();
        private OptionalDouble worstCharge = OptionalDouble.empty();
        private OptionalDouble speed = OptionalDouble.empty();
        private OptionalDouble temperatureC = OptionalDouble.empty();
        private Optional<Condition> condition = Optional.empty();
        private Optional<FindingDetail> detail = Optional.empty();

        private Builder(Topic topic, Signal signal) {
            this.topic = topic;
            this.signal = signal;
        }

        Builder about(LimitId id) {
            subject = Optional.of(id);
            return this;
        }

        Builder against(ConstraintId id) {
            constraint = Optional.of(id);
            return this;
        }

        Builder ofPack(WhichPack which) {
            pack = which;
            return this;
        }

        Builder valued(double found, Unit itsUnit) {
            value = OptionalDouble.of(found);
            unit = itsUnit;
            return this;
        }

        /** Only what would have to be kept is known. */
        Builder held(double bound, Unit itsUnit) {
            limit = OptionalDouble.of(bound);
            unit = itsUnit;
            return this;
        }

        Builder valued(double found, double bound, Unit itsUnit) {
            limit = OptionalDouble.of(bound);
            return valued(found, itsUnit);
        }

        Builder atCharge(double state) {
            charge = OptionalDouble.of(state);
            return this;
        }

        Builder worstAt(double state) {
            worstCharge = OptionalDouble.of(state);
            return this;
        }

        /** An infinite speed is one that is never reached, and is left out. */
        Builder atSpeed(double metresPerSecond) {
            speed =
                    Double.isFinite(metresPerSecond)
                            ? OptionalDouble.of(metresPerSecond)
                            : OptionalDouble.empty();
            return this;
        }

        Builder atTemperature(double degreesC) {
            temperatureC = OptionalDouble.of(degreesC);
            return this;
        }

        Builder unless(Condition itsCondition) {
            condition = Optional.of(itsCondition);
            return this;
        }

        Builder telling(FindingDetail itsDetail) {
            detail = Optional.of(itsDetail);
            return this;
        }

        Finding build() {
            return new Finding(
                    topic,
                    signal,
                    subject,
                    constraint,
                    pack,
                    value,
                    limit,
                    unit,
                    charge,
                    worstCharge,
                    speed,
                    temperatureC,
                    condition,
                    detail);
        }
    }
}
