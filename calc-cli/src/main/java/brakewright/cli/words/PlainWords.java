package brakewright.cli.words;

import brakewright.explain.Working;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.TaperLimit;
import brakewright.spec.Build;
import brakewright.worksheet.PackLimitSheet;

/**
 * Says what was explained in one plain sentence, in the units in which it is ridden and entered.
 */
public final class PlainWords {

    private static final double WATT_HOURS_PER_KILOMETRE = 1.0 / 3.6;

    private final Build build;
    private final UnitSystem units;

    /**
     * Makes the words.
     *
     * @param build the vehicle
     * @param units for speeds and distances
     */
    public PlainWords(Build build, UnitSystem units) {
        this.build = build;
        this.units = units;
    }

    /**
     * Says a limit of the motors or of the speed.
     *
     * @param limit the limit
     * @return a sentence
     */
    public String of(Limit limit) {
        String held = " because of " + LimitWords.of(limit.binding()) + ".";
        return switch (limit.id()) {
            case SPEED_CAP -> "Let it go no faster than " + units.speedDown(limit.value()) + held;
            case MOTOR_BRAKE_CURRENT ->
                    "Let each motor brake with no more than "
                            + Numbers.down(limit.value(), 1)
                            + " A"
                            + held;
            default ->
                    "Let each motor pull with no more than "
                            + Numbers.down(limit.value(), 1)
                            + " A"
                            + held;
        };
    }

    /**
     * Says a limit of what enters or leaves the pack.
     *
     * @param limit the limit
     * @return a sentence
     */
    public String of(PackLimitSheet limit) {
        double bound = 100.0 * limit.holdsTo();
        return (limit.isTaking()
                        ? "Let braking send no more than "
                        : "Let driving draw no more than ")
                + Numbers.down(limit.fixed().value(), 1)
                + (limit.isTaking() ? " A into the pack up to " : " A from the pack down to ")
                + (limit.isTaking() ? Numbers.down(bound, 1) : Numbers.up(bound, 1))
                + " % charge, which is "
                + Numbers.down(build.controllers().each(limit.fixed().value()), 1)
                + " A to enter per controller; at "
                + Numbers.percent(limit.endOfUse())
                + " no more than "
                + Numbers.down(limit.atEndOfUse().value(), 1)
                + " A.";
    }

    /**
     * Says a taper.
     *
     * @param taper the taper
     * @return a sentence
     */
    public String of(TaperLimit taper) {
        boolean isLow = taper.id() == LimitId.LOW_VOLTAGE_TAPER;
        return taper.value()
                .map(
                        value ->
                                (isLow ? "Let the drive fade from " : "Let the brake fade from ")
                                        + (isLow
                                                ? Numbers.up(value.begins(), 1)
                                                : Numbers.down(value.begins(), 1))
                                        + " V on and end by "
                                        + (isLow
                                                ? Numbers.up(value.ends(), 1)
                                                : Numbers.down(value.ends(), 1))
                                        + (isLow
                                                ? " V, before anything cuts it off at once."
                                                : " V, before the pack has too many volts."))
                .orElse("No taper is needed, as no current flows that it could fade.");
    }

    /**
     * Says a result.
     *
     * @param working how it came about
     * @return a sentence
     */
    public String of(Working working) {
        double value = working.value();
        return switch (working.id()) {
            case TOP_SPEED ->
                    "On the level it goes no faster than about "
                            + units.speedText(value)
                            + " for a few seconds.";
            case LAUNCH ->
                    "In each second of pulling away it gains about " + units.speedText(value) + ".";
            case CLIMB ->
                    "It crawls up a slope of "
                            + Numbers.down(100.0 * value, 1)
                            + " %, and no steeper one.";
            case TIME_TO_CRUISE ->
                    "From a standstill it takes "
                            + Numbers.time(value)
                            + " to "
                            + units.speedText(build.use().riding().cruiseSpeed())
                            + ".";
            case SAG ->
                    "While the set current is drawn the pack shows "
                            + Numbers.nearest(value, 1)
                            + " V less than at rest.";
            case RANGE ->
                    "At "
                            + units.speedText(build.use().riding().cruiseSpeed())
                            + " throughout it goes "
                            + units.distanceNearest(value)
                            + ".";
            case TOWN_RANGE ->
                    "With stops as in town it goes " + units.distanceNearest(value) + ".";
            case CONSUMPTION ->
                    "At "
                            + units.speedText(build.use().riding().cruiseSpeed())
                            + " a kilometre takes "
                            + Numbers.nearest(value * WATT_HOURS_PER_KILOMETRE, 1)
                            + " Wh.";
            case CONTINUOUS_CURRENT ->
                    "A motor bears "
                            + Numbers.down(value, 1)
                            + " A for as long as you like, and more only for a while.";
            case PULL_TIME ->
                    Double.isInfinite(value)
                            ? "Pull in full for as long as you like: the motors bear it."
                            : "Pull in full for no longer than "
                                    + Numbers.time(value)
                                    + " at a time.";
            case RECOVERY ->
                    "After a pull to the limit let the motors rest for "
                            + Numbers.time(value)
                            + " before the next hard one.";
            case PACK_WARMING ->
                    "At the end of such a ride the cells have about "
                            + Numbers.nearest(value, 0)
                            + " °C.";
            case PACK_SHARING ->
                    "The pack that is worked hardest carries " + Numbers.nearest(value, 1) + " A.";
            case JOINING ->
                    "Join the packs only while a meter shows them within "
                            + Numbers.down(value, 2)
                            + " V of each other.";
            case HARD_PULL_TRIP ->
                    "In a hard pull count on drive and electric brake for no longer than "
                            + Numbers.time(value)
                            + ".";
            case FIRST_STOP_TRIP ->
                    "Braking hard with the pack at its fullest, count on the electric brake for no"
                            + " longer than "
                            + Numbers.time(value)
                            + ".";
            case SHORT_CIRCUIT_CURRENT ->
                    "Take a fuse that is made to break "
                            + Numbers.up(value, 0)
                            + " A at "
                            + Numbers.up(working.conditions().get(0).value(), 1)
                            + " V of direct voltage; any other may burn on as an arc or burst.";
        };
    }
}
