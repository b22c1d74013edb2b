package brakewright.cli.words;

import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.review.Condition;
import brakewright.review.Finding;
import brakewright.review.FindingDetail;
import brakewright.spec.Build;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.Wiring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Says a finding in one or two plain sentences. */
public final class FindingWords {

    private final Build build;
    private final UnitSystem units;

    /**
     * Makes the words.
     *
     * @param build the vehicle
     * @param units for speeds
     */
    public FindingWords(Build build, UnitSystem units) {
        this.build = build;
        this.units = units;
    }

    /**
     * Says a finding.
     *
     * @param finding the finding
     * @return its text
     */
    public String of(Finding finding) {
        return switch (finding.topic()) {
            case DRIVE_CURRENT_OVER, BRAKE_CURRENT_OVER ->
                    "The "
                            + subject(finding)
                            + " is set to "
                            + amperes(finding.value())
                            + " per motor; "
                            + constraint(finding)
                            + " permits "
                            + limit(finding)
                            + "."
                            + hazard(finding)
                            + grabbed(finding);
            case PACK_RETURN_OVER -> packCurrent(finding, true);
            case PACK_DRAW_OVER -> packCurrent(finding, false);
            case SPEED_CAP_OVER ->
                    "The speed cap is "
                            + units.speedText(finding.value().orElseThrow())
                            + "; above "
                            + units.speedDown(finding.limit().orElseThrow())
                            + " the motors generate whatever is set ("
                            + constraint(finding)
                            + ").";
            case CONTROLLER_VOLTAGE_AT_REST ->
                    "The resting pack has "
                            + volts(finding.value())
                            + " at "
                            + charge(finding)
                            + ", above the controller's rating of "
                            + volts(finding.limit())
                            + ". Do not connect it.";
            case FUSE_VOLTAGE_OVER, FUSE_BREAKING_OVER, FUSE_BREAKING_UNKNOWN ->
                    new FuseWords(build).of(finding);
            case PLUG_SPARKS ->
                    "No plug described is of an anti-spark form: connected at "
                            + volts(finding.value())
                            + " to the controllers' empty capacitors it sparks, which burns its"
                            + " contacts. Use one with a resistor that connects first, and connect"
                            + " it last.";
            case TAPER_ENDS_LATE -> taperEnds(finding);
            case TAPER_SURGES ->
                    "The "
                            + subject(finding)
                            + " is "
                            + volts(finding.value())
                            + " wide. Below "
                            + Numbers.up(finding.limit().orElseThrow(), 2)
                            + " V its loop gain passes 1 and the current surges, so it is not"
                            + " counted as a protection.";
            case SETTING_NOT_GIVEN ->
                    "The "
                            + subject(finding)
                            + " is not given. This page takes it as "
                            + Numbers.down(finding.value().orElseThrow(), 1)
                            + " A; a controller at its default may do anything. Look it up and"
                            + " enter it.";
            case BRAKE_TAKEN_AWAY ->
                    "At "
                            + units.speedText(finding.speed().orElseThrow())
                            + " and "
                            + charge(finding)
                            + " no brake is left to speak of: the brakes add "
                            + Numbers.down(Math.max(0.0, finding.value().orElseThrow()), 2)
                            + " m/s² to what the road takes away, and less than "
                            + Numbers.up(finding.limit().orElseThrow(), 2)
                            + " m/s² counts as none.";
            case THIN_MARGIN ->
                    "The "
                            + subject(finding)
                            + " leaves less than 5 % to "
                            + constraint(finding)
                            + ".";
            case BRAKE_FADES -> fades(finding);
            case REGEN_OVERSHOOT -> overshoot(finding);
            case BRAKE_ENDS ->
                    "Below "
                            + units.speedText(finding.speed().orElseThrow())
                            + " the controllers do not brake electrically: on level road the vehicle"
                            + " then slows by "
                            + Numbers.down(finding.value().orElseThrow(), 2)
                            + " m/s² alone, and on a descent that is stronger it rolls on at that"
                            + " speed and does not stop.";
            case BRAKE_DRAWS_POWER ->
                    "Below "
                            + units.speedText(finding.speed().orElseThrow())
                            + " the electric brake draws power from the pack instead of returning"
                            + " it.";
            case BRAKE_WEAK ->
                    "At "
                            + units.speedText(finding.speed().orElseThrow())
                            + " and "
                            + charge(finding)
                            + " all brakes together reach "
                            + Numbers.down(finding.value().orElseThrow(), 2)
                            + " m/s² on level road; "
                            + Numbers.significant(finding.limit().orElseThrow())
                            + " m/s² is wanted.";
            case BOTH_BRAKES_HARD ->
                    "Both brakes together, each in full, reach "
                            + Numbers.nearest(finding.value().orElseThrow(), 2)
                            + " m/s², more than the "
                            + Numbers.down(finding.limit().orElseThrow(), 2)
                            + " m/s² that "
                            + bearing(finding.constraint().orElseThrow())
                            + ". Dose the friction brake with care while the electric one is"
                            + " acting.";
            case LIGHTER_AXLE_SLIDES ->
                    "If the motors of both axles brake alike, the lighter axle slides from "
                            + Numbers.down(finding.limit().orElseThrow(), 2)
                            + " m/s² on; the motor brake current set reaches "
                            + Numbers.nearest(finding.value().orElseThrow(), 2)
                            + " m/s². Give that axle less, or lower it for both.";
            case WET_GRIP ->
                    "On a wet road the wheels slide from "
                            + limit(finding)
                            + " of motor brake current per motor on (grip "
                            + Numbers.significant(build.vehicle().gripWet())
                            + ", less its margin); "
                            + amperes(finding.value())
                            + " are set. Brake softly there, or ride on a profile for the wet.";
            case SLOPE_NOT_HELD ->
                    "On the steepest slope ("
                            + Numbers.percent(build.use().slope())
                            + ") at "
                            + units.speedText(finding.speed().orElseThrow())
                            + " and "
                            + charge(finding)
                            + " the electric brake gives "
                            + Numbers.nearest(finding.value().orElseThrow(), 0)
                            + " N against a pull of "
                            + Numbers.nearest(finding.limit().orElseThrow(), 0)
                            + " N: the vehicle gains speed on it.";
            case ONLY_BRAKE ->
                    "The electric brake is the only brake described. It vanishes when the pack"
                            + " refuses current, is cut off or a controller fails.";
            case BUS_RISE ->
                    "If the protection opens while braking from "
                            + units.speedText(finding.speed().orElseThrow())
                            + ", the bus reaches the controller's voltage rating within "
                            + Numbers.time(finding.value().orElseThrow())
                            + ", and the electric brake is gone.";
            case BUS_CAPACITANCE_UNKNOWN ->
                    "The controllers' bus capacitance is not given, so how fast the bus voltage"
                            + " rises if the protection opens is not known. Expect milliseconds.";
            case FORCED_RETURN ->
                    "With the pack down at "
                            + charge(finding)
                            + " the motors' back-EMF exceeds its voltage above "
                            + units.speedDown(finding.speed().orElseThrow())
                            + ": downhill they then charge it whatever is set.";
            case WINDING_RUNS_AWAY ->
                    "At the "
                            + subject(finding)
                            + " of "
                            + amperes(finding.value())
                            + " the winding never settles: it heats faster than the heat can"
                            + " leave. Continuous is "
                            + Numbers.down(finding.limit().orElseThrow(), 1)
                            + " A.";
            case WINDING_TIME ->
                    "At the "
                            + subject(finding)
                            + " a cold winding reaches its limit after "
                            + Numbers.time(finding.value().orElseThrow())
                            + ".";
            case MOTOR_HEAT_UNKNOWN ->
                    "The motor's thermal figures are not given, so no limit keeps its winding from"
                            + " overheating. Measure its temperature on the first rides.";
            case CELLS_BEYOND_USE ->
                    "The cells' own temperature, "
                            + Numbers.nearest(finding.value().orElseThrow(), 0)
                            + " °C, lies beyond the "
                            + Numbers.nearest(finding.limit().orElseThrow(), 0)
                            + " °C of use.pack_temperature. It is looked at like those in use;"
                            + " where pack.temperature is not told it is that of the air.";
            case PROTECTION_UNKNOWN ->
                    "Trips of the pack's protection are not given ("
                            + missingTrips()
                            + "). A protection may open at a charge current of a few amperes, and"
                            + " the brake vanishes with it.";
            case PROTECTION_BEFORE_TAPER,
                    JOINING_CURRENT,
                    JOINING_DIFFERENCE,
                    PACK_LOSS_CASCADES,
                    CLIMB_SHORT,
                    CLIMB_OVERHEATS,
                    RETURN_INTO_WARM_CELLS,
                    CELLS_OVERHEAT,
                    TOWN_WARMS_CELLS,
                    RANGE_SHORT,
                    SPEED_STABILITY ->
                    new DrivingWords(build, units).of(finding);
            case PROTECTION_BYPASSED -> bypassed(finding);
            case WIRING_UNKNOWN ->
                    "Parts of the wiring are not given ("
                            + missingWiring()
                            + "), so nothing here keeps them from overheating.";
        };
    }

