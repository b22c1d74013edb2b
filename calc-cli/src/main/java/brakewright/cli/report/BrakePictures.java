package brakewright.cli.report;

import brakewright.braking.StopOutcome;
import brakewright.cli.chart.Axis;
import brakewright.cli.chart.Bound;
import brakewright.cli.chart.Chart;
import brakewright.cli.chart.FieldChart;
import brakewright.cli.chart.Line;
import brakewright.cli.chart.Plot;
import brakewright.cli.chart.Region;
import brakewright.cli.chart.Role;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.spec.Criteria;
import brakewright.spec.Use;
import brakewright.worksheet.ReturnMap;
import brakewright.worksheet.StopCourse;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/** The brake in pictures: as it is, and as it would be. */
final class BrakePictures {

    private final Worksheet present;
    private final Worksheet other;
    private final String name;
    private final UnitSystem units;
    private final double charge;

    /**
     * Takes what is shown.
     *
     * @param present the settings as they are
     * @param other the settings as they would be
     * @param name what these are called
     * @param units for speeds and lengths
     */
    BrakePictures(Worksheet present, Worksheet other, String name, UnitSystem units) {
        this.present = present;
        this.other = other;
        this.name = name;
        this.units = units;
        this.charge =
                Math.min(
                        present.ridden().highestSafe().orElse(present.build().use().chargeFrom()),
                        other.build().use().chargeFrom());
    }

    private Axis speeds(double top) {
        return Axis.exact("speed", units.speedUnit(), 0.0, units.speed(top));
    }

    /** What goes into the pack of a sheet, over speed and charge. */
    Chart map(Worksheet sheet, String title) {
        Use use = sheet.build().use();
        double top = sheet.inEffect().topSpeed();
        ReturnMap map =
                sheet.returnMap(
                        Places.charges(use.chargeTo(), use.chargeFrom()), Places.speeds(top));
        double most = Arrays.stream(map.asked()).flatMapToDouble(Arrays::stream).max().orElse(0.0);
        boolean isBeyond = isAny(map.beyond());
        boolean isHeld = isAny(map.heldBack());
        return new FieldChart(
                title,
                (isBeyond
                                ? "Hatched is where braking in full sends more into the pack than it"
                                        + " may take. "
                                : "Nowhere in use does braking in full send more into the pack than it"
                                        + " may take. ")
                        + (isHeld
                                ? "Beyond the broken line pack limit or taper hold the brake back:"
                                        + " there a higher motor brake current buys nothing."
                                : "Nothing holds the brake back."),
                speeds(top),
                Axis.exact("charge", "%", 100.0 * use.chargeTo(), 100.0 * use.chargeFrom()),
                Axis.holding("asked of the pack", "A", 0.0, most),
                Places.shown(units, map.speeds()),
                Places.percent(map.charges()),
                map.asked(),
                List.of(
                        new Region("too much", Role.LIMIT, true, map.beyond(), 0.0),
                        new Region("held back", Role.OTHER, false, map.heldBack(), 0.0)));
    }

    private static boolean isAny(double[][] values) {
        return Arrays.stream(values).flatMapToDouble(Arrays::stream).anyMatch(each -> each > 0.0);
    }

    /** How hard both brake. */
    Chart deceleration() {
        double top = Math.max(present.inEffect().topSpeed(), other.inEffect().topSpeed());
        double[] speeds = Places.speeds(top);
        double[] now = present.brakeForceAt(charge, speeds).deceleration();
        double[] then = other.brakeForceAt(charge, speeds).deceleration();
        Criteria criteria = present.build().criteria();
        double most =
                DoubleStream.concat(Arrays.stream(now), Arrays.stream(then)).max().orElse(0.0);
        List<Bound> bounds = new ArrayList<>();
        bounds.add(
                Bound.level(
                        "wanted", Role.WANTED, criteria.decelerationMin(), Bound.Beyond.NEITHER));
        if (most > 0.8 * criteria.riderDecelerationMax()) {
            bounds.add(
                    Bound.level(
                            "what a rider bears",
                            Role.LIMIT,
                            criteria.riderDecelerationMax(),
                            Bound.Beyond.MORE));
        }
        return new Plot(
                "Deceleration by the electric brake, level road",
                fading(),
                speeds(top),
                Axis.holding(
                        "deceleration",
                        "m/s²",
                        0.0,
                        most,
                        bounds.stream().mapToDouble(Bound::at).max().orElse(0.0)),
                Places.shown(units, speeds),
                List.of(
                        new Line("set now", Role.PRESENT, now),
                        new Line(name, Role.PROPOSED, then)),
                bounds);
    }

    private String fading() {
        String at = "At " + Numbers.percent(charge) + " charge ";
        return present.fading()
                .filter(each -> each.speed() > 0.0)
                .map(
                        each ->
                                at
                                        + "the brake as set now fades above "
                                        + units.speedDown(each.speed())
                                        + ", where "
                                        + (each.isHeldByTaper() ? "the taper" : "the pack limit")
                                        + " decides, not the brake current.")
                .orElse(at + "the pack holds the brake as set now back at no speed in use.");
    }

    /** How far both need to stop. */
    Chart stops() {
        double top = Math.max(present.inEffect().topSpeed(), other.inEffect().topSpeed());
        double[] speeds = Places.speeds(top);
        double[] from = Arrays.copyOfRange(speeds, 1, speeds.length);
        StopCourse now = present.stopsAt(charge, from);
        StopCourse then = other.stopsAt(charge, from);
        double[] wanted = length(now.wanted());
        double[] before = distances(now);
        double[] after = distances(then);
        return new Plot(
                "Way to stop, level dry road",
                stopped(now, then),
                Axis.exact("speed at the beginning", units.speedUnit(), 0.0, units.speed(top)),
                Axis.holding(
                        "way, reaction apart",
                        units.lengthUnit(),
                        DoubleStream.of(0.0, greatest(wanted), greatest(before), greatest(after))
                                .toArray()),
                Places.shown(units, from),
                List.of(
                        new Line("at the wanted deceleration", Role.WANTED, wanted),
                        new Line("set now", Role.PRESENT, before),
                        new Line(name, Role.PROPOSED, after)),
                List.of());
    }

    private String stopped(StopCourse now, StopCourse then) {
        int last = now.speeds().length - 1;
        return "From "
                + units.speedText(now.speeds()[last])
                + " at "
                + Numbers.percent(charge)
                + " charge it takes "
                + told(now.outcomes().get(last))
                + " as set now and "
                + told(then.outcomes().get(last))
                + " "
                + name
                + "; the wanted deceleration would take "
                + units.lengthText(now.wanted()[last])
                + ".";
    }

    private String told(StopOutcome outcome) {
        return outcome instanceof StopOutcome.Stopped stopped
                ? units.lengthText(stopped.distance())
                : "no end";
    }

    private double[] distances(StopCourse course) {
        return length(
                course.outcomes().stream()
                        .mapToDouble(
                                each ->
                                        each instanceof StopOutcome.Stopped stopped
                                                ? stopped.distance()
                                                : Double.NaN)
                        .toArray());
    }

    private double[] length(double[] metres) {
        return Arrays.stream(metres).map(units::length).toArray();
    }

    private static double greatest(double[] values) {
        return Arrays.stream(values).filter(Double::isFinite).max().orElse(0.0);
    }
}
