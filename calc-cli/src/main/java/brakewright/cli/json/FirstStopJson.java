package brakewright.cli.json;

import brakewright.braking.StopOutcome;
import brakewright.operation.FirstStop;

/** Writes what a first stop comes to when the protection opens on the way. */
final class FirstStopJson {

    private FirstStopJson() {}

    static void opened(JsonText json, FirstStop stop) {
        json.number("left_slow_m_per_s2", stop.leftSlow());
        stop.opened().ifPresent(opened -> opened(json, opened));
    }

    private static void opened(JsonText json, FirstStop.Opened opened) {
        json.startObject("opened");
        json.number("after_s", opened.after());
        if (opened.outcome() instanceof StopOutcome.Stopped stopped) {
            json.number("distance_m", stopped.distance());
            json.number("time_s", stopped.time());
            json.number("deceleration_mean_m_per_s2", stopped.meanDeceleration());
        } else if (opened.outcome() instanceof StopOutcome.Unstoppable unstoppable) {
            json.number("held_at_m_per_s", unstoppable.heldAt());
        }
        json.endObject();
    }
}
