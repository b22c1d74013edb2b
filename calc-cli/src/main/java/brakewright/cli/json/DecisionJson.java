package brakewright.cli.json;

import brakewright.profile.Recommendation;
import brakewright.profile.WetRoad;
import brakewright.review.BrakeVerdict;
import brakewright.spec.Settings;
import brakewright.spec.Unit;
import java.util.OptionalDouble;

/** Writes verdicts on the brake and complete sets of settings. */
final class DecisionJson {

    private final JsonText json;

    DecisionJson(JsonText json) {
        this.json = json;
    }

    void brake(BrakeVerdict brake) {
        brake("brake_verdict", brake);
    }

    void brake(String name, BrakeVerdict brake) {
        json.startObject(name);
        json.text("word", brake.word().key());
        json.number("deceleration_m_per_s2", brake.deceleration());
        json.number("wanted_m_per_s2", brake.wanted());
        json.number("charge", brake.charge());
        json.number("speed_m_per_s", brake.speed());
        json.number("cells_C", brake.cellsC());
        json.number("brakes_add_m_per_s2", brake.left());
        json.number("downhill_m_per_s2", brake.downhill());
        json.endObject();
    }

    /** A set that needs no condition but the use as it is. */
    void recommended(Recommendation set) {
        set("recommended", set, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** What of the recommended set is another on a wet road. */
    void recommendedOnWetRoad(WetRoad wet) {
        json.startObject("recommended_wet");
        json.startObject("settings");
        number("motor_brake_current", OptionalDouble.of(wet.enter()), Unit.AMPERE);
        json.endObject();
        brake(wet.entered());
        json.endObject();
    }

    void set(String name, Recommendation set, OptionalDouble chargeFrom, OptionalDouble coldestC) {
        if (name.isEmpty()) {
            json.startObject();
        } else {
            json.startObject(name);
        }
        content(set, chargeFrom, coldestC);
        json.endObject();
    }

    void content(Recommendation set, OptionalDouble chargeFrom, OptionalDouble coldestC) {
        Settings settings = set.settings();
        json.startObject("settings");
        number("motor_drive_current", settings.motorDriveCurrent(), Unit.AMPERE);
        number("motor_brake_current", settings.motorBrakeCurrent(), Unit.AMPERE);
        number("pack_discharge_current", settings.packDischargeCurrent(), Unit.AMPERE);
        number("pack_regen_current", settings.packRegenCurrent(), Unit.AMPERE);
        settings.lowVoltageTaper()
                .ifPresent(taper -> pair("low_voltage_taper", taper.begins(), taper.ends()));
        settings.highVoltageTaper()
                .ifPresent(taper -> pair("high_voltage_taper", taper.begins(), taper.ends()));
        number("speed_cap", settings.speedCap(), Unit.METRE_PER_SECOND);
        json.endObject();
        json.startObject("use");
        number("charge_from", chargeFrom, Unit.RATIO);
        coldestC.ifPresent(cells -> pair("pack_temperature", cells, warmest(set), Unit.CELSIUS));
        json.endObject();
        json.text("verdict", set.evaluation().outcome().key());
        brake(set.brake());
    }

    private static double warmest(Recommendation set) {
        return set.build().use().climate().warmestPackC();
    }

    private void number(String key, OptionalDouble value, Unit unit) {
        if (value.isPresent()) {
            json.startObject(key);
            json.number("value", value.getAsDouble());
            json.text("unit", unit.plain());
            json.endObject();
        }
    }

    private void pair(String key, double one, double two) {
        pair(key, one, two, Unit.VOLT);
    }

    private void pair(String key, double one, double two, Unit unit) {
        json.startObject(key);
        json.numbers("value", new double[] {one, two});
        json.text("unit", unit.plain());
        json.endObject();
    }
}
