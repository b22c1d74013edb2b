package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.driving.Cruise;
import brakewright.driving.MeasuredRange;
import brakewright.driving.StopAndGo;
import brakewright.spec.Riding;
import brakewright.spec.Use;
import brakewright.worksheet.RangeSheet;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** How far the vehicle goes, and what one change each does to that. */
final class RangeTable {

    private static final String ROW = "  %10s  %6s %9s %9s %11s %11s  %s";
    private static final String EFFECT = "  %-34s %11s %9s";
    private static final int MOST_ROWS = 12;

    /** A way that rounds to nothing in either unit [m]. */
    private static final double LITTLE = 80.0;

    private final Worksheet sheet;
    private final RangeSheet range;
    private final UnitSystem units;
    private final Page page;
    private final Use use;
    private final Riding riding;

    RangeTable(Worksheet sheet, RangeSheet range, UnitSystem units, Page page) {
        this.sheet = sheet;
        this.range = range;
        this.units = units;
        this.page = page;
        this.use = sheet.build().use();
        this.riding = use.riding();
    }

    void print(Ink ink) {
        page.line(ink.heading("Range"));
        page.paragraph(
                "",
                2,
                "from "
                        + Numbers.percent(use.chargeFrom())
                        + " down to "
                        + Numbers.percent(use.chargeTo())
                        + " charge at steady speed, level road, "
                        + wind()
                        + ", cells at "
                        + Numbers.nearest(sheet.build().battery().temperatureC(), 0)
                        + " °C, "
                        + Numbers.nearest(riding.idlePower(), 0)
                        + " W for electronics and lights; resistance that of a draw that lasts");
        boolean miles = units == UnitSystem.IMPERIAL;
        page.row(
                ROW,
                "speed",
                "",
                miles ? "Wh/mi" : "Wh/km",
                miles ? "Wh/km" : "Wh/mi",
                "range",
                "",
                "");
        for (Cruise each : shown(range)) {
            row(each, each.speed() == range.cruise().speed());
        }
        plausible(range.cruise());
        town(range);
        range.measured().ifPresent(this::measured);
        new SpendingBars(units, page).print(range.cruise());
        effects(range);
    }

    private String wind() {
        double wind = riding.headwind();
        if (wind == 0.0) {
            return "calm air";
        }
        return wind > 0.0
                ? "a headwind of " + units.speedText(wind)
                : "a wind of " + units.speedText(-wind) + " from behind";
    }

    /** The cruise speed, not too many others, and no more than one that is never held. */
    private static List<Cruise> shown(RangeSheet range) {
        int step = 1 + (range.steady().size() - 1) / MOST_ROWS;
        List<Cruise> shown = new ArrayList<>();
        boolean held = true;
        for (int i = 0; i < range.steady().size() && held; i += step) {
            shown.add(range.steady().get(i));
            held = range.steady().get(i).distanceHeld() > 0.0;
        }
        shown.add(range.cruise());
        shown.sort(Comparator.comparingDouble(Cruise::speed));
        return shown;
    }

    private void row(Cruise ride, boolean cruise) {
        boolean miles = units == UnitSystem.IMPERIAL;
        boolean far = !Double.isFinite(ride.distance());
        String perKilometre =
                ride.isHeld() ? Numbers.nearest(Travel.perKilometre(ride.consumption()), 1) : "-";
        String perMile =
                ride.isHeld() ? Numbers.nearest(Travel.perMile(ride.consumption()), 1) : "-";
        page.row(
                ROW,
                units.speedText(ride.speed()),
                cruise ? "cruise" : "",
                miles ? perMile : perKilometre,
                miles ? perKilometre : perMile,
                far ? "endless" : Travel.distance(units, ride.distance()),
                far ? "" : Travel.otherDistance(units, ride.distance()),
                remark(ride));
    }

    private String remark(Cruise ride) {
        if (!Double.isFinite(ride.distance())) {
            return "the wind does the work";
        }
        if (!(ride.distance() > 0.0)) {
            return "does not move off";
        }
        if (!ride.isHeld()) {
            return "not held, slower all the way";
        }
        if (ride.heldDownTo() > use.chargeTo() + 1e-6) {
            double slower = ride.distanceSlower();
            return "down to "
                    + Numbers.up(100.0 * ride.heldDownTo(), 0)
                    + " %"
                    + (slower < LITTLE
                            ? ""
                            : ", " + Travel.distance(units, slower) + " of it slower");
        }
        return "";
    }

