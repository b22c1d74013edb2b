package brakewright.cli.recording;

import brakewright.recording.Quantity;
import java.util.List;
import java.util.Map;

/**
 * By which names a column is known. Assumption: our own choice of plain words; a name that is none
 * of them is never guessed at.
 */
final class UsualNames {

    /** The first of a list that a file has is taken. */
    private static final Map<Quantity, List<String>> NAMES =
            Map.ofEntries(
                    Map.entry(
                            Quantity.TIME,
                            List.of(
                                    "time",
                                    "timestamp",
                                    "date time",
                                    "datetime",
                                    "elapsed time",
                                    "elapsed",
                                    "t",
                                    "clock",
                                    "seconds",
                                    "zeit")),
                    Map.entry(
                            Quantity.WHEEL_SPEED,
                            List.of(
                                    "wheel speed",
                                    "vehicle speed",
                                    "velocity",
                                    "speed",
                                    "v",
                                    "geschwindigkeit")),
                    Map.entry(
                            Quantity.SATELLITE_SPEED,
                            List.of("satellite speed", "gps speed", "gnss speed", "speed gps")),
                    Map.entry(Quantity.LATITUDE, List.of("latitude", "lat")),
                    Map.entry(Quantity.LONGITUDE, List.of("longitude", "lon", "lng", "long")),
                    Map.entry(
                            Quantity.DISTANCE,
                            List.of("distance", "trip distance", "odometer", "strecke")),
                    Map.entry(
                            Quantity.ALTITUDE,
                            List.of("altitude", "elevation", "height", "alt", "ele", "hoehe")),
                    Map.entry(
                            Quantity.PACK_VOLTAGE,
                            List.of(
                                    "pack voltage",
                                    "battery voltage",
                                    "supply voltage",
                                    "voltage",
                                    "volts",
                                    "u",
                                    "spannung")),
                    Map.entry(
                            Quantity.PACK_CURRENT,
                            List.of(
                                    "pack current",
                                    "battery current",
                                    "supply current",
                                    "current",
                                    "amps",
                                    "i",
                                    "strom")),
                    Map.entry(Quantity.MOTOR_CURRENT, List.of("motor current", "phase current")),
                    Map.entry(
                            Quantity.CHARGE,
                            List.of(
                                    "charge",
                                    "state of charge",
                                    "soc",
                                    "battery level",
                                    "battery percent",
                                    "ladezustand")),
                    Map.entry(
                            Quantity.PACK_TEMPERATURE,
                            List.of(
                                    "pack temperature",
                                    "battery temperature",
                                    "cell temperature",
                                    "pack temp",
                                    "battery temp")),
                    Map.entry(
                            Quantity.MOTOR_TEMPERATURE,
                            List.of("motor temperature", "motor temp", "winding temperature")),
                    Map.entry(Quantity.WIND_SPEED, List.of("wind speed", "wind")));

    private UsualNames() {}

    static List<String> of(Quantity quantity) {
        return NAMES.getOrDefault(quantity, List.of());
    }
}
