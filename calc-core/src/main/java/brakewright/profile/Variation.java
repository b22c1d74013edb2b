package brakewright.profile;

import brakewright.spec.Build;

/** Makes a vehicle from the values of the inputs that vary. */
@FunctionalInterface
public interface Variation {

    /**
     * Makes the vehicle.
     *
     * @param values in the order of the inputs that vary, in calculation units
     * @return the vehicle
     */
    Build with(double[] values);
}
