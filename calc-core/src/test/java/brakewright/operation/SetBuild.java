package brakewright.operation;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.spec.AnyBuild;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Climate;
import brakewright.spec.Controllers;
import brakewright.spec.Curve;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.spec.Use;
import brakewright.spec.Wiring;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.domains.DomainContextBase;

/**
 * Every vehicle with settings from nothing to beyond its limits, some left empty.
 *
 * <p>So much can be wrong with such a vehicle that nearly all are outside limits. Most are
 * therefore tamed: their cells are sound and at 25 °C, colder only at times, their controllers bear
 * the voltage and no setting is beyond its own limit. Every fourth of these has two unlike packs
 * side by side, every fourth two end to end.
 */
public final class SetBuild extends DomainContextBase {

    /** Settings as shares of what they are held against. */
    private record Shares(
            Optional<Double> drive,
            Optional<Double> brake,
            Optional<Double> discharge,
            Optional<Double> regen,
            Optional<Double> low,
            Optional<Double> high,
            Optional<Double> cap,
            double band) {}

    /** The use of a tamed vehicle. */
    private record Tame(double full, double coldestC) {}

    /** What becomes of the pack. */
    private enum Packs {
        ONE,
        STILL_ONE,
        SIDE_BY_SIDE,
        END_TO_END
    }

    @Provide
    public Arbitrary<Build> builds() {
        return Combinators.combine(
                        new AnyBuild().builds(),
                        Arbitraries.of(Packs.class),
                        shares(1.6),
                        shares(0.9),
                        Combinators.combine(between(0.5, 1.0), between(-15.0, 25.0))
                                .as(Tame::new)
                                .optional(0.7))
                .as(
                        (build, packs, shares, low, tame) ->
                                tame.isPresent()
                                        ? set(joined(tamed(build, tame.get()), packs), low)
                                        : set(build, shares));
    }

    private static Build tamed(Build build, Tame tame) {
        Build steady =
                Builds.withPack(
                        build,
                        Builds.withCell(
                                Builds.pack(build).at(25.0), tamed(Builds.pack(build).cell())));
        Controllers old = build.controllers();
        Use use = build.use();
        Climate climate = use.climate();
        double full = new BatteryModel(steady.battery()).openCircuitVoltage(1.0);
        return Builds.withControllers(steady, old.withVoltageRating(3.0 * full))
                .withUse(
                        use.withChargeTo(0.6 * use.chargeTo())
                                .withChargeFrom(tame.full)
                                .withClimate(
                                        new Climate(
                                                climate.ambientC(),
                                                tame.coldestC,
                                                25.0,
                                                climate.altitude(),
                                                30.0)));
    }

    /** The same cell with a voltage from near its lowest to near its highest. */
    private static Cell tamed(Cell cell) {
        return cell.withOpenCircuitVoltage(
                Curve.of(new double[] {0.0, 0.1, 0.9, 1.0}, new double[] {3.0, 3.4, 4.05, 4.15}));
    }

    private static Arbitrary<Shares> shares(double most) {
        return Combinators.combine(
                        share(0.0, most),
                        share(0.0, most),
                        share(0.0, most),
                        share(0.0, most),
                        share(0.9, 1.2),
                        share(0.8, 1.05),
                        share(0.3, Math.max(1.0, most)),
                        between(0.005, 0.2))
                .as(Shares::new);
    }

    private static Arbitrary<Optional<Double>> share(double least, double most) {
        return between(least, most).optional(0.7);
    }

    private static Arbitrary<Double> between(double least, double most) {
        return Arbitraries.doubles()
                .between(least, most)
                .ofScale(6)
                .withDistribution(RandomDistribution.uniform());
    }

    private static Build joined(Build build, Packs packs) {
        if (packs == Packs.ONE || packs == Packs.STILL_ONE) {
            return build;
        }
        Pack first = Builds.pack(build);
        Pack second =
                first.withParallel(first.parallel() + 1)
                        .withJointResistance(1.5 * first.jointResistance())
                        .withResistanceSpread(first.resistanceSpread() / 2.0)
                        .withWiring(Wiring.NONE);
        Joining joining = packs == Packs.SIDE_BY_SIDE ? Joining.PARALLEL : Joining.SERIES;
        return build.withBattery(
                new Battery(List.of(first, second), joining, first.wiring(), 0.002));
    }

    private static Build set(Build build, Shares shares) {
        Limits limits = Limits.of(build);
        BatteryModel model = new BatteryModel(build.battery());
        double temperature = build.battery().temperatureC();
        int count = build.controllers().count();
        // unset is at the limit to the last digit, where several packs may exceed it by rounding
        Optional<Double> regen =
                build.battery().isOnePack()
                        ? shares.regen
                        : shares.regen.or(() -> Optional.of(0.9));
        double full = model.openCircuitVoltage(1.0);
        double empty = model.openCircuitVoltage(0.0);
        return build.withSettings(
                new Settings(
                        of(shares.drive, limits.motorDrive().value()),
                        of(shares.brake, limits.motorBrake().value()),
                        of(
                                shares.discharge,
                                limits.packDischarge().staticPart(temperature).value() / count),
                        of(regen, limits.packRegen().staticPart(temperature).value() / count),
                        shares.low.map(
                                share ->
                                        new Taper(
                                                share * empty * (1.0 + shares.band),
                                                share * empty)),
                        shares.high.map(
                                share ->
                                        new Taper(
                                                share * full, share * full * (1.0 + shares.band))),
                        of(
                                shares.cap,
                                Math.min(build.use().speedMax(), limits.speedCap().value()))));
    }

    private static OptionalDouble of(Optional<Double> share, double whole) {
        return share.map(each -> OptionalDouble.of(each * whole)).orElse(OptionalDouble.empty());
    }
}
