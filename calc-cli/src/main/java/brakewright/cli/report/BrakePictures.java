package brakewright.cli.report;

import brakewright.braking.StopOutcome;
import brakewright.buildfile.internal.Printable;
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

/** The brake in pictures: as it is, and as it would be with other settings. */
final class BrakePictures {

    /** Our own choice: a bound that is far off is not shown. */
    private static final double NEAR = 0.8;

    /** Our own choice: more courses are not told apart. */
    private static final int MOST = 4;

    private static final List<Role> ROLES =
            List.of(Role.PRESENT, Role.PROPOSED, Role.OTHER, Role.FURTHER);

    private final List<Shown> shown;
    private final UnitSystem units;
    private final double charge;

    /**
     * One course of a picture.
     *
     * @param name what it is called
     * @param sheet with its settings
     */
    record Shown(String name, Worksheet sheet) {

        /** A name may be that of a file, which may hold anything. */
        Shown {
            name = Printable.shown(name);
        }
    }

    /**
     * Takes what is shown.
     *
     * @param all the present settings first; of many some
     * @param units for speeds and lengths
     */
    BrakePictures(List<Shown> all, UnitSystem units) {
        this.shown = all.subList(0, Math.min(MOST, all.size()));
        this.units = units;
        Worksheet first = shown.get(0).sheet();
        this.charge =
                Math.min(
                        first.ridden().highestSafe().orElse(first.build().use().chargeFrom()),
                        shown.stream()
                                .mapToDouble(each -> each.sheet().build().use().chargeFrom())
                                .min()
                                .orElseThrow());
    }

    private double top() {
        return shown.stream()
                .mapToDouble(each -> each.sheet().inEffect().topSpeed())
                .max()
                .orElseThrow();
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

    /** How hard each brakes. */
    Chart deceleration() {
        double[] speeds = Places.speeds(top());
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            lines.add(
                    new Line(
                            shown.get(i).name(),
                            ROLES.get(i),
                            shown.get(i).sheet().brakeForceAt(charge, speeds).deceleration()));
        }
        Criteria criteria = shown.get(0).sheet().build().criteria();
        double most = greatest(lines);
        List<Bound> bounds = new ArrayList<>();
        bounds.add(
                Bound.level(
                        "wanted", Role.WANTED, criteria.decelerationMin(), Bound.Beyond.NEITHER));
        if (most > NEAR * criteria.riderDecelerationMax()) {
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
                speeds(top()),
                Axis.holding(
                        "deceleration",
                        "m/s²",
                        0.0,
                        most,
                        bounds.stream().mapToDouble(Bound::at).max().orElse(0.0)),
                Places.shown(units, speeds),
                lines,
                bounds);
    }

    private String fading() {
        String at = "At " + Numbers.percent(charge) + " charge ";
        Worksheet present = shown.get(0).sheet();
        return present.fading()
                .filter(each -> each.charge() == charge)
                .filter(each -> each.speed() > 0.0)
                .map(
                        each ->
                                at
                                        + "the brake as set now fades above "
                                        + units.speedDown(each.speed())
                                        + ", where "
                                        + (each.isHeldByTaper() ? "the taper" : "the pack limit")
                                        + " decides, not the brake current.")
                .orElse(
                        at
                                + "and "
                                + units.speedText(present.inEffect().topSpeed())
                                + " it reaches "
                                + Numbers.nearest(
                                        present.brakeForceAt(charge, present.inEffect().topSpeed())
                                                .deceleration()[0],
                                        2)
                                + " m/s² as set now.");
    }

    /** How far each needs to stop. */
    Chart stops() {
        double[] speeds = Places.speeds(top());
        double[] from = Arrays.copyOfRange(speeds, 1, speeds.length);
        List<StopCourse> courses =
                shown.stream().map(each -> each.sheet().stopsAt(charge, from)).toList();
        List<Line> lines = new ArrayList<>();
        lines.add(
                new Line(
                        "at the wanted deceleration",
                        Role.WANTED,
                        length(courses.get(0).wanted())));
        for (int i = 0; i < shown.size(); i++) {
            lines.add(new Line(shown.get(i).name(), ROLES.get(i), distances(courses.get(i))));
        }
        return new Plot(
                "Way to stop, level dry road",
                stopped(courses),
                Axis.exact("speed at the beginning", units.speedUnit(), 0.0, units.speed(top())),
                Axis.holding("way, reaction apart", units.lengthUnit(), 0.0, greatest(lines)),
                Places.shown(units, from),
                lines,
                List.of());
    }

    private String stopped(List<StopCourse> courses) {
        int last = courses.get(0).speeds().length - 1;
        StringBuilder ways = new StringBuilder();
        for (int i = 0; i < shown.size(); i++) {
            ways.append(i == 0 ? "" : i == shown.size() - 1 ? " and " : ", ")
                    .append(told(courses.get(i).outcomes().get(last)))
                    .append(" (")
                    .append(shown.get(i).name())
                    .append(')');
        }
        return "From "
                + units.speedText(courses.get(0).speeds()[last])
                + " at "
                + Numbers.percent(charge)
                + " charge it takes "
                + ways
                + "; the wanted deceleration would take "
                + units.lengthText(courses.get(0).wanted()[last])
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

    private static double greatest(List<Line> lines) {
        return lines.stream()
                .flatMapToDouble(line -> Arrays.stream(line.values()))
                .filter(Double::isFinite)
                .max()
                .orElse(0.0);
    }
}
