package brakewright.cli.json;

import brakewright.driving.Cruise;
import brakewright.driving.MeasuredRange;
import brakewright.driving.StopAndGo;
import brakewright.powertrain.Spending;
import brakewright.worksheet.RangeSheet;
import java.util.Locale;

/** Writes how far the vehicle goes. */
final class RangeJson {

    private static final double JOULES_PER_WATT_HOUR = 3600.0;
    private static final double METRES_PER_KILOMETRE = 1000.0;

    /** Source: International yard and pound agreement (1959): 1 yd is 0.9144 m. */
    private static final double METRES_PER_MILE = 1609.344;

    private final JsonText json;

    RangeJson(JsonText json) {
        this.json = json;
    }

    void write(RangeSheet range) {
        json.startArray("range");
        range.steady().forEach(ride -> cruise("steady", ride));
        cruise("cruise", range.cruise());
        range.town().ifPresent(this::town);
        range.measured().ifPresent(this::measured);
        json.endArray();
        json.startArray("range_effects");
        for (RangeSheet.Effect effect : range.effects()) {
            json.startObject();
            json.text("change", effect.change().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            json.number("distance_km", effect.distance() / METRES_PER_KILOMETRE);
            json.endObject();
        }
        json.endArray();
    }

    private void cruise(String kind, Cruise ride) {
        start(kind, ride.speed(), ride.consumption(), ride.distance());
        json.number("distance_held_km", ride.distanceHeld() / METRES_PER_KILOMETRE);
        json.number("held_down_to_charge", ride.heldDownTo());
        json.number("time_s", ride.time());
        json.startObject("spent");
        spent(ride.spent());
        json.endObject();
        json.startObject("spent_held");
        spent(ride.spentHeld());
        json.endObject();
        json.endObject();
    }

    private void spent(Spending spent) {
        energy("air_Wh", spent.air());
        energy("rolling_Wh", spent.rolling());
        energy("climbing_Wh", spent.climbing());
        energy("moving_Wh", spent.moving());
        energy("drive_Wh", spent.drive());
        energy("motor_drag_Wh", spent.motorDrag());
        energy("copper_Wh", spent.copper());
        energy("controller_Wh", spent.controller());
        energy("idle_Wh", spent.idle());
        energy("pack_Wh", spent.pack());
        energy("cells_Wh", spent.sum());
    }

    private void energy(String name, double joules) {
        json.number(name, joules / JOULES_PER_WATT_HOUR);
    }

    private void town(StopAndGo ride) {
        start("town", ride.speed(), ride.consumption(), ride.distance());
        json.number("reached_m_per_s", ride.reached());
        json.number("mean_speed_m_per_s", ride.meanSpeed());
        json.number("returned_share", ride.returnedShare());
        json.endObject();
    }

    private void measured(MeasuredRange range) {
        start(
                "measured",
                range.measured().speed(),
                range.measured().energyPerMetre(),
                range.distance());
        json.number("held_down_to_charge", range.downTo());
        json.endObject();
    }

    private void start(String kind, double speed, double consumption, double distance) {
        double perMetre = consumption / JOULES_PER_WATT_HOUR;
        json.startObject();
        json.text("kind", kind);
        json.number("speed_m_per_s", speed);
        json.number("consumption_Wh_per_km", perMetre * METRES_PER_KILOMETRE);
        json.number("consumption_Wh_per_mi", perMetre * METRES_PER_MILE);
        json.number("distance_km", distance / METRES_PER_KILOMETRE);
    }
}
