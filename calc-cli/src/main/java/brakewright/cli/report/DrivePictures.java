package brakewright.cli.report;

import brakewright.cli.chart.Axis;
import brakewright.cli.chart.Bars;
import brakewright.cli.chart.Bound;
import brakewright.cli.chart.Chart;
import brakewright.cli.chart.Line;
import brakewright.cli.chart.Plot;
import brakewright.cli.chart.Role;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.SpendingWords;
import brakewright.cli.words.UnitSystem;
import brakewright.driving.Cruise;
import brakewright.operation.Sag;
import brakewright.powertrain.DriveState;
import brakewright.spec.Taper;
import brakewright.spec.Use;
import brakewright.worksheet.PackRow;
import brakewright.worksheet.PullCourse;
import brakewright.worksheet.SagSheet;
import brakewright.worksheet.ThrustMap;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Driving in pictures: voltage, thrust, heat, and where the charge goes. */
final class DrivePictures {

    private final Worksheet sheet;
    private final UnitSystem units;
    private final Use use;

    DrivePictures(Worksheet sheet, UnitSystem units) {
        this.sheet = sheet;
        this.units = units;
        this.use = sheet.build().use();
    }

    /** The voltage at rest and under the set draw, and what it meets. */
    Chart sag() {
        double[] charges = Places.charges(use.chargeTo(), use.chargeFrom());
        List<PackRow> rows = sheet.packAt(charges);
        SagSheet sag = sheet.sag();
        List<Line> lines = new ArrayList<>();
        lines.add(
                new Line(
                        "at rest",
                        Role.GROUND,
                        rows.stream().mapToDouble(PackRow::openCircuitVoltage).toArray()));
        List<Bound> bounds = new ArrayList<>();
        List<Sag.Case> cases =
                sag.cases().stream().filter(each -> each.draw().isSet()).limit(2).toList();
        List<Role> roles = List.of(Role.PRESENT, Role.OTHER);
        for (int i = 0; i < cases.size(); i++) {
            Sag.Draw draw = cases.get(i).draw();
            lines.add(
                    new Line(
                            Numbers.nearest(draw.current(), 1)
                                    + " A, "
                                    + (Double.isInfinite(draw.seconds())
                                            ? "without end"
                                            : Numbers.time(draw.seconds())),
                            roles.get(i),
                            Arrays.stream(charges)
                                    .map(charge -> sag.loaded(draw, charge).pack())
                                    .map(volts -> volts > 0.0 ? volts : Double.NaN)
                                    .toArray()));
        }
        Optional<Taper> taper = sheet.inEffect().lowVoltageTaper();
        taper.ifPresent(
                each -> {
                    bounds.add(
                            Bound.level(
                                    "taper begins",
                                    Role.WANTED,
                                    each.begins(),
                                    Bound.Beyond.NEITHER));
                    bounds.add(
                            Bound.level(
                                    "taper ends", Role.WANTED, each.ends(), Bound.Beyond.NEITHER));
                });
        Optional<Sag.Case> lasting = cases.stream().reduce((one, other) -> other);
        lasting.ifPresent(
                each -> {
                    met(each, Sag.Event.CELL_FLOOR, "lowest cell at its floor", bounds);
                    met(each, Sag.Event.PROTECTION_TRIP, "protection opens", bounds);
                });
        double[] voltages =
                DoubleStream.concat(
                                lines.stream()
                                        .flatMapToDouble(line -> Arrays.stream(line.values())),
                                bounds.stream()
                                        .filter(bound -> !bound.isUpright())
                                        .mapToDouble(Bound::at))
                        .toArray();
        return new Plot(
                "Voltage of the pack over its charge",
                lasting.map(this::sagging).orElse("No draw is set."),
                Axis.exact("charge", "%", 100.0 * use.chargeTo(), 100.0 * use.chargeFrom()),
                Axis.holding("voltage", "V", voltages),
                Places.percent(charges),
                lines,
                bounds);
    }

    private static void met(Sag.Case drawn, Sag.Event event, String name, List<Bound> bounds) {
        drawn.charge(event)
                .ifPresent(charge -> bounds.add(Bound.upright(name, Role.LIMIT, 100.0 * charge)));
    }

    private String sagging(Sag.Case drawn) {
        String draw = "Drawn without end, " + Numbers.nearest(drawn.draw().current(), 1) + " A ";
        return drawn.first()
                .map(
                        first ->
                                draw
                                        + "first meet "
                                        + switch (first.event()) {
                                            case TAPER_BEGINS -> "the beginning of the taper";
                                            case CELL_FLOOR -> "the floor of the lowest cell";
                                            case PROTECTION_TRIP -> "the trip of the protection";
                                            case TAPER_ENDS -> "the end of the taper";
                                        }
                                        + ", at "
                                        + Numbers.up(100.0 * first.charge(), 1)
                                        + " % charge.")
                .orElse(draw + "meet neither taper nor trip in the charge in use.");
    }

