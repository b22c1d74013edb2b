package brakewright.operation;

import brakewright.battery.BatteryModel;
import brakewright.battery.Branches;
import brakewright.battery.PackModel;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.Limits;
import brakewright.limit.OnePack;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Joining;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How several packs share a current, how they may be joined, and what happens when one is lost.
 *
 * @param loads the shares over the charge in use, drawing and returning
 * @param joints how each pack may be joined to the others, in parallel only
 * @param losses what the others carry when one pack's protection opens, of those that can
 */
public record Sharing(List<Load> loads, List<Joint> joints, List<Loss> losses) {

    /** Copies the lists. */
    public Sharing {
        loads = List.copyOf(loads);
        joints = List.copyOf(joints);
        losses = List.copyOf(losses);
    }

    /**
     * Returns where a pack comes nearest to its limit, or is furthest beyond it.
     *
     * @param isDraw true for drawing, false for returning
     * @return the load; empty where nothing flows
     */
    public Optional<Load> hardest(boolean isDraw) {
        return loads.stream()
                .filter(load -> load.isDraw() == isDraw && load.current() > 0.0)
                .max(Comparator.comparingDouble(Load::use));
    }

    /**
     * One pack at one charge state of all.
     *
     * @param pack from 1
     * @param charge of all together [1]
     * @param ownCharge its own charge state [1]
     * @param isDraw true for drawing, false for returning
     * @param whole the current of all together [A]
     * @param current its part of it [A]
     * @param limit what it may carry there [A]
     * @param boundBy what holds that down
     */
    public record Load(
            int pack,
            double charge,
            double ownCharge,
            boolean isDraw,
            double whole,
            double current,
            double limit,
            ConstraintId boundBy) {

        /**
         * Returns how much of its limit the pack uses.
         *
         * @return the share; above 1 where it carries too much [1]
         */
        public double use() {
            return current / limit;
        }
    }

    /**
     * Joining one pack to all others. What flows in the first instant meets the least resistance
     * ({@link PackModel#leastResistance}), so that is what counts.
     *
     * @param pack from 1
     * @param permitted the highest current that may flow either way: the lower of the ratings [A]
     * @param others the least resistance of all others together [Ω]
     * @param difference the highest difference of voltage that stays within it [V]
     * @param worst the current between a full and an empty pack [A]
     * @param current at the charge states that the build file tells, out of the pack; empty where
     *     it does not tell [A]
     * @param isCharged true where that current flows into the pack
     */
    public record Joint(
            int pack,
            double permitted,
            double others,
            double difference,
            double worst,
            OptionalDouble current,
            boolean isCharged) {

        /**
         * Returns whether the packs may not be joined as they stand.
         *
         * @return true if the current is known and above what is permitted
         */
        public boolean isExceeded() {
            return current.isPresent() && current.getAsDouble() > permitted;
        }
    }

    /**
     * One pack's protection opens.
     *
     * @param pack from 1
     * @param isDraw whether while drawing or while returning
     * @param greatestUse how much of its trip the most loaded of the others then uses, at the
     *     charge in use where that is most [1]; NaN where no trip is known
     * @param charge where that is: of the charge states at which none is left, if there are any;
     *     NaN where no trip is known [1]
     * @param isAllLost whether none is left in the end at some charge in use: the others' trips
     *     follow, or they are in series
     */
    public record Loss(
            int pack, boolean isDraw, double greatestUse, double charge, boolean isAllLost) {

        boolean isWorseThan(Loss other) {
            return isAllLost != other.isAllLost ? isAllLost : greatestUse > other.greatestUse;
        }
    }

    /**
     * Works out the sharing of a vehicle's packs.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @return the sharing; empty lists for one pack
     */
    public static Sharing of(Build build, Limits limits, Operation operation) {
        return build.battery().isOnePack()
                ? new Sharing(List.of(), List.of(), List.of())
                : new Work(build, limits, operation).sharing();
    }

    private static final class Work {

        private final Build build;
        private final Operation operation;
        private final Operation trusted;
        private final BatteryModel model;
        private final double[] charges;
        private final double cellsC;
        private final int count;
        private final boolean parallel;

        Work(Build build, Limits limits, Operation operation) {
            this.build = build;
            this.operation = operation;
            this.trusted = operation.trusted(limits);
            this.model = limits.battery();
            this.charges = trusted.bends(build, limits);
            this.cellsC = build.battery().temperatureC();
            this.count = model.packs().size();
            this.parallel = build.battery().joining() == Joining.PARALLEL;
        }

        Sharing sharing() {
            List<Load> loads = new ArrayList<>();
            double from = build.use().chargeFrom();
            double to = build.use().chargeTo();
            for (double charge : new double[] {from, 0.5 * (from + to), to}) {
                for (int place = 0; place < count; place++) {
                    loads.add(load(place, charge, true));
                    loads.add(load(place, charge, false));
                }
            }
            List<Joint> joints = new ArrayList<>();
            List<Loss> losses = new ArrayList<>();
            for (int place = 0; place < count; place++) {
                if (parallel) {
                    joints.add(joint(place));
                }
                if (!model.packs().get(place).pack().protection().isBypassed()) {
                    losses.add(loss(place, true));
                    losses.add(loss(place, false));
                }
            }
            return new Sharing(loads, joints, losses);
        }

        private double whole(Operation with, boolean draw, double charge) {
            PackState state = PackState.of(model, charge, cellsC);
            return draw
                    ? with.drive().greatestDraw(with.topSpeed(), state)
                    : with.brake().greatestReturn(with.topSpeed(), state);
        }

