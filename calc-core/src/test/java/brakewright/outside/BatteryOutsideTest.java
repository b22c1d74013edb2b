package brakewright.outside;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.battery.TerminalPower;
import brakewright.battery.UnequalCells;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.limit.PackLimit;
import brakewright.powertrain.PackState;
import brakewright.spec.ArrheniusCurve;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Curve;
import brakewright.spec.FuseBreaking;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.Relaxation;
import brakewright.spec.Wiring;
import java.util.OptionalDouble;

/** Pack voltage, sag, sharing and what the pack may give and take. */
class BatteryOutsideTest {

    private static final double MID_CHARGE = 0.5;
    private static final double ROOM_C = 25.0;

    @OutsideCheck(quantity = "voltage-floor current", source = "pulse-power")
    void drawsDownToTheFloorAsTheHandbookSays(OutsideCase check) {
        check.agreesWith(floorCurrent(check, 1, 1));
    }

    @OutsideCheck(quantity = "voltage-ceiling current", source = "pulse-power")
    void takesUpToTheCeilingAsTheHandbookSays(OutsideCase check) {
        check.agreesWith(ceilingCurrent(check));
    }

    @OutsideCheck(quantity = "power at the voltage floor", source = "pulse-power")
    void givesThePulsePowerOfTheHandbook(OutsideCase check) {
        check.agreesWith(floorPower(check, 1, 1));
    }

    @OutsideCheck(quantity = "power at the voltage ceiling", source = "pulse-power")
    void takesThePulsePowerOfTheHandbook(OutsideCase check) {
        check.agreesWith(ceilingPower(check));
    }

    @OutsideCheck(quantity = "voltage-ceiling current", source = "pouch-cell-measurements")
    void takesWhatALaboratoryCouldStillPushIntoANearlyFullCell(OutsideCase check) {
        check.agreesWith(ceilingCurrent(check));
    }

    @OutsideCheck(quantity = "resistance between two temperatures", source = "cell-temperatures")
    void readsResistanceBetweenTemperaturesAsItWasMeasured(OutsideCase check) {
        check.agreesWith(resistanceAtTheTemperatureAsked(check));
    }

    @OutsideCheck(
            quantity = "resistance above the warmest temperature",
            source = "cell-temperatures")
    void readsResistanceAboveTheWarmestTemperatureAsItWasMeasured(OutsideCase check) {
        check.agreesWith(resistanceAtTheTemperatureAsked(check));
    }

    @OutsideCheck(quantity = "voltage-floor current", source = "pulse-power-course")
    void drawsDownToTheFloorAsTheCourseComputes(OutsideCase check) {
        check.agreesWith(floorCurrent(check, 1, 1));
    }

    @OutsideCheck(quantity = "voltage-ceiling current", source = "pulse-power-course")
    void takesUpToTheCeilingAsTheCourseComputes(OutsideCase check) {
        check.agreesWith(ceilingCurrent(check));
    }

    @OutsideCheck(quantity = "power at the voltage floor", source = "pulse-power-course")
    void givesThePowerThatTheCoursePrints(OutsideCase check) {
        check.agreesWith(floorPower(check, 1, 1));
    }

    @OutsideCheck(quantity = "power at the voltage ceiling", source = "pulse-power-course")
    void takesThePowerThatTheCoursePrints(OutsideCase check) {
        check.agreesWith(ceilingPower(check));
    }

    @OutsideCheck(quantity = "voltage-floor current of 10S4P", source = "pulse-power-course")
    void scalesTheFloorCurrentWithCellsInParallel(OutsideCase check) {
        check.agreesWith(floorCurrent(check, 10, 4));
    }

    @OutsideCheck(quantity = "power at the voltage floor of 10S4P", source = "pulse-power-course")
    void scalesThePowerWithAllCells(OutsideCase check) {
        check.agreesWith(floorPower(check, 10, 4));
    }

