package brakewright.outside;

import brakewright.battery.BatteryModel;
import brakewright.battery.Branches;
import brakewright.powertrain.PackState;
import brakewright.spec.Battery;
import brakewright.spec.Builds;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import java.util.List;

/** Batteries of several packs, and of several voltages. */
class JoinedOutsideTest {

    private static final double MID_CHARGE = 0.5;
    private static final double ROOM_C = 25.0;

    @OutsideCheck(quantity = "voltage of two in parallel", source = "joined-sources")
    void standsAtTheVoltageOfTheTextbook(OutsideCase check) {
        check.agreesWith(branches(check).voltage(drawn(check)));
    }

    @OutsideCheck(quantity = "current of the first in parallel", source = "joined-sources")
    void loadsTheFirstAsTheTextbookSays(OutsideCase check) {
        check.agreesWith(branches(check).current(0, drawn(check)));
    }

    @OutsideCheck(quantity = "current of the second in parallel", source = "joined-sources")
    void loadsOrChargesTheSecondAsTheTextbookSays(OutsideCase check) {
        check.agreesWith(branches(check).current(1, drawn(check)));
    }

    @OutsideCheck(quantity = "load current of two in parallel", source = "joined-sources")
    void feedsALoadAsTheTextbookSays(OutsideCase check) {
        check.agreesWith(drawn(check));
    }

    @OutsideCheck(quantity = "current from packs in series", source = "joined-cells-textbook")
    void feedsALoadFromUnequalPacksInSeries(OutsideCase check) {
        check.agreesWith(seriesCurrent(check));
    }

    @OutsideCheck(quantity = "power from packs in series", source = "joined-cells-textbook")
    void deliversThePowerOfUnequalPacksInSeries(OutsideCase check) {
        check.agreesWith(series(check).powerDrawnBy(seriesCurrent(check)));
    }

    private static Branches branches(OutsideCase check) {
        return new Branches(
                List.of(
                        new Branches.Branch(check.in("first"), check.in("first-resistance")),
                        new Branches.Branch(check.in("second"), check.in("second-resistance"))));
    }

    /** The voltage falls along a line with the current, until it meets that of the load. */
    private static double drawn(OutsideCase check) {
        double open = branches(check).voltage(0.0);
        double resistance = open - branches(check).voltage(1.0);
        return open / (resistance + check.in("load"));
    }

    private static PackState series(OutsideCase check) {
        Battery battery =
                Builds.joined(
                        Joining.SERIES,
                        List.of(
                                pack(check, "first", (int) check.in("cells")),
                                pack(check, "second", 1)));
        return PackState.of(new BatteryModel(battery), MID_CHARGE, ROOM_C);
    }

    private static double seriesCurrent(OutsideCase check) {
        PackState state = series(check);
        return state.voltage() / (state.resistance() + check.in("load"));
    }

    private static Pack pack(OutsideCase check, String name, int series) {
        return Builds.barePack(
                Builds.flatCell(check.in(name), check.in(name + "-resistance"), 0.5, 2.0),
                series,
                1,
                0.0);
    }
}