    /**
     * Names what is not known, to be measured or looked up.
     *
     * @param finding about a fact that is missing
     * @return a sentence of one line
     */
    public String missing(Finding finding) {
        return switch (finding.topic()) {
            case PROTECTION_UNKNOWN -> "Trips of the protection: " + missingTrips() + ".";
            case WIRING_UNKNOWN -> "Wiring: " + missingWiring() + ".";
            case SETTING_NOT_GIVEN -> "In the controller: the " + subject(finding) + ".";
            case MOTOR_HEAT_UNKNOWN -> "The temperature of the winding, on the first rides.";
            case BUS_CAPACITANCE_UNKNOWN -> "The controllers' bus capacitance.";
            case FUSE_BREAKING_UNKNOWN -> "What the fuse can break: volts and amperes.";
            default -> of(finding);
        };
    }

    private String fades(Finding finding) {
        double speed = finding.speed().orElseThrow();
        boolean taper = finding.detail().orElseThrow() == FindingDetail.HeldBack.HIGH_VOLTAGE_TAPER;
        return "At "
                + charge(finding)
                + (taper ? " the high-voltage taper" : " the pack limit")
                + (speed > 0.0
                        ? " holds the brake back above " + units.speedDown(speed)
                        : " lets nothing into the pack, and holds the brake back at any speed")
                + ": at top speed "
                + amperes(finding.value())
                + " of the "
                + amperes(finding.limit())
                + " per motor are left. A higher brake current buys nothing there.";
    }

