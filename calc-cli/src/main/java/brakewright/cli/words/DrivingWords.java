package brakewright.cli.words;

import brakewright.limit.LimitId;
import brakewright.review.Condition;
import brakewright.review.Finding;
import brakewright.spec.Build;
import java.util.Optional;

/** Says what was found about driving: the pack under load, several packs, climbing, range. */
final class DrivingWords {

    private final Build build;
    private final UnitSystem units;

    DrivingWords(Build build, UnitSystem units) {
        this.build = build;
        this.units = units;
    }

    String of(Finding finding) {
        return switch (finding.topic()) {
            case PROTECTION_BEFORE_TAPER -> protectionFirst(finding);
            case JOINING_CURRENT ->
                    "Joined at the charge states told, "
                            + Numbers.up(finding.value().orElseThrow(), 1)
                            + " A flow between pack "
                            + number(finding)
                            + " and the others; the weaker of them bears "
                            + Numbers.down(finding.limit().orElseThrow(), 1)
                            + " A. Do not join them: bring them to one voltage first, by charging"
                            + " or discharging one of them alone.";
            case JOINING_DIFFERENCE ->
                    (build.battery().packs().size() == 2
                                    ? "Join the packs only while"
                                    : "Join pack " + number(finding) + " to the others only while")
                            + " the resting voltages differ by less than "
                            + Numbers.down(finding.value().orElseThrow(), 2)
                            + " V (measure both). That counts with the least resistance, which is that"
                            + " of the first instant and of warm cells; beyond, the equalising"
                            + " current may exceed the lower of their ratings.";
            case PACK_LOSS_CASCADES -> cascade(finding);
            case CLIMB_SHORT ->
                    "The steepest slope that the drive holds with the fullest pack is "
                            + percent(finding.value().orElseThrow())
                            + "; "
                            + percent(finding.limit().orElseThrow())
                            + " is wanted.";
            case CLIMB_OVERHEATS ->
                    "On the steepest slope in use the winding reaches its limit after "
                            + Numbers.time(finding.value().orElseThrow())
                            + ", before the top ("
                            + Numbers.time(finding.limit().orElseThrow())
                            + " at "
                            + units.speedText(finding.speed().orElseThrow())
                            + ").";
            case RETURN_INTO_WARM_CELLS -> warmed(finding);
            case CELLS_OVERHEAT ->
                    "Drawn without pause to the lowest charge in use, the set "
                            + Numbers.nearest(finding.value().orElseThrow(), 1)
                            + " A would warm the cells beyond the "
                            + Numbers.nearest(finding.temperatureC().orElseThrow(), 0)
                            + " °C at which they may be discharged (see the heat of the pack). Watch"
                            + " their temperature in long hard riding, and pause in time.";
            case TOWN_WARMS_CELLS ->
                    "In town, with the stops in use and all that is set between them, the cells are"
                            + " predicted to come from "
                            + Numbers.nearest(finding.temperatureC().orElseThrow(), 0)
                            + " to "
                            + beyond(finding.value().orElseThrow(), finding.limit().orElseThrow())
                            + " °C; charging is permitted to "
                            + Numbers.down(finding.limit().orElseThrow(), 0)
                            + " °C, and an even ride stays below that. Measure their temperature;"
                            + " once they are there nothing may be braked into them.";
            case RANGE_SHORT ->
                    "At "
                            + units.speedText(finding.speed().orElseThrow())
                            + " the range is "
                            + units.distanceDown(finding.value().orElseThrow())
                            + "; asked for are "
                            + units.distanceText(finding.limit().orElseThrow())
                            + ".";
            case SPEED_STABILITY ->
                    "Standing, on a wheelbase of "
                            + Numbers.nearest(build.vehicle().axles().wheelbase(), 2)
                            + " m, the vehicle may begin to weave at speed. No published figure"
                            + " tells at which; it depends on the rider, and more speed and less"
                            + " wheelbase make it likelier. Raise the speed cap in small steps"
                            + " below "
                            + units.speedText(finding.speed().orElseThrow())
                            + ", stand ahead of the middle, and never correct in haste.";
            default -> throw new IllegalArgumentException(finding.id());
        };
    }

    /** To the degree, or as finely as it takes to read that it lies beyond. */
    private static String beyond(double celsius, double limitC) {
        return Math.round(celsius) > limitC ? Numbers.nearest(celsius, 0) : Numbers.up(celsius, 1);
    }

    private String warmed(Finding finding) {
        Condition.RiddenUpTo ridden = (Condition.RiddenUpTo) finding.condition().orElseThrow();
        return "Charging"
                + finding.pack().map(number -> " of pack " + number).orElse("")
                + " is permitted to "
                + Numbers.down(ridden.limitC(), 0)
                + " °C; after about "
                + Numbers.time(ridden.time())
                + " at "
                + units.speedText(ridden.speed())
                + " the cells are there, as is predicted from "
                + Numbers.nearest(ridden.startC(), 0)
                + " °C in air of "
                + Numbers.nearest(build.use().climate().ambientC(), 0)
                + " °C, and they come to "
                + beyond(ridden.highestC(), ridden.limitC())
                + " °C. From then on nothing may be braked into them; measure their"
                + " temperature on such a ride.";
    }

    private String protectionFirst(Finding finding) {
        return "In a hard pull of "
                + Numbers.time(build.use().effort().hardPull())
                + ", cells at "
                + Numbers.nearest(finding.temperatureC().orElseThrow(), 0)
                + " °C, the protection disconnects at "
                + Numbers.percent(finding.charge().orElseThrow())
                + " charge before the controllers have faded the drive: the vehicle cuts dead, and"
                + " the electric brake goes with it. "
                + (finding.value().isPresent()
                        ? "The low-voltage taper ends at "
                                + Numbers.nearest(finding.value().getAsDouble(), 1)
                                + " V; let it end at or above "
                        : build.settings().lowVoltageTaper().isPresent()
                                ? "The low-voltage taper that is set is too narrow to count on; let"
                                        + " a wider one end at or above "
                                : "No low-voltage taper is set; let one end at or above ")
                + Numbers.up(finding.limit().orElseThrow(), 1)
                + " V, as wide as said above.";
    }

    /** Of the one of several packs that it is about. */
    private static int number(Finding finding) {
        return finding.pack().number().orElseThrow();
    }

    private static String cascade(Finding finding) {
        if (finding.value().isEmpty()) {
            return "The packs are in series: if the protection of one disconnects while braking, the"
                    + " current of all is interrupted, and the electric brake is gone.";
        }
        boolean draw = finding.subject().equals(Optional.of(LimitId.PACK_DISCHARGE_CURRENT));
        return "If pack "
                + number(finding)
                + " disconnects while "
                + (draw ? "driving" : "braking")
                + ", the others must carry up to "
                + Numbers.up(100.0 * finding.value().getAsDouble(), 0)
                + " % of their trip current (at "
                + Numbers.percent(finding.charge().orElseThrow())
                + " charge) and disconnect too: nothing is left to drive or brake with.";
    }

    private static String percent(double slope) {
        return Double.isInfinite(slope) ? "any" : Numbers.nearest(100.0 * slope, 1) + " %";
    }
}