    private void plausible(Cruise cruise) {
        if (!(cruise.distance() > 0.0) || !Double.isFinite(cruise.distance())) {
            return;
        }
        if (!range.isCruisePlausible()) {
            page.paragraph(
                    "",
                    2,
                    "Unlikely: "
                            + Travel.consumption(units, range.cruiseConsumption())
                            + " while cruising lies outside the 3 to 50 Wh/km to be expected"
                            + " of a small vehicle (our own choice). Check the inputs, above all"
                            + " vehicle.drag_area, vehicle.rolling_resistance and the masses.");
        }
    }

    private void town(RangeSheet range) {
        if (!(riding.stopsPerMetre() > 0.0)) {
            return;
        }
        String stops =
                "In town, with a stop from "
                        + units.speedText(riding.cruiseSpeed())
                        + " every "
                        + Travel.apart(units, riding.metresPerStop());
        if (range.town().isEmpty()) {
            page.paragraph(
                    "",
                    2,
                    stops
                            + ": not computed, for at some charge in use the vehicle cannot pull"
                            + " away and stop within that length");
            return;
        }
        StopAndGo town = range.town().get();
        page.paragraph(
                "",
                2,
                stops
                        + (town.reached() < town.speed() - 1e-3
                                ? " ("
                                        + units.speedText(town.reached())
                                        + " is reached at middle charge)"
                                : "")
                        + ": "
                        + Travel.distance(units, town.distance())
                        + " at "
                        + Travel.consumption(units, town.consumption())
                        + ", mean speed "
                        + units.speedText(town.meanSpeed())
                        + " while moving. Braking brings back no more than "
                        + Numbers.nearest(100.0 * town.returnedShare(), 1)
                        + " % of what leaves the pack, the settings as they are and no trip"
                        + " opening."
                        + farther(town));
    }

    /** Why stops do not always cost distance. */
    private String farther(StopAndGo town) {
        return town.distance() > range.cruise().distance()
                ? " It goes farther than at a steady "
                        + units.speedText(range.cruise().speed())
                        + ": it rides slower on average, short draws cost the pack less than one"
                        + " that lasts, and braking brings part of it back."
                : "";
    }

    private void measured(MeasuredRange measured) {
        page.paragraph(
                "",
                2,
                "With the measured "
                        + Travel.consumption(units, measured.measured().energyPerMetre())
                        + " at "
                        + units.speedText(measured.measured().speed())
                        + ": "
                        + Travel.distance(units, measured.distance())
                        + (measured.downTo() > use.chargeTo() + 1e-6
                                ? ", down to "
                                        + Numbers.up(100.0 * measured.downTo(), 0)
                                        + " % charge; below, the settings no longer give that"
                                        + " power."
                                : "."));
    }

    private void effects(RangeSheet range) {
        if (!(range.cruise().distance() > 0.0) || !Double.isFinite(range.cruise().distance())) {
            return;
        }
        page.row(EFFECT, "one change each, cruise speed", "range", "change");
        for (RangeSheet.Effect effect : range.effects()) {
            boolean far = !Double.isFinite(effect.distance());
            page.row(
                    EFFECT,
                    name(effect.change()),
                    far ? "endless" : Travel.distance(units, effect.distance()),
                    far ? "" : change(range.change(effect)));
        }
    }

    private static String change(double share) {
        String text = Numbers.nearest(100.0 * share, 0);
        return (share > 0.0 && !text.equals("0") ? "+" : "") + text + " %";
    }

    private String name(RangeSheet.Change change) {
        return switch (change) {
            case RIDER_HEAVIER -> "  rider 10 kg heavier";
            case COLDER -> "  air and cells 15 K colder";
            case HIGHER -> "  road 1000 m higher";
            case HEADWIND -> "  headwind " + units.speedText(3.0) + " stronger";
            case UPHILL -> "  road rising by 1 % throughout";
        };
    }
}