    /** The pack current in either direction: the setting, everywhere, or beyond a charge state. */
    private String packCurrent(Finding finding, boolean returning) {
        String who = constraint(finding);
        if (finding.charge().isEmpty()) {
            return (build.controllers().count() == 1
                            ? "The controller may "
                            : "The controllers together may ")
                    + (returning ? "send " : "draw ")
                    + amperes(finding.value())
                    + (returning ? " into" : " from")
                    + " the pack; "
                    + who
                    + " permits "
                    + limit(finding)
                    + cells(finding)
                    + "."
                    + vanishing(finding);
        }
        if (finding.condition().orElseThrow() instanceof Condition.Never) {
            return (returning ? "Braking sends up to " : "Driving draws up to ")
                    + amperes(finding.value())
                    + (returning ? " into" : " from")
                    + " the pack, more than "
                    + who
                    + " permits at any charge state in use"
                    + cells(finding)
                    + "."
                    + vanishing(finding);
        }
        double bound = 100.0 * finding.charge().getAsDouble();
        return (returning
                        ? "Above " + Numbers.down(bound, 1) + " % charge braking sends back"
                        : "Below " + Numbers.up(bound, 1) + " % charge driving draws")
                + " more than "
                + who
                + " permits: at "
                + Numbers.percent(finding.worstCharge().orElseThrow())
                + " up to "
                + amperes(finding.value())
                + " against "
                + limit(finding)
                + speedFrom(finding)
                + cells(finding)
                + "."
                + vanishing(finding);
    }

