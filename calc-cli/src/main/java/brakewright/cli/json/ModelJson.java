package brakewright.cli.json;

import brakewright.replay.AgainstModel;
import brakewright.replay.Compared;
import brakewright.replay.Figure;
import java.util.OptionalDouble;

/** Writes what was measured beside what the model says of it. */
final class ModelJson {

    private static final double HOUR = 3600.0;

    private final JsonText json;

    ModelJson(JsonText json) {
        this.json = json;
    }

    void write(AgainstModel model) {
        json.startObject("against_model");
        json.number("driven_s", model.seconds());
        json.number("pull_too_weak_s", model.pullTooWeak());
        json.number("brakes_too_weak_s", model.brakesTooWeak());
        json.number("current_off_A", model.currentOff());
        json.number("voltage_off_V", model.voltageOff());
        json.text("slope_from", model.isHeightKnown() ? "recorded" : "level");
        json.text("charge_begins", model.isChargeKnown() ? "recorded" : "build");
        json.startArray("figures");
        for (Compared each : model.figures()) {
            json.startObject();
            json.text("figure", each.figure().key());
            number(each, "measured", each.measured());
            number(each, "predicted", OptionalDouble.of(each.predicted()));
            number(each, "predicted_low", OptionalDouble.of(each.low()));
            number(each, "predicted_high", OptionalDouble.of(each.high()));
            number(each, "difference", each.difference());
            number(each, "explained", each.explained());
            json.endObject();
        }
        json.endArray();
        json.endObject();
    }

    private void number(Compared each, String name, OptionalDouble value) {
        value.ifPresent(
                present -> json.number(name + unit(each.figure()), scale(each.figure()) * present));
    }

    private static String unit(Figure figure) {
        return switch (figure) {
            case ENERGY_OUT, ENERGY_BACK -> "_Wh";
            case CONSUMPTION -> "_Wh_per_km";
            case CHARGE_OUT, CHARGE_BACK -> "_Ah";
            case CHARGE_USED -> "";
            case CURRENT_OUT, CURRENT_BACK -> "_A";
            case LOWEST_VOLTAGE -> "_V";
            case WARMEST_CELLS -> "_C";
            case TOP_SPEED -> "_m_per_s";
            case HARDEST_STOP -> "_m_per_s2";
            case RANGE -> "_m";
        };
    }

    private static double scale(Figure figure) {
        return switch (figure) {
            case ENERGY_OUT, ENERGY_BACK, CHARGE_OUT, CHARGE_BACK -> 1.0 / HOUR;
            case CONSUMPTION -> 1000.0 / HOUR;
            default -> 1.0;
        };
    }
}
