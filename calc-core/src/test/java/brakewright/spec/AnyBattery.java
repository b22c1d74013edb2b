package brakewright.spec;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.Tuple;
import net.jqwik.api.domains.DomainContextBase;

/** Every battery within the range of the real thing, and the parts it is made of. */
public class AnyBattery extends DomainContextBase {

    /** Of a cell that takes its charge current up to 60 % alone. */
    private static final Curve UP_TO_A_CHARGE =
            Curve.of(new double[] {0.0, 0.6, 0.65, 1.0}, new double[] {1.0, 1.0, 0.4, 0.3});

    /**
     * Points lie a thousandth of the charge apart or more, as in a table; coarse voltages make
     * curves that stay level between some of them.
     */
    @Provide
    public Arbitrary<Curve> chargeCurves() {
        return Combinators.combine(
                        Arbitraries.doubles()
                                .between(0.0, 1.0)
                                .ofScale(3)
                                .array(double[].class)
                                .ofMinSize(0)
                                .ofMaxSize(8),
                        evenly(2.5, 4.2).array(double[].class).ofSize(10),
                        Arbitraries.of(1e6, 1e6, 1e6, 10.0))
                .as(
                        (inner, voltages, fineness) -> {
                            double[] charges =
                                    Arrays.stream(concat(new double[] {0.0, 1.0}, inner))
                                            .sorted()
                                            .distinct()
                                            .toArray();
                            double[] rising =
                                    Arrays.stream(voltages)
                                            .limit(charges.length)
                                            .map(each -> Math.rint(fineness * each) / fineness)
                                            .sorted()
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
                                                new ResistanceByCharge(
                                                        Curve.of(
                                                                new double[] {0.0, 0.2, 0.9, 1.0},
                                                                new double[] {
                                                                    emptyFactor,
                                                                    1.0,
                                                                    1.0,
                                                                    1.0 + coldShare / 2.0
                                                                }),
                                                        Curve.of(
                                                                new double[] {0.1, 0.4, 1.0},
                                                                new double[] {
                                                                    0.1 * coldShare, 0.0, 0.1
                                                                }),
                                                        Curve.of(
                                                                new double[] {0.1, 0.3, 1.0},
                                                                new double[] {
                                                                    emptyFactor - 1.0, 0.0, 0.0
                                                                })),
                                                ArrheniusCurve.through(
                                                        Curve.of(
                                                                new double[] {-10.0, 25.0, 45.0},
                                                                new double[] {4.0, 1.0, 0.7})),
                                                new Relaxation(0.0, 60.0),
                                                OptionalDouble.empty(),
                                                new ChargingWindow(
                                                        0.0,
                                                        45.0,
                                                        10.0,
                                                        coldShare,
                                                        charge < 4.0
                                                                ? UP_TO_A_CHARGE
                                                                : ChargingWindow
                                                                        .WHATEVER_THE_CHARGE),
                                                new DischargingWindow(-20.0, 60.0),
                                                pulse.map(
                                                        time ->
                                                                new PulseRating(
                                                                        OptionalDouble.of(
                                                                                1.5 * discharge),
                                                                        OptionalDouble.of(
                                                                                2.0 * charge),
                                                                        time + 0.1)),
                                                2.5));
        return Combinators.combine(
                        without, between(1.0, 20.0), relaxations(), between(20.0, 300.0).optional())
                .as(
                        (cell, capacityAh, relaxation, heatCapacity) ->
                                cell.withCapacityAh(capacityAh)
                                        .withRelaxation(relaxation)
                                        .withHeatCapacity(present(heatCapacity)));
    }

    private Arbitrary<Relaxation> relaxations() {
        return Combinators.combine(
                        between(0.0, 1.5), between(20.0, 200.0), between(1.0, 1.5), onsets())
                .as(
                        (rise, constant, nearEmpty, onset) ->
                                new Relaxation(
                                        rise,
                                        constant,
                                        Curve.of(
                                                new double[] {0.0, 0.2},
                                                new double[] {nearEmpty, 1.0}),
                                        onset));
    }

