package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.Input;
import java.util.List;

/**
 * What limits the speed: where the back-EMF exceeds a voltage, the motor generates through the
 * controller whatever that is told.
 */
final class SpeedConstraints {

    private final Build build;
    private final Powertrain powertrain;

    SpeedConstraints(Build build) {
        this.build = build;
        this.powertrain = Powertrain.of(build);
    }

    Limit cap() {
        double margin = build.margins().controllerVoltage();
        double rating = build.controllers().voltageRating();
        double charge = build.use().chargeFrom();
        double full = new BatteryModel(build.battery()).openCircuitVoltage(charge);
        return new Limit(
                LimitId.SPEED_CAP,
                List.of(
                        backEmf(
                                ConstraintId.CONTROLLER_BACK_EMF,
                                (1.0 - margin) * rating,
                                "(1 − m)·V_rated",
                                Input.CONTROLLER_VOLTAGE_RATING),
                        backEmf(
                                ConstraintId.PACK_BACK_EMF,
                                full,
                                "U(s), the fullest pack in use",
                                Input.USE_CHARGE_FROM)));
    }

    private Constraint backEmf(ConstraintId id, double voltage, String meaning, Input decisive) {
        double angularSpeed = voltage / powertrain.motor().voltageConstant();
        return new Constraint(
                id,
                powertrain.speed(angularSpeed),
                decisive,
                new Derivation(
                        "V/K·r/G, K = 60/(2π·Kv)",
                        "no-load speed of a permanent-magnet machine",
                        List.of(
                                Term.computed("V", meaning, voltage, "V"),
                                Term.given(
                                        "Kv",
                                        "speed constant",
                                        build.motor().kvRpmPerVolt(),
                                        "rpm/V",
                                        Input.MOTOR_KV),
                                Term.computed(
                                        "r", "wheel radius", build.vehicle().wheelRadius(), "m"),
                                Term.given(
                                        "G",
                                        "reduction",
                                        build.drive().reduction(),
                                        "",
                                        Input.DRIVE_REDUCTION))));
    }
}
