package brakewright.worksheet;

import brakewright.heat.DoubtedHeat;
import brakewright.heat.PackHeat;
import brakewright.heat.WarmRide;
import brakewright.limit.MotorHeatBalance;
import brakewright.machine.WindingHeat;
import brakewright.operation.Operation;
import brakewright.powertrain.Powertrain;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How motor and pack warm.
 *
 * @param known of one motor; empty where its thermal figures are not known
 * @param packCruising the pack over a full discharge at the cruise speed; empty where the heat
 *     capacity of the cells is not known or the power cannot be drawn throughout
 * @param packPulling the pack over a full discharge at the set draw, likewise
 * @param warmRide the same as cruising, begun with the warmest pack in use; empty where that is the
 *     pack's own temperature
 */
public record HeatSheet(
        Optional<Known> known,
        Optional<PackHeat> packCruising,
        Optional<PackHeat> packPulling,
        Optional<WarmRide> warmRide) {

    /**
     * What is known of one motor's heat.
     *
     * @param continuousCurrent that the winding bears for ever [A]
     * @param timeAtDriveSetting until the winding limit at the drive current, from the temperature
     *     of the air; empty if never [s]
     * @param timeAtBrakeSetting until the winding limit at the brake current, likewise; empty if
     *     never [s]
     * @param afterCruise the drive current after a long ride at the cruise speed on level road
     *     against the headwind in use
     * @param recovery at rest after the winding limit was reached at the drive current, until a
     *     hard pull of the length in use is borne again; empty where it is not borne even from
     *     cold, or the limit is never reached [s]
     * @param caseLoss the drag loss that was counted [W]
     * @param speed at which that arises [m/s]
     */
    public record Known(
            double continuousCurrent,
            OptionalDouble timeAtDriveSetting,
            OptionalDouble timeAtBrakeSetting,
            WarmStart afterCruise,
            OptionalDouble recovery,
            double caseLoss,
            double speed) {}

    /**
     * Works out how far the temperature after cruising may lie from what is to be expected.
     *
     * @param sheet the worksheet that this is a part of
     * @param spreads how well what decides it is known
     * @return the range; empty where nothing is expected or the ride is stopped on the way
     */
    public Optional<DoubtedHeat> doubtedCruise(Worksheet sheet, DoubtedHeat.Spreads spreads) {
        double power = WarmRide.power(sheet.build(), sheet.operation().drive().powertrain());
        return packCruising
                .filter(heat -> heat.stoppedAfter().isEmpty())
                .map(heat -> DoubtedHeat.atPower(sheet.build(), power, heat, spreads));
    }

    /** With the drive at the fullest charge in use. */
    static HeatSheet of(Build build, Operation operation, DriveSheet drive) {
        Powertrain powertrain = operation.drive().powertrain();
        double cruise = build.use().riding().cruiseSpeed();
        double wind = build.use().riding().headwind();
        double holding =
                powertrain.thrustCurrent(
                        Math.max(0.0, RoadLoad.of(build).force(cruise, 0.0, wind)), cruise);
        double draw = operation.drive().packCurrent();
        boolean reaches = drive.isCruiseHeld(build);
        return new HeatSheet(
                MotorHeatBalance.of(build)
                        .map(heat -> known(build, operation, heat, holding, reaches)),
                reaches
                        ? PackHeat.atPower(build, WarmRide.power(build, powertrain))
                        : Optional.empty(),
                draw > 0.0 ? PackHeat.atCurrent(build, draw) : Optional.empty(),
                WarmRide.startC(build) > build.battery().temperatureC()
                        ? WarmRide.of(build, operation.drive())
                        : Optional.empty());
    }

    private static Known known(
            Build build, Operation operation, WindingHeat heat, double holding, boolean reaches) {
        double drive = operation.drive().motorCurrent();
        OptionalDouble cold = heat.timeToLimit(heat.cold(), drive);
        return new Known(
                heat.continuousCurrent(),
                cold,
                heat.timeToLimit(heat.cold(), operation.brake().motorCurrent()),
                reaches ? afterCruise(build, heat, holding, drive) : new WarmStart.NotReached(),
                cold.isPresent()
                        ? new Recovery(
                                        heat,
                                        MotorHeatBalance.at(build, 0.0).orElse(heat),
                                        drive,
                                        build.use().effort().hardPull())
                                .after(cold.getAsDouble())
                        : OptionalDouble.empty(),
                MotorHeatBalance.caseLoss(build, build.highestSpeed()),
                build.highestSpeed());
    }

    private static WarmStart afterCruise(
            Build build, WindingHeat heat, double holding, double drive) {
        Optional<WindingHeat.Temperatures> ridden =
                MotorHeatBalance.at(build, build.use().riding().cruiseSpeed())
                        .flatMap(cruising -> cruising.steady(holding))
                        .filter(state -> state.windingC() < build.motor().windingLimitC());
        return ridden.isPresent()
                ? new WarmStart.Borne(ridden.get(), heat.timeToLimit(ridden.get(), drive))
                : new WarmStart.TooHot();
    }
}