    private Arbitrary<Onset> onsets() {
        return Combinators.combine(between(0.3, 1.0), between(0.3, 30.0)).as(Onset::new);
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
                        without,
                        groupSpreads(),
                        between(0.1, 5.0).optional(),
                        between(0.0, 1.0).optional())
                .as(
                        (pack, groups, toAir, joinedAt) ->
                                pack.withGroupSpread(groups)
                                        .withToAir(present(toAir))
                                        .withJoinedAt(present(joinedAt)));
    }

    /** Alike in one case of three. */
    @Provide
    public Arbitrary<GroupSpread> groupSpreads() {
        return Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.just(GroupSpread.NONE)),
                Tuple.of(
                        2,
                        Combinators.combine(
                                        between(0.0, 0.05), between(0.0, 0.1), between(0.0, 0.5))
                                .as(GroupSpread::new)));
    }

    /** One pack in two cases of three. */
    @Provide
    public Arbitrary<Battery> batteries() {
        return Arbitraries.frequencyOf(
                Tuple.of(2, packs().map(Battery::of)), Tuple.of(1, joined().map(Joined::battery)));
    }

    /** Two or three packs, alike or not. */
    @Provide
    public Arbitrary<Joined> joined() {
        return Combinators.combine(
                        packs(),
                        companions().list().ofMinSize(1).ofMaxSize(2),
                        Arbitraries.of(Joining.class),
                        wirings(),
                        between(0.0, 0.02))
                .as(
                        (first, others, wish, trunk, trunkResistance) -> {
                            Joining joining = Companion.fits(first) ? wish : Joining.SERIES;
                            List<Pack> packs =
                                    Stream.concat(
                                                    Stream.of(first),
                                                    others.stream()
                                                            .map(each -> each.of(first, joining)))
                                            .toList();
                            return new Joined(new Battery(packs, joining, trunk, trunkResistance));
                        })
                .withoutEdgeCases();
    }

    private Arbitrary<Companion> companions() {
        return Combinators.combine(
                        packs(),
                        Arbitraries.of(Companion.Likeness.class),
                        Arbitraries.integers().between(-1, 1),
                        between(-0.3, 0.6),
                        between(-0.3, 0.3))
                .as(Companion::new);
    }

    /** One of ten sits on the charge lead alone. */
    private Arbitrary<Protection> protections() {
        return Arbitraries.frequencyOf(
                Tuple.of(9, trips()), Tuple.of(1, Arbitraries.just(Protection.BYPASSED)));
    }

    private Arbitrary<Protection> trips() {
        return Combinators.combine(
                        between(20.0, 200.0).optional(),
                        between(5.0, 80.0).optional(),
                        between(4.15, 4.35).optional(),
                        between(2.3, 3.0).optional(),
                        between(0.0, 0.3).optional(),
                        between(0.0, 0.3).optional(),
                        between(0.0, 0.3).optional(),
                        between(0.0, 40.0).optional())
                .as(
                        (discharge,
                                charge,
                                over,
                                under,
                                chargeDelay,
                                overDelay,
                                outDelay,
                                underDelay) ->
                                new Protection(
                                        present(discharge),
                                        present(charge),
                                        present(over),
                                        present(under),
                                        Protection.Path.BOTH,
                                        present(chargeDelay),
                                        present(overDelay),
                                        present(outDelay),
                                        present(underDelay)));
    }

    /** Fuses that break the voltage of any of these: what else is asked is not drowned by one. */
    private Arbitrary<Wiring> wirings() {
        return Combinators.combine(
                        between(10.0, 150.0).optional(),
                        between(400.0, 1000.0).optional(),
                        between(500.0, 20000.0).optional(),
                        between(10.0, 150.0).optional(),
                        between(10.0, 150.0).optional())
                .as(
                        (fuse, voltage, capacity, wire, plug) ->
                                new Wiring(
                                        present(fuse),
                                        new FuseBreaking(present(voltage), present(capacity)),
                                        present(wire),
                                        present(plug),
                                        false));
    }

    private static Arbitrary<Double> evenly(double low, double high) {
        return Arbitraries.doubles()
                .between(low, high)
                .ofScale(6)
                .withDistribution(RandomDistribution.uniform());
    }

    static Arbitrary<Double> between(double low, double high) {
        return Arbitraries.doubles().between(low, high).ofScale(6);
    }

    static OptionalDouble present(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static double[] concat(double[] first, double[] second) {
        double[] all = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }
}
