package brakewright.cli.json;

import brakewright.braking.Descent;
import brakewright.heat.RepeatedStops;
import brakewright.spec.Build;
import brakewright.worksheet.Bearing;
import brakewright.worksheet.Both;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.HardestBraking;
import brakewright.worksheet.ReturnRow;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a check tells of currents by charge, what the rider feels, heat and the steepest slope. */
final class CheckRideJson {

    private static final int[] STOPS = {1, 10};

    private final JsonText json;
    private final CheckSheet check;
    private final Build build;

    CheckRideJson(JsonText json, CheckSheet check) {
        this.json = json;
        this.check = check;
        this.build = check.proposed().build();
    }

    void write() {
        currents();
        feel();
        windings();
        CheckJson.pairs(json, "steepest_descent", check.descent(), this::descent);
    }

    /** The most that braking sends at any speed in use, cells at the pack's own temperature. */
    private void currents() {
        json.startArray("pack_current_by_charge");
        for (ReturnRow row : check.returned(check.charges())) {
            json.startObject();
            json.number("charge", row.charge());
            json.number("may_take_A", row.mayTake());
            flow("present", row.flows().present());
            flow("proposed", row.flows().proposed());
            json.endObject();
        }
        json.endArray();
    }

    private void flow(String side, ReturnRow.Flow flow) {
        json.startObject(side);
        json.number("current_A", flow.current());
        json.number("cell_current_A", flow.cellCurrent());
        json.number("cell_voltage_V", flow.cellVoltage());
        json.endObject();
    }

    /** As multiples of the weight; what is borne is told without the margins of the limits. */
    private void feel() {
        json.startObject("feel_g");
        felt("present", check.hardestPresent());
        felt("proposed", check.hardestProposed());
        Bearing bears = check.bears();
        json.startObject("bears");
        json.number("tyres_dry", bears.tyresDry());
        json.number("tyres_wet", bears.tyresWet());
        finite("tipping", bears.tipping());
        finite("rider_balance", bears.riderBalance());
        json.number("rider", bears.rider());
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

    private void windings() {
        List<Both<Optional<RepeatedStops>>> heats =
                Arrays.stream(STOPS).mapToObj(check::repeatedStops).toList();
        json.startObject("winding_after_stops");
        winding("present", heats.stream().map(Both::present));
        winding("proposed", heats.stream().map(Both::proposed));
        json.endObject();
    }

    private void winding(String side, Stream<Optional<RepeatedStops>> heats) {
        json.startArray(side);
        heats.flatMap(Optional::stream)
                .forEach(
                        heat -> {
                            json.startObject();
                            json.number("stops", heat.stops());
                            json.number("winding_C", heat.windingC());
                            json.number("limit_C", heat.limitC());
                            json.endObject();
                        });
        json.endArray();
    }

    private void descent(String side, Descent descent) {
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