    @OutsideCheck(quantity = "terminal voltage when drawn", source = "terminal-voltage-textbook")
    void sagsAsTheTextbookSays(OutsideCase check) {
        check.agreesWith(textbookCell(check).terminalVoltage(-check.in("current")));
    }

    @OutsideCheck(quantity = "terminal voltage when charged", source = "terminal-voltage-textbook")
    void risesWhenChargedAsTheTextbookSays(OutsideCase check) {
        check.agreesWith(textbookCell(check).terminalVoltage(check.in("current")));
    }

    @OutsideCheck(quantity = "power to the load", source = "terminal-voltage-textbook")
    void deliversThePowerOfTheTextbook(OutsideCase check) {
        check.agreesWith(deliveredPower(check));
    }

    @OutsideCheck(quantity = "current for a power", source = "terminal-voltage-textbook")
    void findsTheCurrentOfTheTextbookFromItsPower(OutsideCase check) {
        check.agreesWith(currentForPower(check));
    }

    @OutsideCheck(quantity = "heat while charged", source = "terminal-voltage-textbook")
    void heatsACellWhileItIsChargedAsTheTextbookSays(OutsideCase check) {
        double current = check.in("current");
        check.agreesWith(
                TerminalPower.returnedPower(check.in("emf"), check.in("resistance"), current)
                        - check.in("emf") * current);
    }

    @OutsideCheck(quantity = "greatest power drawn", source = "terminal-power-arithmetic")
    void findsTheGreatestPower(OutsideCase check) {
        check.agreesWith(TerminalPower.greatestDrawnPower(check.in("emf"), check.in("resistance")));
    }

    @OutsideCheck(quantity = "power to the load", source = "terminal-power-arithmetic")
    void reachesTheGreatestPowerWhereTheVoltageIsHalved(OutsideCase check) {
        check.agreesWith(deliveredPower(check));
    }

    @OutsideCheck(quantity = "current for a power", source = "terminal-power-arithmetic")
    void findsTheSmallerRoot(OutsideCase check) {
        check.agreesWith(currentForPower(check));
    }

    @OutsideCheck(quantity = "voltage at a drawn power", source = "terminal-power-arithmetic")
    void sagsAtADrawnPower(OutsideCase check) {
        check.agreesWith(textbookCell(check).terminalVoltage(-currentForPower(check)));
    }

    @OutsideCheck(quantity = "current for a returned power", source = "terminal-power-arithmetic")
    void findsTheReturnedCurrent(OutsideCase check) {
        check.agreesWith(
                TerminalPower.returnedCurrent(
                        check.in("emf"), check.in("resistance"), check.in("power")));
    }

    @OutsideCheck(quantity = "voltage at a returned power", source = "terminal-power-arithmetic")
    void risesAtAReturnedPower(OutsideCase check) {
        PackState cell = textbookCell(check);
        check.agreesWith(cell.terminalVoltage(cell.currentInto(check.in("power"))));
    }

    @OutsideCheck(quantity = "pack resistance", source = "pack-arithmetic")
    void addsCellsAndJoints(OutsideCase check) {
        check.agreesWith(packOf(check).resistance(MID_CHARGE, ROOM_C));
    }

    @OutsideCheck(quantity = "pack sag", source = "pack-arithmetic")
    void sagsByCurrentTimesResistance(OutsideCase check) {
        PackState state = PackState.of(batteryOf(packOf(check).pack()), MID_CHARGE, ROOM_C);
        check.agreesWith(state.voltage() - state.terminalVoltage(-check.in("current")));
    }

    @OutsideCheck(quantity = "share of the strongest cell", source = "pack-arithmetic")
    void loadsTheStrongestCellMore(OutsideCase check) {
        check.agreesWith(strongestShare(check));
    }

    @OutsideCheck(quantity = "excess of the strongest cell", source = "pack-arithmetic")
    void loadsTheStrongestCellMoreTheMoreCellsThereAre(OutsideCase check) {
        check.agreesWith(100.0 * (strongestShare(check) - 1.0));
    }

