package brakewright.profile;

import brakewright.spec.Build;

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
     * @param present the vehicle with its present settings
     * @param proposed the vehicle with those proposed; all of them stay but the one raised
     * @return how high each may be
     */
    public static Headrooms of(Build present, Build proposed) {
        return new Headrooms(
                Headroom.ofMotorBrake(present, proposed), Headroom.ofPackRegen(present, proposed));
    }
}
