package brakewright.cli.json;

import brakewright.driving.Climb;
import brakewright.powertrain.DriveState;
import brakewright.worksheet.DriveSheet;
import brakewright.worksheet.ThrustMap;
import brakewright.worksheet.Worksheet;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/** Writes what the drive achieves: speeds, climbing, pulling away, and thrust over speed. */
final class DrivingJson {

    private final JsonText json;

    DrivingJson(JsonText json) {
        this.json = json;
    }

    void write(Worksheet sheet) {
        double cruise = sheet.build().use().riding().cruiseSpeed();
        json.startObject("drive");
        drive(sheet.drive(), cruise);
        json.endObject();
        json.startArray("drive_by_charge");
        for (DriveSheet drive : sheet.driveByCharge()) {
            json.startObject();
            drive(drive, cruise);
            json.endObject();
        }
        json.endArray();
        thrust(sheet.thrustMap());
    }

    private void drive(DriveSheet drive, double cruise) {
        json.number("charge", drive.charge());
        json.number("top_speed_flat_m_per_s", drive.topSpeedFlat().speed());
        json.text("top_speed_bound_by", drive.topSpeedFlat().holder().key());
        json.number("top_speed_headwind_m_per_s", drive.topSpeedWind().speed());
        json.text("top_speed_headwind_bound_by", drive.topSpeedWind().holder().key());
        json.number("top_speed_lasting_m_per_s", drive.lastingFlat().speed());
        json.text("top_speed_lasting_bound_by", drive.lastingFlat().holder().key());
        json.number("top_speed_headwind_lasting_m_per_s", drive.lastingWind().speed());
        json.text("top_speed_headwind_lasting_bound_by", drive.lastingWind().holder().key());
        climb(drive.climb());
        json.number("launch_m_per_s2", drive.launch());
        json.text("launch_bound_by", drive.launchBoundBy().key());
        json.number("cruise_m_per_s", cruise);
        drive.toCruise()
                .ifPresent(
                        reached -> {
                            json.number("time_to_cruise_s", reached.time());
                            json.number("distance_to_cruise_m", reached.distance());
                        });
    }

    private void climb(Climb climb) {
        json.number("climb_slope_held", climb.steepest());
        json.number("climb_slope_sustained", climb.steepestSustained());
        json.number("climb_motor_current_A", climb.current());
        json.number("climb_held_for_s", climb.heldFor());
        json.number("slope_speed_m_per_s", climb.speedUp());
        json.number("slope_motor_current_A", climb.currentUp());
        json.number("slope_time_s", climb.timeUp());
        json.number("slope_winding_lasts_s", climb.lastsUp());
    }

    private void thrust(ThrustMap map) {
        json.startObject("thrust_map");
        json.numbers("charge", map.charges());
        json.numbers("speed_m_per_s", map.speeds());
        grid("thrust_N", map, DriveState::thrust);
        grid("motor_current_A", map, DriveState::motorCurrent);
        grid("pack_current_A", map, DriveState::packCurrent);
        grid("pack_voltage_V", map, DriveState::packVoltage);
        json.textGrid(
                "bound_by",
                Arrays.stream(map.pulls())
                        .map(row -> Arrays.stream(row).map(pull -> pull.holder().key()).toList())
                        .toList());
        json.numbers("resistance_N", map.resistance());
        json.endObject();
    }

    private void grid(String name, ThrustMap map, ToDoubleFunction<DriveState> quantity) {
        json.grid(
                name,
                Arrays.stream(map.pulls())
                        .map(row -> Arrays.stream(row).mapToDouble(quantity).toArray())
                        .toArray(double[][]::new));
    }
}