    /** What a hard grab does to a charge trip that is quicker than the limiter. */
    private String grabbed(Finding finding) {
        if (!finding.constraint().equals(Optional.of(ConstraintId.REGEN_OVERSHOOT))) {
            return "";
        }
        return surge(finding)
                .map(told -> " " + told)
                .orElse(" The protection may open, and the electric brake vanishes.");
    }

    private String overshoot(Finding finding) {
        return surge(finding)
                .orElse(
                        "Until the regen limiter acts ("
                                + Numbers.time(build.controllers().regenResponse())
                                + ") a hard grab sends up to "
                                + amperes(finding.value())
                                + " into the pack; "
                                + constraint(finding)
                                + " permits "
                                + limit(finding)
                                + cells(finding)
                                + ", and opens sooner: the electric brake vanishes.");
    }

    private Optional<String> surge(Finding finding) {
        return finding.detail()
                .filter(FindingDetail.Surge.class::isInstance)
                .map(detail -> ((FindingDetail.Surge) detail).overshoot())
                .map(new SurgeWords(units)::of);
    }

    private static String bypassed(Finding finding) {
        String where =
                "The protection"
                        + finding.pack().map(number -> " of pack " + number).orElse("")
                        + " is on the charge lead alone: ";
        if (finding.subject().equals(Optional.of(LimitId.PACK_DISCHARGE_CURRENT))) {
            return where
                    + "what driving draws goes past it, so that nothing but the controller's"
                    + " low-voltage taper and current limit keeps riding from emptying the cells"
                    + " below "
                    + volts(finding.limit())
                    + " or from overloading them. It protects neither way.";
        }
        double reached = finding.value().orElseThrow();
        double highest = finding.limit().orElseThrow();
        return where
                + "it cannot open while braking, and nothing stops the cells from being"
                + " overcharged by it. As set, braking brings them to "
                + Numbers.up(reached, 2)
                + " V at "
                + charge(finding)
                + cells(finding)
                + (reached > highest ? ", above the " : ", within the ")
                + volts(finding.limit())
                + " that they bear"
                + (reached > highest
                        ? ": overcharged cells can burn. Lower the charge or the pack regen current."
                        : "; a wrong setting or a fault of the controller goes unnoticed.");
    }

    private static String taperEnds(Finding finding) {
        boolean low = finding.subject().orElseThrow() == LimitId.LOW_VOLTAGE_TAPER;
        return "The "
                + LimitWords.of(finding.subject().orElseThrow())
                + " ends at "
                + volts(finding.value())
                + "; because of "
                + constraint(finding)
                + " it must end at "
                + (low
                        ? Numbers.up(finding.limit().orElseThrow(), 1)
                        : Numbers.down(finding.limit().orElseThrow(), 1))
                + " V or "
                + (low ? "above." : "below.");
    }

    private String vanishing(Finding finding) {
        return switch (finding.constraint().orElseThrow()) {
            case PROTECTION_CHARGE_TRIP, PROTECTION_OVERVOLTAGE_TRIP ->
                    " The protection may open, and the electric brake vanishes.";
            case PROTECTION_DISCHARGE_TRIP, PROTECTION_UNDERVOLTAGE_TRIP ->
                    " The protection may open: drive and electric brake vanish together.";
            case CONTROLLER_VOLTAGE_RATING -> " The controller may fail, and the brake with it.";
            case CELL_CHARGE_RATING, CELL_CHARGE_RATING_AT_CHARGE, CELL_DISCHARGE_RATING ->
                    closedDeck();
            default -> "";
        };
    }

    private String closedDeck() {
        double margin = build.margins().cell();
        return margin > 0.0
                ? " Makers find that rating in open air; "
                        + Numbers.percent(margin)
                        + " is kept from it for a closed deck."
                : "";
    }