    /** The thrust, full and nearly empty, against the road. */
    Chart thrust() {
        double top = sheet.thrustTop();
        double[] speeds = Places.speeds(top);
        ThrustMap map = sheet.thrustAt(new double[] {use.chargeFrom(), use.chargeTo()}, speeds);
        List<Line> lines = new ArrayList<>();
        lines.add(
                new Line(
                        "at " + Numbers.percent(use.chargeFrom()),
                        Role.PRESENT,
                        thrust(map.pulls()[0])));
        lines.add(
                new Line(
                        "at " + Numbers.percent(use.chargeTo()),
                        Role.OTHER,
                        thrust(map.pulls()[1])));
        lines.add(new Line("level road takes", Role.GROUND, map.resistance()));
        if (use.slope() > 0.0) {
            lines.add(
                    new Line(
                            Numbers.percent(use.slope()) + " slope takes",
                            Role.LIMIT,
                            sheet.roadTakes(use.slope(), speeds)));
        }
        return new Plot(
                "Thrust against the road",
                "Where thrust and road meet is the top speed: on level road with the fullest pack "
                        + units.speedText(sheet.drive().topSpeedFlat().speed())
                        + " for 10 s, the speed cap left out.",
                Axis.exact("speed", units.speedUnit(), 0.0, units.speed(top)),
                Axis.holding(
                        "force",
                        "N",
                        lines.stream()
                                .flatMapToDouble(line -> Arrays.stream(line.values()))
                                .map(force -> Math.max(0.0, force))
                                .toArray()),
                Places.shown(units, speeds),
                lines,
                List.of());
    }

    private static double[] thrust(DriveState[] pulls) {
        return Arrays.stream(pulls).mapToDouble(DriveState::thrust).toArray();
    }

    /** How the winding warms; empty where its figures are not known. */
    Optional<Chart> heat() {
        return sheet.pullCourse().map(this::heat);
    }

    private Chart heat(PullCourse course) {
        return new Plot(
                "Winding over a pull from cold",
                sheet.heat()
                        .known()
                        .filter(known -> known.timeAtDriveSetting().isPresent())
                        .map(
                                known ->
                                        "At "
                                                + Numbers.nearest(course.current(), 1)
                                                + " A a cold winding reaches its limit after "
                                                + Numbers.time(
                                                        known.timeAtDriveSetting().getAsDouble())
                                                + ".")
                        .orElse(
                                "At "
                                        + Numbers.nearest(course.current(), 1)
                                        + " A the winding never reaches its limit."),
                Axis.exact("time", "s", 0.0, course.seconds()[course.seconds().length - 1]),
                Axis.holding(
                        "temperature",
                        "°C",
                        course.windingC()[0],
                        course.limitC(),
                        course.windingC()[course.windingC().length - 1]),
                course.seconds(),
                List.of(
                        new Line(
                                "winding at " + Numbers.nearest(course.current(), 1) + " A",
                                Role.PRESENT,
                                course.windingC())),
                List.of(
                        Bound.level(
                                "what it bears", Role.LIMIT, course.limitC(), Bound.Beyond.MORE),
                        Bound.upright("a hard pull", Role.GROUND, course.hardPull())));
    }

    /** Where the charge goes at the cruise speed; empty where the ride takes none. */
    Optional<Chart> spending() {
        Cruise cruise = sheet.range().cruise();
        Map<String, Double> parts =
                SpendingWords.parts(cruise.isHeld() ? cruise.spentHeld() : cruise.spent());
        return parts.entrySet().stream()
                .max(Comparator.comparingDouble(Map.Entry::getValue))
                .filter(most -> most.getValue() > 0.0)
                .map(
                        most ->
                                new Bars(
                                        "Where the charge goes at "
                                                + units.speedText(cruise.speed()),
                                        "The largest part goes into "
                                                + most.getKey()
                                                + ": "
                                                + Numbers.nearest(100.0 * most.getValue(), 0)
                                                + " %.",
                                        Axis.holding("share", "%", 0.0, 100.0 * most.getValue()),
                                        parts.entrySet().stream()
                                                .map(
                                                        part ->
                                                                new Bars.Part(
                                                                        part.getKey(),
                                                                        100.0 * part.getValue()))
                                                .toList()));
    }
}
