package brakewright.cli.json;

import brakewright.battery.BatteryModel;
import brakewright.braking.Descent;
import brakewright.powertrain.PackState;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.spec.Build;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.HardestBraking;
import brakewright.worksheet.Worksheet;
import java.util.Locale;

/** What a check tells of currents by charge, what the rider feels, heat and the steepest slope. */
final class CheckRideJson {

    private static final int[] STOPS = {1, 10};

    private final JsonText json;
    private final CheckSheet check;
    private final Build build;
    private final BatteryModel pack;

    CheckRideJson(JsonText json, CheckSheet check) {
        this.json = json;
        this.check = check;
        this.build = check.proposed().build();
        this.pack = new BatteryModel(build.battery());
    }

    void write() {
        currents(check.proposed().brakeMap().charges());
        feel();
        CheckJson.pairs(json, check, "winding_after_stops", this::winding);
        CheckJson.pairs(json, check, "steepest_descent", this::descent);
    }

    /** The most that braking sends at any speed in use, cells at the pack's own temperature. */
    private void currents(double[] charges) {
        json.startArray("pack_current_by_charge");
        for (double charge : charges) {
            PackState state = PackState.of(pack, charge, build.battery().temperatureC());
            json.startObject();
            json.number("charge", charge);
            json.number(
                    "may_take_A",
                    check.proposed()
                            .limits()
                            .packRegen()
                            .valueAt(charge, build.battery().temperatureC()));
            flow("present", CheckSheet.greatestReturn(check.present(), state), state);
            flow("proposed", CheckSheet.greatestReturn(check.proposed(), state), state);
            json.endObject();
        }
        json.endArray();
    }

    private void flow(String side, double current, PackState state) {
        json.startObject(side);
        json.number("current_A", current);
        json.number(
                "cell_current_A", pack.cellCurrent(current, state.charge(), state.temperatureC()));
        json.number(
                "cell_voltage_V", pack.cellVoltage(current, state.charge(), state.temperatureC()));
        json.endObject();
    }

    /** As multiples of the weight; what is borne is told without the margins of the limits. */
    private void feel() {
        json.startObject("feel_g");
        felt("present", check.hardestPresent());
        felt("proposed", check.hardestProposed());
        LoadTransfer transfer = new LoadTransfer(build.vehicle().axles());
        json.startObject("bears");
        json.number("tyres_dry", transfer.brakingGrip(build.vehicle().grip()));
        json.number("tyres_wet", transfer.brakingGrip(build.vehicle().gripWet()));
        finite("tipping", transfer.brakingTip());
        finite("rider_balance", RiderBalance.tip(build.rider()));
        json.number("rider", build.criteria().riderDecelerationMax() / Gravity.STANDARD);
        json.endObject();
        json.endObject();
    }

    private void felt(String side, HardestBraking hardest) {
        json.startObject(side);
        json.number("on_tyres", hardest.tyreUse());
        json.number("felt", hardest.felt());
        json.endObject();
    }

    private void finite(String name, double bound) {
        if (Double.isFinite(bound)) {
            json.number(name, bound);
        }
    }

    private void winding(String side, Worksheet sheet) {
        json.startArray(side);
        for (int stops : STOPS) {
            CheckSheet.repeatedStops(sheet, stops)
                    .ifPresent(
                            heat -> {
                                json.startObject();
                                json.number("stops", stops);
                                json.number("winding_C", heat.windingC());
                                json.number("limit_C", heat.limitC());
                                json.endObject();
                            });
        }
        json.endArray();
    }

    private void descent(String side, Worksheet sheet) {
        Descent descent = check.descent(sheet);
        json.startObject(side);
        json.number("slope", descent.slope());
        json.number("speed_m_per_s", descent.speed());
        json.number("charge_from", build.use().chargeFrom());
        json.text("held", descent.isHeld() ? "yes" : "no");
        json.text("ends", descent.end().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        if (descent.isHeld()) {
            finite("held_for_m", descent.distance());
            json.number("end_charge", descent.endCharge());
            json.number("end_cell_voltage_V", descent.endCellVoltage());
            json.number("winding_limit_after_s", descent.windingTime());
        }
        finite("steepest_held", descent.steepestHeld());
        finite("steepest_sustained", descent.steepestSustained());
        json.endObject();
    }
}
