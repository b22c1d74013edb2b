package brakewright.profile;

import brakewright.spec.Settings;

/**
 * How high the settings of the electric brake may be.
 *
 * @param motorBrake the motor brake current, per motor
 * @param packRegen the pack regen current, per controller
 */
public record Headrooms(Headroom motorBrake, Headroom packRegen) {

    /**
     * Finds both.
     *
     * @param situation the vehicle in its use
     * @param present its present settings
     * @param proposed those proposed; all of them stay but the one raised
     * @return how high each may be
     */
    public static Headrooms of(Situation situation, Settings present, Settings proposed) {
        return new Headrooms(
                Headroom.ofMotorBrake(situation, present, proposed),
                Headroom.ofPackRegen(situation, present, proposed));
    }
}
