package brakewright.profile;

import brakewright.spec.Settings;

/** Settings that ask for no current at all. */
final class Nothing {

    private Nothing() {}

    static Settings asked(Settings set) {
        return set.withMotorDriveCurrent(0.0)
                .withMotorBrakeCurrent(0.0)
                .withPackDischargeCurrent(0.0)
                .withPackRegenCurrent(0.0);
    }
}
