package brakewright.battery;

import brakewright.spec.Battery;
import brakewright.spec.Curve;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * Which charge state each of several packs has at a charge state of all together.
 *
 * <p>Packs in parallel settle to one voltage at rest, so the charge state of each is where its
 * open-circuit voltage equals that of the others. All together are full where the first is full,
 * and empty where the first is empty. Packs in series are taken to be full together; from there
 * each gives the same ampere-hours, and all together are empty where the smallest is.
 *
 * <p>Source: Kirchhoff's laws. Open-circuit voltages are straight lines between their points, so
 * the maps are too, and hold without error.
 */
final class ChargeMap {

    private final double capacityAh;
    private final List<Curve> charges;

    /**
     * The last found: one place is asked about both ways of the current. A record whose fields are
     * final may be handed from thread to thread without more.
     */
    private Standing standing = new Standing(Double.NaN, new double[0]);

    /** The charge state of each pack at one of all together. */
    private record Standing(double charge, double[] own) {}

    private ChargeMap(double capacityAh, List<Curve> charges) {
        this.capacityAh = capacityAh;
        this.charges = List.copyOf(charges);
    }

    /** What all together give from full to empty [Ah]. */
    double capacityAh() {
        return capacityAh;
    }

    /** The charge state of each pack over that of all together. */
    List<Curve> charges() {
        return charges;
    }

    /** The charge state of each pack where all together have one; not to be written to. */
    double[] at(double charge) {
        Standing there = standing;
        if (there.charge() != charge) {
            double[] own = new double[charges.size()];
            for (int k = 0; k < own.length; k++) {
                own[k] = charges.get(k).at(charge);
            }
            there = new Standing(charge, own);
            standing = there;
        }
        return there.own();
    }

    static ChargeMap of(Battery battery) {
        return battery.joining() == Joining.PARALLEL
                ? parallel(battery.packs())
                : series(battery.packs());
    }

    private static ChargeMap series(List<Pack> packs) {
        double capacity = packs.stream().mapToDouble(Pack::capacityAh).min().orElseThrow();
        List<Curve> charges = new ArrayList<>();
        for (Pack pack : packs) {
            charges.add(line(1.0 - capacity / pack.capacityAh(), 1.0));
        }
        return new ChargeMap(capacity, charges);
    }

    private static ChargeMap parallel(List<Pack> packs) {
        if (packs.stream().allMatch(pack -> hasVoltageOf(packs.get(0), pack))) {
            double capacity = packs.stream().mapToDouble(Pack::capacityAh).sum();
            return new ChargeMap(capacity, packs.stream().map(pack -> line(0.0, 1.0)).toList());
        }
        List<double[]> points = commonPoints(packs);
        double[] held = points.stream().mapToDouble(point -> held(packs, point)).toArray();
        double empty = held[0];
        double capacity = held[held.length - 1] - empty;
        double[] together = new double[held.length];
        for (int i = 0; i < held.length; i++) {
            together[i] = (held[i] - empty) / capacity;
        }
        together[held.length - 1] = 1.0;
        List<Curve> charges = new ArrayList<>();
        for (int k = 0; k < packs.size(); k++) {
            int pack = k;
            charges.add(
                    Curve.of(
                            together, points.stream().mapToDouble(point -> point[pack]).toArray()));
        }
        return new ChargeMap(capacity, charges);
    }

    /** Charge states of all packs at every voltage where one of them has a point of its curve. */
    private static List<double[]> commonPoints(List<Pack> packs) {
        double lowest = packs.stream().mapToDouble(pack -> voltage(pack, 0.0)).max().orElseThrow();
        double highest = packs.stream().mapToDouble(pack -> voltage(pack, 1.0)).min().orElseThrow();
        TreeSet<Double> voltages = new TreeSet<>(List.of(lowest, highest));
        for (Pack pack : packs) {
            for (double cellVoltage : pack.cell().openCircuitVoltage().ordinates()) {
                double voltage = pack.series() * cellVoltage;
                if (voltage > lowest && voltage < highest) {
                    voltages.add(voltage);
                }
            }
        }
        List<double[]> points = new ArrayList<>();
        for (double voltage : voltages) {
            addIfNew(points, packs, packs.stream().mapToDouble(p -> first(p, voltage)).toArray());
            addIfNew(points, packs, packs.stream().mapToDouble(p -> last(p, voltage)).toArray());
        }
        return points;
    }

    /** Where a curve is level the charge moves on at one voltage; elsewhere both ends are one. */
    private static void addIfNew(List<double[]> points, List<Pack> packs, double[] point) {
        if (points.isEmpty()
                || held(packs, point) > held(packs, points.get(points.size() - 1)) + SAME_AH) {
            points.add(point);
        }
    }

    /** Closer points of a map are one [Ah]. */
    private static final double SAME_AH = 1e-9;

    private static double held(List<Pack> packs, double[] charges) {
        double held = 0.0;
        for (int k = 0; k < charges.length; k++) {
            held += packs.get(k).capacityAh() * charges[k];
        }
        return held;
    }

    private static double first(Pack pack, double voltage) {
        return inside(ofPack(pack).firstReaches(voltage));
    }

    private static double last(Pack pack, double voltage) {
        return inside(ofPack(pack).lastStays(voltage));
    }

    /** In volts of the pack: a voltage divided by S again may miss the level it was read from. */
    private static Curve ofPack(Pack pack) {
        Curve ofCell = pack.cell().openCircuitVoltage();
        return Curve.of(
                ofCell.abscissas(),
                Arrays.stream(ofCell.ordinates()).map(each -> pack.series() * each).toArray());
    }

    private static double inside(double charge) {
        return Math.max(0.0, Math.min(1.0, charge));
    }

    private static double voltage(Pack pack, double charge) {
        return pack.series() * pack.cell().openCircuitVoltage().at(charge);
    }

    private static boolean hasVoltageOf(Pack one, Pack other) {
        return one.series() == other.series()
                && one.cell().openCircuitVoltage().equals(other.cell().openCircuitVoltage());
    }

    private static Curve line(double empty, double full) {
        return Curve.of(new double[] {0.0, 1.0}, new double[] {empty, full});
    }
}
