package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.review.FirstStop;
import brakewright.ride.StopOutcome;
import brakewright.spec.Build;
import brakewright.worksheet.Worksheet;
import java.util.List;

/** The first stop after a full charge, and what helps. */
final class FirstStopText {

    private final Worksheet sheet;
    private final UnitSystem units;
    private final Page page;

    FirstStopText(Worksheet sheet, UnitSystem units, Page page) {
        this.sheet = sheet;
        this.units = units;
        this.page = page;
    }

    void print(Ink ink) {
        List<FirstStop> stops = sheet.firstStops();
        FirstStop own = stops.get(0);
        page.line(ink.heading("The first stop after a full charge"));
        page.paragraph(
                "",
                2,
                "From "
                        + units.speedText(own.speed())
                        + " at "
                        + Numbers.percent(own.charge())
                        + " charge, level dry road:");
        for (FirstStop stop : stops) {
            page.paragraph(
                    "  cells at " + Numbers.nearest(stop.cellsC(), 0) + " °C",
                    18,
                    what(stop) + " " + then(stop));
        }
        FirstStop worst = worst(stops);
        if (!worst.isSafe()) {
            page.paragraph("  what helps", 18, remedy(worst));
        }
    }

    private static FirstStop worst(List<FirstStop> stops) {
        FirstStop worst = stops.get(0);
        for (FirstStop stop : stops) {
            if (stop.packCurrent() - stop.mayTake() > worst.packCurrent() - worst.mayTake()) {
                worst = stop;
            }
        }
        return worst;
    }

    private String what(FirstStop stop) {
        String flow =
                "up to "
                        + Numbers.nearest(stop.packCurrent(), 1)
                        + " A go into the pack, which may take "
                        + Numbers.down(stop.mayTake(), 1)
                        + " A; cells reach "
                        + Numbers.nearest(stop.cellVoltage(), 2)
                        + " V.";
        if (stop.outcome() instanceof StopOutcome.Stopped stopped) {
            return flow
                    + " If nothing opens, it stops within "
                    + units.lengthText(stopped.distance())
                    + ".";
        }
        return flow + " It does not stop.";
    }

    private static String then(FirstStop stop) {
        String left =
                "then "
                        + Numbers.down(stop.leftDeceleration(), 2)
                        + " m/s² are left of all braking.";
        return switch (stop.opening()) {
            case NOTHING ->
                    stop.isSafe()
                            ? "All within limits."
                            : "No trip that is described is reached, but a limit is.";
            case CHARGE_TRIP ->
                    "The protection's charge trip opens, typically within "
                            + Numbers.time(stop.opening().typicalDelay())
                            + "; "
                            + left;
            case OVERVOLTAGE_TRIP ->
                    "The protection's over-voltage trip opens, typically after "
                            + Numbers.time(stop.opening().typicalDelay())
                            + "; "
                            + left;
        };
    }

    private String remedy(FirstStop stop) {
        Build build = sheet.build();
        boolean never = stop.chargeTo().orElse(1.0) <= build.use().chargeTo();
        String charge =
                never
                        ? ""
                        : "Charge to "
                                + Numbers.down(100.0 * stop.chargeTo().orElseThrow(), 0)
                                + " % only; or ride "
                                + units.distanceText(stop.rideFirst().orElseThrow())
                                + " at "
                                + units.speedText(build.use().speedMax())
                                + " before braking hard; or set";
        String current =
                (never ? "Set" : charge)
                        + " the pack regen current to "
                        + Numbers.down(stop.safeRegen(), 1)
                        + " A per controller";
        return current
                + sheet.limits()
                        .highVoltageTaper()
                        .value()
                        .map(
                                taper ->
                                        "; or set a high-voltage taper from "
                                                + Numbers.down(taper.begins(), 1)
                                                + " to "
                                                + Numbers.down(taper.ends(), 1)
                                                + " V")
                        .orElse("")
                + ". Each of them weakens the electric brake while the pack is full.";
    }
}