    @OutsideCheck(quantity = "charge rating of a pack", source = "pack-arithmetic")
    void multipliesTheChargeRatingOfTheDataSheet(OutsideCase check) {
        check.agreesWith(
                limitOf(
                        Limits.of(ratedPack(check)).packRegen(),
                        ConstraintId.CELL_CHARGE_RATING,
                        ROOM_C));
    }

    @OutsideCheck(quantity = "discharge rating of a pack", source = "pack-arithmetic")
    void multipliesTheDischargeRatingOfTheDataSheet(OutsideCase check) {
        check.agreesWith(
                limitOf(
                        Limits.of(ratedPack(check)).packDischarge(),
                        ConstraintId.CELL_DISCHARGE_RATING,
                        ROOM_C));
    }

    @OutsideCheck(quantity = "pack voltage", source = "pack-arithmetic")
    void addsTheVoltagesOfCellsInSeries(OutsideCase check) {
        Cell cell = Builds.flatCell(check.in("cell"), 0.01, 1.0, 5.0);
        Pack pack =
                Builds.barePack(cell, (int) check.in("series"), (int) check.in("parallel"), 0.0);
        check.agreesWith(new PackModel(pack).openCircuitVoltage(MID_CHARGE));
    }

    @OutsideCheck(quantity = "charge current over temperature", source = "charger-circuit")
    void holdsBackInTheColdLikeAChargerCircuit(OutsideCase check) {
        Cell cell =
                Builds.charged(
                        Builds.rated(
                                Builds.flatCell(3.6, 1e-6, 2.5, 4.2), 100.0, check.in("setting")),
                        new ChargingWindow(
                                0.0, 60.0, 10.0, 0.2, ChargingWindow.WHATEVER_THE_CHARGE));
        PackLimit regen = Limits.of(bench(Builds.barePack(cell, 1, 1, 0.0))).packRegen();
        check.agreesWith(regen.valueAt(MID_CHARGE, check.in("temperature")));
    }

    @OutsideCheck(quantity = "end of the high-voltage taper", source = "protection-and-fuse")
    void endsTheTaperBelowTheEarliestTripOfAProtectionCircuit(OutsideCase check) {
        Cell cell = Builds.flatCell(3.6, 0.01, 2.5, 4.3);
        Pack pack =
                Builds.barePack(cell, (int) check.in("series"), 1, 0.0)
                        .withProtection(
                                new Protection(
                                        OptionalDouble.empty(),
                                        OptionalDouble.empty(),
                                        OptionalDouble.of(check.in("trip")),
                                        OptionalDouble.empty()))
                        .withWiring(Builds.pack(Builds.trailBoard()).wiring());
        Build build =
                Builds.withMargins(
                        bench(pack), Builds.NO_MARGINS.withOvervoltage(check.in("margin")));
        check.agreesWith(Limits.of(build).highVoltageTaper().value().orElseThrow().ends());
    }

    @OutsideCheck(quantity = "continuous current through a fuse", source = "protection-and-fuse")
    void loadsAFuseAsItsMakerAdvises(OutsideCase check) {
        Cell cell = Builds.flatCell(3.6, 0.01, 2.5, 4.2);
        Pack pack =
                Builds.barePack(cell, 1, 1, 0.0)
                        .withWiring(
                                new Wiring(
                                        OptionalDouble.of(check.in("rating")),
                                        FuseBreaking.UNKNOWN,
                                        OptionalDouble.empty(),
                                        OptionalDouble.empty(),
                                        false));
        Build build =
                Builds.withMargins(bench(pack), Builds.NO_MARGINS.withFuse(check.in("margin")));
        check.agreesWith(limitOf(Limits.of(build).packDischarge(), ConstraintId.MAIN_FUSE, ROOM_C));
    }

