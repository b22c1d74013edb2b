package brakewright.profile;

import brakewright.spec.Build;

/**
 * A vehicle with its settings, under a name.
 *
 * @param name what it is called in a comparison
 * @param build the vehicle
 */
public record Profile(String name, Build build) {}
