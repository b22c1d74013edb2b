package brakewright.cli.json;

import brakewright.operation.FirstStop;
import brakewright.worksheet.FirstStopHelp;

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

    /** What makes every first stop safe; nothing where each is. */
    static void help(JsonText json, FirstStopHelp help) {
        json.startObject("first_stop_help");
        json.number("warm_to_C", help.warmToC());
        json.number("cool_to_C", help.coolToC());
        help.stop().ifPresent(stop -> rest(json, stop));
        help.taper()
                .ifPresent(
                        taper ->
                                json.numbers(
                                        "high_voltage_taper_V",
                                        new double[] {taper.begins(), taper.ends()}));
        json.number("taper_weakens_from_charge", help.taperFrom());
        json.endObject();
    }

    /** Of the worst stop that is left once the cells have that temperature. */
    private static void rest(JsonText json, FirstStop stop) {
        json.number("cells_C", stop.cellsC());
        json.number("safe_charge", stop.chargeTo());
        json.number("ride_first_m", stop.rideFirst());
        json.number("pack_regen_current_per_controller_A", stop.safeRegen());
    }
}
