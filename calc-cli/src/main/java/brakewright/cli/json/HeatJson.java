package brakewright.cli.json;

import brakewright.heat.DoubtedHeat;
import brakewright.heat.PackHeat;
import brakewright.worksheet.HeatSheet;
import brakewright.worksheet.WarmStart;
import java.util.Optional;

/** Writes how motor and pack warm. */
final class HeatJson {

    private final JsonText json;

    HeatJson(JsonText json) {
        this.json = json;
    }

    void write(HeatSheet heat, Optional<DoubtedHeat> cruise) {
        if (heat.known().isEmpty()
                && heat.packCruising().isEmpty()
                && heat.packPulling().isEmpty()
                && heat.warmRide().isEmpty()) {
            return;
        }
        json.startObject("heat");
        heat.known().ifPresent(this::motor);
        heat.packCruising().ifPresent(pack -> pack("cruise", pack));
        cruise.ifPresent(
                range -> {
                    json.number("pack_end_cruise_low_C", range.lowC());
                    json.number("pack_end_cruise_high_C", range.highC());
                });
        heat.packPulling().ifPresent(pack -> pack("draw", pack));
        heat.warmRide().ifPresent(ride -> pack("cruise_warm", ride.heat()));
        json.endObject();
    }

    private void motor(HeatSheet.Known heat) {
        json.number("continuous_motor_current_A", heat.continuousCurrent());
        json.number("time_at_drive_set_s", heat.timeAtDriveSetting());
        json.number("time_at_brake_set_s", heat.timeAtBrakeSetting());
        if (heat.afterCruise() instanceof WarmStart.Borne warm) {
            json.number("warm_winding_C", warm.windingC());
            json.number("warm_case_C", warm.caseC());
            json.number("time_at_drive_set_warm_s", warm.lasts());
        } else if (heat.afterCruise() instanceof WarmStart.TooHot) {
            json.number("time_at_drive_set_warm_s", 0.0);
        }
        json.number("recovery_s", heat.recovery());
        json.number("case_loss_W", heat.caseLoss());
        json.number("case_loss_speed_m_per_s", heat.speed());
    }

    private void pack(String ride, PackHeat pack) {
        json.text("pack_warmest_" + ride, "pack-" + pack.pack());
        json.number("pack_mean_current_" + ride + "_A", pack.meanCurrent());
        json.number("pack_time_" + ride + "_s", pack.time());
        json.number("pack_rise_" + ride + "_K", pack.riseK());
        json.number("pack_end_" + ride + "_C", pack.endC());
        json.number("pack_start_" + ride + "_C", pack.startC());
        json.number("pack_highest_" + ride + "_C", pack.highestC());
        json.number("pack_too_warm_to_charge_" + ride + "_s", pack.warmAfter());
        json.number("pack_stopped_" + ride + "_s", pack.stoppedAfter());
        json.number("pack_charge_limit_" + ride + "_C", pack.chargeLimitC());
        json.number("pack_discharge_limit_" + ride + "_C", pack.dischargeLimitC());
        json.number("charge_after_" + ride + "_s", pack.chargeAfter());
    }
}