        private Load load(int place, double charge, boolean draw) {
            double whole = whole(operation, draw, charge);
            double ownCharge = model.chargeOf(place, charge);
            Limit own =
                    (draw ? OnePack.giving(build, place) : OnePack.taking(build, place))
                            .at(ownCharge, cellsC);
            return new Load(
                    place + 1,
                    charge,
                    ownCharge,
                    draw,
                    whole,
                    whole * way(draw).share(place, charge, cellsC),
                    own.value(),
                    own.binding().id());
        }

        private Joint joint(int place) {
            double permitted = Double.POSITIVE_INFINITY;
            List<Branches.Branch> others = new ArrayList<>();
            List<Branches.Branch> told = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                permitted = Math.min(permitted, either(k));
                PackModel pack = model.packs().get(k);
                if (k != place) {
                    others.add(branch(pack, 0.5));
                }
                pack.pack().joinedAt().ifPresent(charge -> told.add(branch(pack, charge)));
            }
            Branches.Branch own = branch(model.packs().get(place), 0.5);
            Branches.Branch rest = together(others);
            OptionalDouble current = OptionalDouble.empty();
            boolean charged = false;
            if (told.size() == count) {
                double out = new Branches(told).current(place, 0.0);
                current = OptionalDouble.of(Math.abs(out));
                charged = out < 0.0;
            }
            return new Joint(
                    place + 1,
                    permitted,
                    rest.resistance(),
                    Branches.acceptableDifference(permitted, own, rest),
                    worst(place),
                    current,
                    charged);
        }

        /** One full and the others empty, or the other way round. */
        private double worst(int place) {
            return Math.max(between(place, 1.0, 0.0), between(place, 0.0, 1.0));
        }

        private double between(int place, double ownCharge, double otherCharge) {
            List<Branches.Branch> others = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                if (k != place) {
                    others.add(branch(model.packs().get(k), otherCharge));
                }
            }
            return Math.abs(
                    Branches.equalisingCurrent(
                            branch(model.packs().get(place), ownCharge), together(others)));
        }

        private Branches.Branch together(List<Branches.Branch> several) {
            double conductance = several.stream().mapToDouble(b -> 1.0 / b.resistance()).sum();
            return new Branches.Branch(new Branches(several).voltage(0.0), 1.0 / conductance);
        }

        private Branches.Branch branch(PackModel pack, double charge) {
            return new Branches.Branch(pack.openCircuitVoltage(charge), pack.leastResistance());
        }

        /** What a pack may carry whichever way it turns out to flow. */
        private double either(int place) {
            return Math.min(
                    OnePack.giving(build, place).staticPart(cellsC).value(),
                    OnePack.taking(build, place).staticPart(cellsC).value());
        }

        /**
         * Tapers and motors hold the current down at either end of the charge, so that most flows
         * somewhere between. The others carry what all carried until the settings react.
         */
        private Loss loss(int lost, boolean draw) {
            if (!parallel) {
                return new Loss(lost + 1, draw, Double.NaN, Double.NaN, true);
            }
            return Arrays.stream(charges)
                    .mapToObj(charge -> loss(lost, draw, charge))
                    .reduce((worst, here) -> here.isWorseThan(worst) ? here : worst)
                    .orElseThrow();
        }

        private Loss loss(int lost, boolean draw, double charge) {
            double whole = whole(trusted, draw, charge);
            boolean[] open = new boolean[count];
            open[lost] = true;
            double first = greatestUse(open, whole, charge, draw);
            boolean follows = true;
            while (follows) {
                follows = opensOne(open, whole, charge, draw);
            }
            return new Loss(
                    lost + 1,
                    draw,
                    first,
                    Double.isNaN(first) ? Double.NaN : charge,
                    left(open) == 0);
        }

        private double greatestUse(boolean[] open, double whole, double charge, boolean draw) {
            double greatest = Double.NaN;
            for (int k = 0; k < count; k++) {
                if (!open[k] && trip(k, draw).isPresent()) {
                    double use =
                            whole
                                    * shareOfLeft(open, k, charge, draw)
                                    / trip(k, draw).getAsDouble();
                    greatest = Double.isNaN(greatest) ? use : Math.max(greatest, use);
                }
            }
            return greatest;
        }

        private boolean opensOne(boolean[] open, double whole, double charge, boolean draw) {
            for (int k = 0; k < count; k++) {
                if (!open[k]
                        && whole * shareOfLeft(open, k, charge, draw)
                                > trip(k, draw).orElse(Double.POSITIVE_INFINITY)) {
                    open[k] = true;
                    return true;
                }
            }
            return false;
        }

        private double shareOfLeft(boolean[] open, int place, double charge, boolean draw) {
            double left = 0.0;
            for (int k = 0; k < count; k++) {
                left += open[k] ? 0.0 : way(draw).share(k, charge, cellsC);
            }
            return way(draw).share(place, charge, cellsC) / left;
        }

        private BatteryModel way(boolean draw) {
            return draw ? model : model.into();
        }

        private OptionalDouble trip(int place, boolean draw) {
            var protection = model.packs().get(place).pack().protection();
            return draw ? protection.dischargeTrip() : protection.chargeTrip();
        }

        private static int left(boolean[] open) {
            int left = 0;
            for (boolean each : open) {
                left += each ? 0 : 1;
            }
            return left;
        }
    }
}
