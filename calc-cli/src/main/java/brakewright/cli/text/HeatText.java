package brakewright.cli.text;

import brakewright.cli.words.Initial;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.driving.Climb;
import brakewright.heat.DoubtedHeat;
import brakewright.heat.PackHeat;
import brakewright.spec.Build;
import brakewright.worksheet.HeatSheet;
import brakewright.worksheet.WarmStart;
import brakewright.worksheet.Worksheet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** How motor and pack warm, and when they may work again. */
final class HeatText {

    private static final int LABEL = 19;

    /** A narrower range is not told [K]. */
    private static final double LEAST_DOUBT = 1.0;

    private final Worksheet sheet;
    private final DoubtedHeat.Spreads spreads;
    private final UnitSystem units;
    private final Page page;
    private final Build build;

    HeatText(Worksheet sheet, DoubtedHeat.Spreads spreads, UnitSystem units, Page page) {
        this.sheet = sheet;
        this.spreads = spreads;
        this.units = units;
        this.page = page;
        this.build = sheet.build();
    }

    void print(Ink ink) {
        page.line(ink.heading("Heat of motor and pack"));
        if (sheet.heat().known().isPresent()) {
            motor(sheet.heat().known().get());
        } else {
            entry("motor", "not computed: the motor's thermal figures are not given");
        }
        Optional<PackHeat> cruising = sheet.heat().packCruising();
        Optional<PackHeat> pulling = sheet.heat().packPulling();
        entry("pack, cruising", isCruising() ? pack(cruising, cruising()) + doubt() : unreached());
        entry("pack, set draw", pack(pulling, pulling()));
        sheet.heat()
                .warmRide()
                .ifPresent(
                        ride ->
                                entry(
                                        "pack, warm start",
                                        "From "
                                                + Numbers.nearest(ride.heat().startC(), 0)
                                                + " °C, the warmest in use: "
                                                + Initial.small(warms(ride.heat(), cruising()))));
        charging(isCruising() ? cruising : Optional.empty(), pulling);
    }

    /** How far the temperature after cruising is known. */
    private String doubt() {
        return sheet.heat()
                .doubtedCruise(sheet, spreads)
                .filter(range -> range.widthK() >= LEAST_DOUBT)
                .map(
                        range ->
                                " As resistance and the way to the air are known, "
                                        + Numbers.nearest(range.lowC(), 0)
                                        + " to "
                                        + Numbers.nearest(range.highC(), 0)
                                        + " °C.")
                .orElse("");
    }

    private void entry(String label, String text) {
        page.paragraph("  " + label, LABEL, text);
    }

    private void motor(HeatSheet.Known heat) {
        double drive = sheet.inEffect().motorDrive();
        entry(
                "continuous",
                Numbers.down(heat.continuousCurrent(), 1)
                        + " A per motor: winding at its limit of "
                        + Numbers.nearest(build.motor().windingLimitC(), 0)
                        + " °C, air at "
                        + Numbers.nearest(build.use().climate().ambientC(), 0)
                        + " °C, drag loss of "
                        + Numbers.nearest(heat.caseLoss(), 0)
                        + " W as at "
                        + units.speedText(heat.speed())
                        + ".");
        entry(
                "drive current",
                Numbers.nearest(drive, 1)
                        + " A "
                        + lasts(heat.timeAtDriveSetting())
                        + (heat.timeAtDriveSetting().isPresent()
                                ? " from cold; " + warm(heat)
                                : "."));
        if (heat.timeAtDriveSetting().isPresent()) {
            entry("recovery", recovery(heat));
        }
        entry(
                "brake current",
                Numbers.nearest(sheet.inEffect().motorBrake(), 1)
                        + " A "
                        + lasts(heat.timeAtBrakeSetting())
                        + (heat.timeAtBrakeSetting().isPresent() ? " from cold." : "."));
        Climb climb = sheet.drive().climb();
        entry(
                "steepest climb",
                DriveTable.steepest(climb.steepest())
                        + " at a crawl takes "
                        + Numbers.nearest(climb.current(), 1)
                        + " A and "
                        + (climb.heldFor().isPresent()
                                ? "is held for "
                                        + Numbers.time(climb.heldFor().getAsDouble())
                                        + " from cold; "
                                        + DriveTable.steepest(climb.steepestSustained())
                                        + " may be held for any time."
                                : "may be held for any time."));
    }

    private static String lasts(OptionalDouble time) {
        return time.isPresent()
                ? "lasts " + Numbers.time(time.getAsDouble())
                : "may flow for any time";
    }