    @OutsideCheck(quantity = "resistance of a long pull", source = "sustained-pull")
    void stiffensInALongPullAsALaboratoryMeasured(OutsideCase check) {
        Cell cell =
                Builds.relaxing(
                        Builds.flatCell(3.7, check.in("resistance"), 2.5, 4.2),
                        new Relaxation(check.in("rise"), check.in("relaxation")));
        BatteryModel model = batteryOf(Builds.barePack(cell, 1, 1, 0.0));
        check.agreesWith(1e3 * model.resistance(MID_CHARGE, ROOM_C, check.in("time")));
    }

    private static double resistanceAtTheTemperatureAsked(OutsideCase check) {
        Curve published =
                Curve.of(
                        new double[] {check.in("lower"), check.in("upper")},
                        new double[] {check.in("resistanceLower"), check.in("resistanceUpper")});
        return ArrheniusCurve.through(published).at(check.in("asked"));
    }

    private static double floorCurrent(OutsideCase check, int series, int parallel) {
        return limitOf(
                Limits.of(bench(testedPack(check, series, parallel))).packDischarge(),
                ConstraintId.VOLTAGE_FLOOR,
                ROOM_C);
    }

    private static double ceilingCurrent(OutsideCase check) {
        return limitOf(
                Limits.of(bench(testedPack(check, 1, 1))).packRegen(),
                ConstraintId.VOLTAGE_CEILING,
                ROOM_C);
    }

    private static double floorPower(OutsideCase check, int series, int parallel) {
        BatteryModel battery = batteryOf(testedPack(check, series, parallel));
        return PackState.of(battery, MID_CHARGE, ROOM_C)
                .powerDrawnBy(floorCurrent(check, series, parallel));
    }

    private static double ceilingPower(OutsideCase check) {
        BatteryModel battery = batteryOf(testedPack(check, 1, 1));
        return PackState.of(battery, MID_CHARGE, ROOM_C).powerReturnedBy(ceilingCurrent(check));
    }

    private static BatteryModel batteryOf(Pack pack) {
        return new BatteryModel(Battery.of(pack));
    }

    private static Pack testedPack(OutsideCase check, int series, int parallel) {
        return Builds.barePack(
                Builds.flatCell(
                        check.in("ocv"),
                        check.in("resistance"),
                        check.in("lowest"),
                        check.in("highest")),
                series,
                parallel,
                0.0);
    }

    private static PackModel packOf(OutsideCase check) {
        return new PackModel(
                Builds.barePack(
                        Builds.flatCell(3.7, check.in("cell"), 2.5, 4.2),
                        (int) check.in("series"),
                        (int) check.in("parallel"),
                        check.in("joints")));
    }

    private static Build ratedPack(OutsideCase check) {
        Cell cell =
                Builds.rated(
                        Builds.flatCell(3.6, 1e-6, 2.5, 4.2),
                        check.in("discharge"),
                        check.in("charge"));
        return bench(
                Builds.barePack(cell, (int) check.in("series"), (int) check.in("parallel"), 0.0));
    }

    private static PackState textbookCell(OutsideCase check) {
        return new PackState(MID_CHARGE, ROOM_C, check.in("emf"), check.in("resistance"));
    }

    private static double deliveredPower(OutsideCase check) {
        return TerminalPower.drawnPower(
                check.in("emf"), check.in("resistance"), check.in("current"));
    }

    private static double currentForPower(OutsideCase check) {
        return TerminalPower.drawnCurrent(
                check.in("emf"), check.in("resistance"), check.in("power"));
    }

    private static double strongestShare(OutsideCase check) {
        return UnequalCells.strongestShare((int) check.in("parallel"), check.in("spread"));
    }

    private static Build bench(Pack pack) {
        return Builds.withMargins(Builds.withPack(Builds.trailBoard(), pack), Builds.NO_MARGINS);
    }

    private static double limitOf(PackLimit limit, ConstraintId id, double temperatureC) {
        return limit.constraints().stream()
                .filter(each -> each.id() == id)
                .map((PackConstraint each) -> each.limitAt(MID_CHARGE, temperatureC))
                .findFirst()
                .orElseThrow();
    }
}
