package brakewright.cli.json;

import brakewright.braking.StopOutcome;

/** Writes how a stop ends. */
final class StopJson {

    private StopJson() {}

    static void write(JsonText json, StopOutcome outcome) {
        if (outcome instanceof StopOutcome.Stopped stopped) {
            json.number("distance_m", stopped.distance());
            json.number("time_s", stopped.time());
            json.number("deceleration_mean_m_per_s2", stopped.meanDeceleration());
        } else if (outcome instanceof StopOutcome.Unstoppable unstoppable) {
            json.number("held_at_m_per_s", unstoppable.heldAt());
        }
    }

    /** With how it brakes on the way. */
    static void writeWhole(JsonText json, StopOutcome outcome) {
        write(json, outcome);
        if (outcome instanceof StopOutcome.Stopped stopped) {
            json.number("deceleration_min_m_per_s2", stopped.leastDeceleration());
            json.number("fully_developed_m_per_s2", stopped.fullyDeveloped());
            json.number("fades_above_m_per_s", stopped.fadeSpeed());
            json.number("peak_pack_current_A", stopped.peakPackCurrent());
            json.number("peak_cell_voltage_V", stopped.peakCellVoltage());
            json.number("returned_Wh", stopped.returned() / 3600.0);
        }
    }
}