    private String warm(HeatSheet.Known heat) {
        String ride = "a long ride at " + units.speedText(build.use().riding().cruiseSpeed());
        if (heat.afterCruise() instanceof WarmStart.Borne warm) {
            return "after "
                    + ride
                    + " (winding at "
                    + Numbers.nearest(warm.windingC(), 0)
                    + " °C) it "
                    + lasts(warm.lasts())
                    + ".";
        }
        return heat.afterCruise() instanceof WarmStart.TooHot
                ? ride + " is more than the winding bears."
                : ride + " warms nothing before: the settings do not reach that speed.";
    }

    private String recovery(HeatSheet.Known heat) {
        String pull = "hard pull of " + Numbers.time(build.use().effort().hardPull());
        return heat.recovery().isPresent()
                ? "After the limit, "
                        + Numbers.time(heat.recovery().getAsDouble())
                        + " at rest until another "
                        + pull
                        + " is borne."
                : "A " + pull + " is not borne even from cold.";
    }

    private boolean isCruising() {
        return sheet.drive().isCruiseHeld(build);
    }

    private String unreached() {
        return "not computed: the settings do not reach the cruise speed, "
                + units.speedText(build.use().riding().cruiseSpeed());
    }

    private String cruising() {
        return "at " + units.speedText(build.use().riding().cruiseSpeed());
    }

    private String pulling() {
        return "at " + Numbers.nearest(sheet.inEffect().packDischarge(), 1) + " A";
    }

    private String pack(Optional<PackHeat> heat, String how) {
        return heat.isPresent() ? warms(heat.get(), how) : missing(how);
    }

    private String missing(String how) {
        boolean known =
                build.battery().packs().stream()
                        .anyMatch(pack -> pack.cell().heatCapacity().isPresent());
        if (!known) {
            return "not computed: the heat capacity of the cells is not known; give"
                    + " pack.cell.mass";
        }
        return "not computed: a full discharge "
                + how
                + (sheet.inEffect().packDischarge() > 0.0
                        ? " is more than the pack can give"
                        : ", for no draw is set");
    }

    private String warms(PackHeat heat, String how) {
        String cells =
                " the cells" + (build.battery().isOnePack() ? "" : " of pack " + heat.pack());
        String start = "A full discharge " + how + " takes " + Numbers.time(heat.time());
        if (heat.stoppedAfter().isPresent()) {
            double after = heat.stoppedAfter().getAsDouble();
            return start
                    + ", but"
                    + cells
                    + (after > 0.0 ? " reach" : " are above")
                    + " the "
                    + Numbers.down(heat.dischargeLimitC(), 0)
                    + " °C that their maker permits "
                    + (after > 0.0
                            ? "after about " + Numbers.time(after) + ": stop before that."
                            : "before it begins.");
        }
        double rise = heat.warmerByK();
        return start
                + " and "
                + (rise < 0.0 ? "cools" : "warms")
                + cells
                + " by "
                + (isWayKnown(heat) ? "about " : "up to ")
                + Numbers.nearest(Math.abs(rise), 0)
                + " K, to "
                + Numbers.nearest(heat.endC(), 0)
                + " °C.";
    }

    private boolean isWayKnown(PackHeat heat) {
        return build.battery().packs().get(heat.pack() - 1).toAir().isPresent();
    }

    private void charging(Optional<PackHeat> cruising, Optional<PackHeat> pulling) {
        if (cruising.isEmpty() && pulling.isEmpty()) {
            return;
        }
        String first = cruising.map(this::advice).orElse("");
        String second = pulling.map(this::advice).orElse("");
        String advice =
                first.equals(second)
                        ? "After either, " + first + "."
                        : (first.isEmpty() ? "" : "After cruising, " + first + ". ")
                                + (second.isEmpty() ? "" : "After the set draw, " + second + ".");
        boolean unknown =
                Stream.of(cruising, pulling)
                        .flatMap(Optional::stream)
                        .anyMatch(heat -> !isWayKnown(heat));
        entry(
                "charging",
                advice.strip()
                        + (unknown
                                ? " As pack.to_air is not given, no heat is taken to leave the cells:"
                                        + " these are the most."
                                : ""));
    }

    private String advice(PackHeat heat) {
        if (heat.endC() <= heat.chargeLimitC()) {
            return "the cells need not cool before they are charged";
        }
        String cool =
                "let the cells cool below "
                        + Numbers.down(heat.chargeLimitC(), 0)
                        + " °C before charging; ";
        if (heat.chargeAfter().isPresent()) {
            return cool + "about " + Numbers.time(heat.chargeAfter().getAsDouble());
        }
        return cool
                + (isWayKnown(heat)
                        ? "the air is too warm for that"
                        : "how long that takes is not known, measure their temperature");
    }
}
