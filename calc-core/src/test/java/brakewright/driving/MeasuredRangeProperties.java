package brakewright.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Riding;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyDriven.class)
@Domain(DomainContext.Global.class)
class MeasuredRangeProperties {

    private static final int STEPS = 20_000;

    /** The middle of a step stands for all of it; kinks of the curves lie inside steps. */
    private static final double COARSE = 1e-5;

    /** Energy at the terminals, ∫V·dq over the charge that is used. */
    @Property(tries = 200)
    void theDistanceTimesTheConsumptionIsTheEnergyAtTheTerminals(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 15.0, max = 300.0) double energyPerMetre,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 12.0) double speed) {
        Riding.Measured measured = new Riding.Measured(energyPerMetre, speed);
        MeasuredRange range = MeasuredRange.of(build, AnyDriven.drive(build), measured);
        double from = build.use().chargeFrom();
        Assume.that(from - range.downTo() > 0.01);
        double width = (from - range.downTo()) / STEPS;
        BatteryModel model = new BatteryModel(build.battery());
        double cellsC = build.battery().temperatureC();
        double energy = 0.0;
        for (int step = 0; step < STEPS; step++) {
            double charge = from - (step + 0.5) * width;
            PackState pack = PackState.of(model, charge, cellsC, Double.POSITIVE_INFINITY);
            double voltage = pack.terminalVoltage(pack.currentInto(-energyPerMetre * speed));
            energy += voltage * 3600.0 * model.capacityAh() * width;
        }
        // Near the greatest power the current ends in a root, which no step is fine enough for.
        Assume.that(energyPerMetre * speed < 0.9 * pack(build, range.downTo()).greatestPower());
        assertThat(range.distance() * energyPerMetre).isCloseTo(energy, within(COARSE * energy));
        assertThat(range.measured()).isEqualTo(measured);
    }

    @Property(tries = 300)
    void ridesAsLongAsTheSettingsGiveThePower(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 15.0, max = 300.0) double energyPerMetre,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 12.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double share) {
        ElectricDrive drive = AnyDriven.drive(build);
        double power = energyPerMetre * speed;
        double from = build.use().chargeFrom();
        double end =
                MeasuredRange.of(build, drive, new Riding.Measured(energyPerMetre, speed)).downTo();
        if (end > build.use().chargeTo() && end < from) {
            PackState edge = pack(build, end);
            assertThat(edge.powerDrawnBy(drive.settledPackLimit(edge)))
                    .isCloseTo(power, within(1e-6 * power + 1e-8 * steepness(build) * power));
        }
        if (end == from) {
            PackState full = pack(build, from);
            assertThat(full.powerDrawnBy(drive.settledPackLimit(full))).isLessThan(power);
        }
    }

    @Property(tries = 300)
    void aHigherConsumptionNeverLeadsFarther(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 15.0, max = 300.0) double energyPerMetre,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 12.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 1.05, max = 2.0) double factor) {
        ElectricDrive drive = AnyDriven.drive(build);
        MeasuredRange less =
                MeasuredRange.of(build, drive, new Riding.Measured(energyPerMetre, speed));
        Assume.that(less.distance() > 0.0);
        MeasuredRange more =
                MeasuredRange.of(build, drive, new Riding.Measured(factor * energyPerMetre, speed));
        assertThat(more.distance()).isLessThan(less.distance());
        assertThat(more.downTo()).isGreaterThanOrEqualTo(less.downTo() - 1e-8);
    }

    /** How many volts a pack loses per charge at most, in units of its voltage. */
    private static double steepness(Build build) {
        double[] knots = new BatteryModel(build.battery()).knots();
        double narrowest = 1.0;
        for (int i = 1; i < knots.length; i++) {
            narrowest = Math.min(narrowest, knots[i] - knots[i - 1]);
        }
        return 100.0 / narrowest;
    }

    private static PackState pack(Build build, double charge) {
        return PackState.of(
                new BatteryModel(build.battery()),
                charge,
                build.battery().temperatureC(),
                Double.POSITIVE_INFINITY);
    }
}