    private static String hazard(Finding finding) {
        boolean braking = finding.subject().orElseThrow() == LimitId.MOTOR_BRAKE_CURRENT;
        return switch (finding.constraint().orElseThrow()) {
            case GRIP -> braking ? " The wheels may slide." : " The wheels may spin.";
            case TIPPING -> " A wheel may lift.";
            case RIDER_BALANCE -> " It may throw an unprepared rider.";
            default -> "";
        };
    }

    private String speedFrom(Finding finding) {
        return finding.speed().isPresent() && finding.speed().getAsDouble() > 0.0
                ? ", from " + units.speedDown(finding.speed().getAsDouble()) + " on"
                : "";
    }

    private static String cells(Finding finding) {
        return finding.temperatureC().isPresent()
                ? " (cells at " + Numbers.nearest(finding.temperatureC().getAsDouble(), 0) + " °C)"
                : "";
    }

    private static String subject(Finding finding) {
        return LimitWords.of(finding.subject().orElseThrow());
    }

    private static String constraint(Finding finding) {
        return LimitWords.of(finding.constraint().orElseThrow(), finding.pack());
    }

    private static String charge(Finding finding) {
        return Numbers.percent(finding.charge().orElseThrow()) + " charge";
    }

    private static String amperes(OptionalDouble value) {
        return Numbers.nearest(value.orElseThrow(), 1) + " A";
    }

    private static String limit(Finding finding) {
        return Numbers.down(finding.limit().orElseThrow(), 1) + " A";
    }

    private static String volts(OptionalDouble value) {
        return Numbers.significant(value.orElseThrow()) + " V";
    }

    private String missingTrips() {
        return ofPacks(pack -> missing(pack.protection()));
    }

    private String missingWiring() {
        String ofPacks = ofPacks(pack -> missing(pack.wiring()));
        String trunk = build.battery().isOnePack() ? "" : missing(build.battery().trunk());
        return ofPacks
                + (ofPacks.isEmpty() || trunk.isEmpty() ? "" : "; ")
                + (trunk.isEmpty() ? "" : "common to all packs: " + trunk);
    }

    /** Says what every pack lacks; packs that lack nothing are left out. */
    private String ofPacks(Function<Pack, String> missing) {
        List<Pack> packs = build.battery().packs();
        if (packs.size() == 1) {
            return missing.apply(packs.get(0));
        }
        List<String> texts = new ArrayList<>();
        for (int k = 0; k < packs.size(); k++) {
            String text = missing.apply(packs.get(k));
            if (!text.isEmpty()) {
                texts.add("pack " + (k + 1) + ": " + text);
            }
        }
        return String.join("; ", texts);
    }

    private static String missing(Protection protection) {
        return Lists.of()
                .when(protection.dischargeTrip().isEmpty(), "discharge current")
                .when(protection.chargeTrip().isEmpty(), "charge current")
                .when(protection.cellOvervoltageTrip().isEmpty(), "cell over-voltage")
                .when(protection.cellUndervoltageTrip().isEmpty(), "cell under-voltage")
                .text();
    }

    private static String missing(Wiring wiring) {
        return Lists.of()
                .when(wiring.fuseRating().isEmpty(), "fuse")
                .when(wiring.wireAmpacity().isEmpty(), "wire")
                .when(wiring.plugRating().isEmpty(), "plug")
                .text();
    }

    /** Collects the names for which something holds. */
    private record Lists(List<String> names) {

        static Lists of() {
            return new Lists(new ArrayList<>());
        }

        Lists when(boolean holds, String name) {
            if (holds) {
                names.add(name);
            }
            return this;
        }

        String text() {
            return String.join(", ", names);
        }
    }

    private static String bearing(ConstraintId id) {
        return switch (id) {
            case TIPPING -> "the vehicle bears without a wheel lifting";
            case RIDER_BALANCE -> "a standing rider bears without a hold";
            default -> "a rider bears";
        };
    }
}
