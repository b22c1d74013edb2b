package brakewright.spec;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Every vehicle within the range of the real thing, and the parts it is made of. */
public final class AnyBuild extends DomainContextBase {

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
                .as(
                        (build, rider, margins) ->
                                new Build(
                                        build.title(),
                                        rider,
                                        build.vehicle(),
                                        build.drive(),
                                        build.motor(),
                                        build.controllers(),
                                        build.battery(),
                                        build.use(),
                                        margins,
                                        build.criteria(),
                                        build.settings()));
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

    @Provide
    public Arbitrary<Curve> chargeCurves() {
        return Combinators.combine(
                        between(0.0, 1.0).array(double[].class).ofMinSize(0).ofMaxSize(8),
                        between(2.5, 4.2).array(double[].class).ofSize(10))
                .as(
                        (inner, voltages) -> {
                            double[] charges =
                                    Arrays.stream(concat(new double[] {0.0, 1.0}, inner))
                                            .sorted()
                                            .distinct()
                                            .toArray();
                            double[] rising =
                                    Arrays.stream(voltages)
                                            .sorted()
                                            .limit(charges.length)
                                            .toArray();
                            return Curve.of(charges, rising);
                        });
    }

    @Provide
    public Arbitrary<Cell> cells() {
        Arbitrary<Cell> without =
                Combinators.combine(
                                chargeCurves(),
                                between(0.002, 0.06),
                                between(2.0, 45.0),
                                between(1.0, 12.0),
                                between(1.0, 3.0),
                                between(0.1, 1.0),
                                between(0.0, 30.0).optional())
                        .as(
                                (voltage,
                                        resistance,
                                        discharge,
                                        charge,
                                        emptyFactor,
                                        coldShare,
                                        pulse) ->
                                        new Cell(
                                                3.0,
                                                discharge,
                                                charge,
                                                4.2,
                                                2.5,
                                                resistance,
                                                voltage,
                                                Curve.of(
                                                        new double[] {0.0, 0.2, 0.9, 1.0},
                                                        new double[] {
                                                            emptyFactor,
                                                            1.0,
                                                            1.0,
                                                            1.0 + coldShare / 2.0
                                                        }),
                                                Curve.of(
                                                        new double[] {-10.0, 25.0, 45.0},
                                                        new double[] {4.0, 1.0, 0.7}),
                                                new Relaxation(0.0, 60.0),
                                                OptionalDouble.empty(),
                                                new ChargingWindow(0.0, 45.0, 10.0, coldShare),
                                                new DischargingWindow(-20.0, 60.0),
                                                pulse.map(
                                                        time ->
                                                                new PulseRating(
                                                                        OptionalDouble.of(
                                                                                1.5 * discharge),
                                                                        OptionalDouble.of(
                                                                                2.0 * charge),
                                                                        time + 0.1))));
        return Combinators.combine(
                        without, between(1.0, 20.0), relaxations(), between(20.0, 300.0).optional())
                .as(
                        (cell, capacityAh, relaxation, heatCapacity) ->
                                new Cell(
                                        capacityAh,
                                        cell.dischargeCurrent(),
                                        cell.chargeCurrent(),
                                        cell.voltageMax(),
                                        cell.voltageMin(),
                                        cell.resistance(),
                                        cell.openCircuitVoltage(),
                                        cell.resistanceByCharge(),
                                        cell.resistanceByTemperature(),
                                        relaxation,
                                        present(heatCapacity),
                                        cell.charging(),
                                        cell.discharging(),
                                        cell.pulse()));
    }

    private Arbitrary<Relaxation> relaxations() {
        return Combinators.combine(between(0.0, 1.5), between(20.0, 200.0)).as(Relaxation::new);
    }

    @Provide
    public Arbitrary<Pack> packs() {
        Arbitrary<Pack> without =
                Combinators.combine(
                                cells(),
                                Arbitraries.integers().between(3, 24),
                                Arbitraries.integers().between(1, 12),
                                between(0.0, 0.05),
                                between(0.0, 0.4),
                                between(-5.0, 50.0),
                                protections(),
                                wirings())
                        .as(
                                (cell,
                                        series,
                                        parallel,
                                        joints,
                                        spread,
                                        temperatureC,
                                        protection,
                                        wiring) ->
                                        new Pack(
                                                cell,
                                                series,
                                                parallel,
                                                joints,
                                                spread,
                                                temperatureC,
                                                OptionalDouble.empty(),
                                                OptionalDouble.empty(),
                                                protection,
                                                wiring));
        return Combinators.combine(
                        without, between(0.1, 5.0).optional(), between(0.0, 1.0).optional())
                .as(
                        (pack, toAir, joinedAt) ->
                                new Pack(
                                        pack.cell(),
                                        pack.series(),
                                        pack.parallel(),
                                        pack.jointResistance(),
                                        pack.resistanceSpread(),
                                        pack.temperatureC(),
                                        present(toAir),
                                        present(joinedAt),
                                        pack.protection(),
                                        pack.wiring()));
    }

    @Provide
    public Arbitrary<Battery> batteries() {
        return packs().map(Battery::of);
    }

    private Arbitrary<Protection> protections() {
        return Combinators.combine(
                        between(20.0, 200.0).optional(),
                        between(5.0, 80.0).optional(),
                        between(4.15, 4.35).optional(),
                        between(2.3, 3.0).optional())
                .as(
                        (discharge, charge, over, under) ->
                                new Protection(
                                        present(discharge),
                                        present(charge),
                                        present(over),
                                        present(under)));
    }

    private Arbitrary<Wiring> wirings() {
        return Combinators.combine(
                        between(10.0, 150.0).optional(),
                        between(10.0, 150.0).optional(),
                        between(10.0, 150.0).optional())
                .as((fuse, wire, plug) -> new Wiring(present(fuse), present(wire), present(plug)));
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
                        between(1e-4, 5e-3).optional())
                .as(
                        (count, basis, motor, pack, voltage, efficiency, capacitance) ->
                                new Controllers(
                                        count,
                                        basis,
                                        motor,
                                        pack,
                                        voltage,
                                        efficiency,
                                        present(capacitance)));
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
        return Combinators.combine(between(-20.0, 45.0), between(-15.0, 25.0), between(0.0, 40.0))
                .as((air, coldest, warmer) -> new Climate(air, coldest, coldest + warmer, 500.0));
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
                        between(0.0, 0.4))
                .as(Margins::new);
    }

    /** As many controllers as share the motors evenly. */
    private static Controllers sharing(Controllers controllers, int motors) {
        return new Controllers(
                Math.min(controllers.count(), motors),
                controllers.basis(),
                controllers.motorCurrentRating(),
                controllers.packCurrentRating(),
                controllers.voltageRating(),
                controllers.efficiency(),
                controllers.busCapacitance());
    }

    private static Arbitrary<Double> between(double low, double high) {
        return Arbitraries.doubles().between(low, high).ofScale(6);
    }

    private static OptionalDouble present(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static double[] concat(double[] first, double[] second) {
        double[] all = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }
}
