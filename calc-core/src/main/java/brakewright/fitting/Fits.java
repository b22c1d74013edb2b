package brakewright.fitting;

import brakewright.battery.BatteryModel;
import brakewright.recording.Ride;
import brakewright.recording.StepResistance;
import brakewright.recording.Stretch;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * All that a recorded ride tells of its vehicle.
 *
 * @param all one for each value, found or refused
 * @param byWarmth the resistance of the pack where its temperature varied, from cold to warm; empty
 *     where it did not, or was not recorded
 */
public record Fits(List<Fit> all, List<WarmResistance> byWarmth) {

    private static final List<Fitted> BY_ENERGY =
            List.of(Fitted.ROLLING_RESISTANCE, Fitted.DRAG_AREA);
    private static final List<Fitted> BY_COASTING =
            List.of(Fitted.COASTING_ROLLING, Fitted.COASTING_DRAG);

    /** Copies the lists. */
    public Fits {
        all = List.copyOf(all);
        byWarmth = List.copyOf(byWarmth);
    }

    /**
     * Fits what can be fitted.
     *
     * @param build the vehicle as it is described
     * @param ride on it
     * @return found or refused, in the order of {@link Fitted}
     */
    public static Fits of(Build build, Ride ride) {
        List<Stretch> stretches = Stretch.all(ride);
        StepResistance pull = StepResistance.of(ride.recording(), StepResistance.PULL);
        List<Fit> all = new ArrayList<>();
        all.add(
                resistance(
                        Fitted.INSTANT_RESISTANCE,
                        StepResistance.of(ride.recording(), StepResistance.INSTANT)));
        all.add(resistance(Fitted.PULL_RESISTANCE, pull));
        all.add(joints(build, stretches, pull));
        all.add(CapacityFit.of(ride.recording()));
        Fit idle = Events.idlePower(stretches);
        all.add(idle);
        all.add(Events.wheelDiameter(build, ride));
        all.addAll(RoadFit.of(build, ride, stretches));
        all.addAll(CoastingFit.of(build, stretches, idlePower(build, idle)));
        all.add(SpeedConstantFit.of(build, stretches));
        all.add(Events.regenPlateau(stretches));
        return new Fits(
                all.stream().map(Fits::unlessLost).toList(), WarmResistance.all(ride.recording()));
    }

    private static double idlePower(Build build, Fit idle) {
        return idle instanceof Fit.Found found ? found.value() : build.use().riding().idlePower();
    }

    /**
     * Returns what was found, each value once: of tyres and air, which go together, those by the
     * surer of two ways.
     *
     * @return in the order of {@link Fitted}
     */
    public List<Fit.Found> preferred() {
        List<Fitted> left = doubt(BY_COASTING) < doubt(BY_ENERGY) ? BY_ENERGY : BY_COASTING;
        return all.stream()
                .filter(fit -> !left.contains(fit.what()))
                .filter(Fit.Found.class::isInstance)
                .map(Fit.Found.class::cast)
                .toList();
    }

    /** Of themselves, a refused one in full. */
    private double doubt(List<Fitted> values) {
        return all.stream()
                .filter(fit -> values.contains(fit.what()))
                .mapToDouble(
                        fit -> fit instanceof Fit.Found found ? found.doubt() / found.value() : 1.0)
                .sum();
    }

    private static Fit unlessLost(Fit fit) {
        return fit instanceof Fit.Found found && !(found.doubt() < found.value())
                ? new Fit.Refused(fit.what(), "it may be off by as much as it is")
                : fit;
    }

    static Fit resistance(Fitted what, StepResistance found) {
        return found instanceof StepResistance.Measured measured
                ? new Fit.Found(what, measured.resistance(), measured.doubt(), measured.events())
                : new Fit.Refused(what, ((StepResistance.Refused) found).reason().meaning());
    }

    /** Cells are taken at the mean charge of the ride and as warm as they were at the steps. */
    private static Fit joints(Build build, List<Stretch> stretches, StepResistance pull) {
        Battery battery = build.battery();
        if (!(pull instanceof StepResistance.Measured measured)) {
            return resistance(Fitted.JOINT_RESISTANCE, pull);
        }
        if (battery.packs().size() > 1) {
            return new Fit.Refused(
                    Fitted.JOINT_RESISTANCE, "there are several packs, and their share is unknown");
        }
        OptionalDouble charge =
                stretches.stream()
                        .mapToDouble(Stretch::charge)
                        .filter(each -> !Double.isNaN(each))
                        .average();
        if (charge.isEmpty()) {
            return new Fit.Refused(
                    Fitted.JOINT_RESISTANCE, "no charge was recorded, on which the cells depend");
        }
        double cells =
                new BatteryModel(battery)
                                .resistance(
                                        Math.max(0.0, Math.min(1.0, charge.getAsDouble())),
                                        measured.temperatureC().orElse(battery.temperatureC()),
                                        Cell.PULSE)
                        - battery.packs().get(0).jointResistance();
        double rest = measured.resistance() - cells;
        return rest >= 0.0
                ? new Fit.Found(Fitted.JOINT_RESISTANCE, rest, measured.doubt(), measured.events())
                : new Fit.Refused(
                        Fitted.JOINT_RESISTANCE,
                        "its cells as they are described make up for all of it");
    }
}
