package brakewright.powertrain;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.spec.AnyBuild;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Curve;
import brakewright.spec.Joining;
import brakewright.spec.MotorHeat;
import brakewright.spec.Pack;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.spec.Wiring;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/**
 * Every vehicle with its currents set, with or without a low-voltage taper, on one or two packs.
 */
public final class AnyDriven extends DomainContextBase {

    /** The cables that several packs share [Ω]. */
    private static final double TRUNK = 0.003;

    @Provide
    public Arbitrary<Build> driven() {
        Arbitrary<Build> bare =
                Combinators.combine(
                                new AnyBuild().builds(),
                                Arbitraries.of(1, 2, 3),
                                Arbitraries.integers().between(1, 12))
                        .as(AnyDriven::onPacks);
        return Combinators.combine(
                        bare,
                        between(5.0, 120.0),
                        between(0.0, 80.0),
                        between(5.0, 80.0),
                        between(0.0, 40.0),
                        tapers().optional())
                .as(
                        (build, drive, brake, discharge, regen, taper) ->
                                build.withSettings(
                                        new Settings(
                                                OptionalDouble.of(drive),
                                                OptionalDouble.of(brake),
                                                OptionalDouble.of(discharge),
                                                OptionalDouble.of(regen),
                                                taper.map(shares -> scaled(shares, build)),
                                                Optional.empty(),
                                                OptionalDouble.empty())));
    }

    @Provide
    public Arbitrary<MotorHeat> motorHeat() {
        return new AnyBuild().motorHeat();
    }

    /** The drive that the settings of a vehicle make. */
    public static ElectricDrive drive(Build build) {
        return Operation.of(build, Limits.of(build)).drive();
    }

    /** Shares of the voltage of the full packs. */
    private static Arbitrary<Taper> tapers() {
        return Combinators.combine(between(0.5, 0.95), between(0.01, 0.3))
                .as((ends, band) -> new Taper(ends + band, ends));
    }

    private static Taper scaled(Taper shares, Build build) {
        double full = PackState.of(model(build), 1.0, build.battery().temperatureC()).voltage();
        return new Taper(full * shares.begins(), full * shares.ends());
    }

    /**
     * One pack, or a second one of the same cells, beside it or behind it; level curves stay one.
     */
    private static Build onPacks(Build build, int arrangement, int parallel) {
        Pack first = build.battery().packs().get(0);
        Curve voltage = first.cell().openCircuitVoltage();
        if (arrangement == 1 || voltage.at(0.0) == voltage.at(1.0)) {
            return build;
        }
        Pack second = first.withParallel(parallel);
        return build.withBattery(
                new Battery(
                        List.of(first, second),
                        arrangement == 2 ? Joining.PARALLEL : Joining.SERIES,
                        Wiring.NONE,
                        TRUNK));
    }

    private static BatteryModel model(Build build) {
        return new BatteryModel(build.battery());
    }

    private static Arbitrary<Double> between(double low, double high) {
        return Arbitraries.doubles().between(low, high).ofScale(6);
    }
}
