package brakewright.cli.json;

import brakewright.review.FirstStop;

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
        StopJson.write(json, opened.outcome());
        json.endObject();
    }
}
