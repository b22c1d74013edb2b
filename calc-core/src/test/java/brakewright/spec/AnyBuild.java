package brakewright.spec;

import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;

/** Every vehicle within the range of the real thing, and the parts it is made of. */
public final class AnyBuild extends AnyBattery {

    @Provide
    public Arbitrary<Build> builds() {
        Arbitrary<Build> without =
                Combinators.combine(
                                vehicles(), drives(), motors(), controllers(), batteries(), uses())
                        .as(
                                (vehicle, drive, motor, controllers, battery, use) ->
                                        new Build(
                                                "any",
                                                new Rider(80.0, Stance.STANDING_SIDEWAYS, 0.9, 0.3),
                                                vehicle,
                                                drive,
                                                motor,
                                                sharing(controllers, drive.motors()),
                                                battery,
                                                use,
                                                Builds.NO_MARGINS,
                                                new Criteria(2.0, 4.0, 0.1, OptionalDouble.empty()),
                                                Settings.NONE));
        return Combinators.combine(without, riders(), margins())
                .as((build, rider, margins) -> build.withRider(rider).withMargins(margins));
    }

    @Provide
    public Arbitrary<Axles> axles() {
        return Combinators.combine(
                        between(0.5, 1.8),
                        between(0.2, 1.3),
                        between(0.1, 0.9),
                        Arbitraries.of(DrivenAxle.class))
                .as(
                        (wheelbase, height, share, driven) ->
                                new Axles(wheelbase, height, share * wheelbase, driven));
    }

    @Provide
    public Arbitrary<MotorHeat> motorHeat() {
        return Combinators.combine(
                        between(0.1, 3.0),
                        between(0.3, 5.0),
                        between(5.0, 200.0),
                        between(100.0, 2000.0))
                .as(MotorHeat::new);
    }

    @Provide
    public Arbitrary<Motor> motors() {
        return Combinators.combine(
                        between(8.0, 300.0),
                        between(0.01, 0.3),
                        Arbitraries.integers().between(1, 25),
                        between(0.0, 3e-4),
                        between(0.0, 2.0),
                        between(0.0, 1e-3),
                        between(10.0, 120.0).optional(),
                        motorHeat().optional())
                .as(
                        (kv, resistance, poles, inductance, free, viscous, rating, heat) ->
                                new Motor(
                                        kv,
                                        resistance,
                                        poles,
                                        inductance,
                                        free,
                                        viscous,
                                        present(rating),
                                        125.0,
                                        heat));
    }

    private Arbitrary<Rider> riders() {
        return Combinators.combine(
                        between(35.0, 130.0),
                        Arbitraries.of(Stance.class),
                        between(0.3, 1.2),
                        between(0.05, 0.5))
                .as(Rider::new);
    }

    private Arbitrary<Vehicle> vehicles() {
        return Combinators.combine(
                        between(5.0, 120.0),
                        between(0.0, 100.0),
                        between(0.08, 0.6),
                        axles(),
                        between(0.002, 0.05),
                        between(0.1, 1.2),
                        between(0.2, 1.0),
                        between(0.0, 6.0).optional())
                .as(
                        (mass, cargo, wheel, axles, rolling, area, grip, friction) ->
                                new Vehicle(
                                        mass,
                                        cargo,
                                        wheel,
                                        axles,
                                        rolling,
                                        area,
                                        grip,
                                        0.6 * grip,
                                        0.03,
                                        present(friction)));
    }

    private Arbitrary<Drive> drives() {
        return Combinators.combine(Arbitraries.of(1, 2, 4), between(1.0, 8.0), between(0.75, 1.0))
                .as(Drive::new);
    }

    private Arbitrary<Controllers> controllers() {
        return Combinators.combine(
                        Arbitraries.of(1, 2, 4),
                        Arbitraries.of(CurrentBasis.class),
                        between(10.0, 200.0),
                        between(5.0, 150.0),
                        between(15.0, 130.0),
                        between(0.85, 1.0),
                        between(1e-4, 5e-3).optional(),
                        Combinators.combine(between(0.0, 0.3), between(0.2, 5.0).optional(0.3))
                                .as((late, ends) -> new double[] {late, ends.orElse(0.0)}))
                .as(
                        (count, basis, motor, pack, voltage, efficiency, capacitance, brake) ->
                                new Controllers(
                                        count,
                                        basis,
                                        motor,
                                        pack,
                                        voltage,
                                        efficiency,
                                        present(capacitance),
                                        brake[0],
                                        brake[1]));
    }

    private Arbitrary<Use> uses() {
        return Combinators.combine(
                        between(0.5, 1.0),
                        between(0.0, 0.45),
                        between(2.0, 20.0),
                        climates(),
                        between(0.0, 0.3),
                        ridings(),
                        efforts())
                .as(
                        (from, to, speed, climate, slope, riding, effort) ->
                                new Use(from, to, speed, climate, slope, 300.0, riding, effort));
    }

    private Arbitrary<Riding> ridings() {
        Arbitrary<Riding.Measured> measured =
                Combinators.combine(between(20.0, 200.0), between(2.0, 10.0))
                        .as(Riding.Measured::new);
        return Combinators.combine(
                        between(2.0, 10.0),
                        between(-3.0, 6.0),
                        between(0.0, 15.0),
                        between(0.0, 0.004),
                        measured.optional())
                .as(Riding::new);
    }

    private Arbitrary<Climate> climates() {
        return Combinators.combine(
                        between(-20.0, 45.0),
                        between(-15.0, 25.0),
                        between(0.0, 40.0),
                        between(10.0, 90.0))
                .as(
                        (air, coldest, warmer, deck) ->
                                new Climate(air, coldest, coldest + warmer, 500.0, deck));
    }

    private Arbitrary<Effort> efforts() {
        return Combinators.combine(
                        between(1.0, 600.0),
                        between(1.0, 60.0),
                        between(0.0, 2.0),
                        between(0.0, 1.0))
                .as(Effort::new);
    }

    private Arbitrary<Margins> margins() {
        return Combinators.combine(
                        between(0.0, 0.4),
                        between(0.0, 0.4),
                        between(0.0, 0.4),
                        between(0.0, 0.1),
                        between(0.0, 0.3),
                        between(0.0, 0.4),
                        between(0.0, 0.4))
                .as(Margins::new);
    }

    /** As many controllers as share the motors evenly. */
    private static Controllers sharing(Controllers controllers, int motors) {
        return controllers.withCount(Math.min(controllers.count(), motors));
    }
}
