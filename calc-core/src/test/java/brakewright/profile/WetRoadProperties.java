package brakewright.profile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.operation.SetBuild;
import brakewright.review.BrakeVerdict;
import brakewright.spec.Build;
import brakewright.spec.Vehicle;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** A wet road beside a dry one: nothing but the grip is another. */
@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class WetRoadProperties {

    /** A brake that grip holds back is sought over the speeds, to 1e-9. */
    private static final double SEARCHED = 1e-8;

    /** The wet grip of these vehicles is six tenths of the dry one. */
    @Property(tries = 200)
    void aWetRoadNeverBearsMoreNorBrakesBetter(@ForAll Build build) {
        Situation situation = Situation.of(build);
        Recommendation dry = Recommendation.judged(situation, build.settings());
        WetRoad wet = WetRoad.of(situation, build.settings(), dry, Entry.METRIC);
        double limit = Limits.of(build).motorBrake().value();
        assertThat(wet.motorBrake()).isLessThanOrEqualTo(limit);
        assertThat(wet.brake().deceleration())
                .isLessThanOrEqualTo(dry.brake().deceleration() + SEARCHED);
        assertThat(wet.brake().word().ordinal())
                .isGreaterThanOrEqualTo(dry.brake().word().ordinal());
        assertThat(wet.enter()).isLessThanOrEqualTo(wet.motorBrake());
        assertThat(wet.bindsCurrent(limit)).isEqualTo(wet.motorBrake() < limit);
        if (wet.bindsCurrent(limit)) {
            assertThat(Limits.of(build.onWetRoad()).motorBrake().binding().id())
                    .isEqualTo(ConstraintId.GRIP);
        }
    }

    /** Where the wet road grips like the dry one it is told nowhere. */
    @Property(tries = 100)
    void aRoadThatGripsAlikeBindsNothing(@ForAll Build any) {
        Vehicle vehicle = any.vehicle();
        Build build = any.onWetRoad();
        assertThat(build.vehicle().grip()).isEqualTo(vehicle.gripWet());
        Situation situation = Situation.of(build);
        Recommendation dry = Recommendation.judged(situation, build.settings());
        WetRoad wet = WetRoad.of(situation, build.settings(), dry, Entry.METRIC);
        assertThat(wet.bindsCurrent(Limits.of(build).motorBrake().value())).isFalse();
        assertThat(wet.bindsBrake(BrakeVerdict.of(build))).isFalse();
    }
}
