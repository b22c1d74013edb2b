package brakewright.assembly;

import brakewright.spec.Build;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Curve;
import brakewright.spec.Input;
import brakewright.spec.Stance;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Makes a vehicle of one pack in code: asks step by step for what must be known, lets anything else
 * be told, and takes the rest from tables as a build file would. All of it is looked at once, at
 * the end.
 *
 * <p>Steps are kept, not copied: one such chain makes one vehicle, on one thread. Several packs are
 * told by a build file, or by {@link brakewright.spec.Battery} itself.
 */
public final class BuildSteps
        implements BuildStep.OfRider,
                BuildStep.OfVehicle,
                BuildStep.OfDrive,
                BuildStep.OfMotor,
                BuildStep.OfController,
                BuildStep.OfPack {

    private static final String CELL = "pack.cell";

    private final String title;
    private final Map<Input, Value> whole = new EnumMap<>(Input.class);
    private final Map<Input, Value> pack = new EnumMap<>(Input.class);
    private final List<UnfitBuild.Misfit> misfits = new ArrayList<>();
    private String cell = "";

    private BuildSteps(String title) {
        this.title = title;
    }

    /**
     * Begins a vehicle.
     *
     * @param title what it is called
     * @return the first step
     */
    public static BuildStep.OfRider titled(String title) {
        return new BuildSteps(title);
    }

    @Override
    public BuildStep.OfVehicle rider(double mass, Stance stance) {
        return with(Input.RIDER_MASS, mass).with(Input.RIDER_STANCE, stance.key());
    }

    @Override
    public BuildStep.OfDrive vehicle(double mass, double wheelDiameter) {
        return with(Input.VEHICLE_MASS, mass).with(Input.VEHICLE_WHEEL_DIAMETER, wheelDiameter);
    }

    @Override
    public BuildStep.OfMotor drive(int motors, double reduction) {
        return with(Input.DRIVE_MOTORS, motors).with(Input.DRIVE_REDUCTION, reduction);
    }

    @Override
    public BuildStep.OfController motor(double kvRpmPerVolt, double resistance) {
        return with(Input.MOTOR_KV, kvRpmPerVolt).with(Input.MOTOR_RESISTANCE, resistance);
    }

    @Override
    public BuildStep.OfPack controller(
            CurrentBasis basis,
            double motorCurrentRating,
            double packCurrentRating,
            double voltageRating) {
        return with(Input.CONTROLLER_CURRENT_BASIS, basis.key())
                .with(Input.CONTROLLER_MOTOR_CURRENT_RATING, motorCurrentRating)
                .with(Input.CONTROLLER_PACK_CURRENT_RATING, packCurrentRating)
                .with(Input.CONTROLLER_VOLTAGE_RATING, voltageRating);
    }

    @Override
    public BuildSteps pack(String cellId, int series, int parallel) {
        cell = cellId;
        return with(Input.PACK_SERIES, series).with(Input.PACK_PARALLEL, parallel);
    }

    @Override
    public BuildSteps pack(KnownCell known, int series, int parallel) {
        known.values().forEach(this::put);
        return with(Input.PACK_SERIES, series).with(Input.PACK_PARALLEL, parallel);
    }

    /**
     * Tells a number besides.
     *
     * @param input of what
     * @param value in the unit of {@link Input#unit}
     * @return the same steps
     */
    public BuildSteps with(Input input, double value) {
        return put(input, new Value.Number(Quantity.exact(value)));
    }

    /**
     * Tells two numbers that belong together: where a taper begins and ends, the coldest and the
     * warmest cells.
     *
     * @param input of what
     * @param first in the unit of {@link Input#unit}
     * @param second in the same unit
     * @return the same steps
     */
    public BuildSteps with(Input input, double first, double second) {
        return put(input, new Value.Pair(first, second));
    }

    /**
     * Tells a word besides.
     *
     * @param input of what
     * @param word one of those that a build file may have
     * @return the same steps
     */
    public BuildSteps with(Input input, String word) {
        return put(input, new Value.Word(word));
    }

    /**
     * Tells a curve besides.
     *
     * @param input of what
     * @param curve over the charge or the temperature
     * @return the same steps
     */
    public BuildSteps with(Input input, Curve curve) {
        return put(input, new Value.Points(curve));
    }

    private BuildSteps put(Input input, Value value) {
        Optional<String> fault = InputForm.fault(input, value);
        if (fault.isPresent()) {
            misfits.add(new UnfitBuild.Misfit(input.key(), input.unit(), fault.get()));
        } else {
            (PackCompletion.isOfPack(input) ? pack : whole).put(input, value);
        }
        return this;
    }

    /**
     * Makes the vehicle.
     *
     * @param defaults what is taken where nothing was told
     * @return the vehicle
     * @throws UnfitBuild if something told cannot be or does not go together, or something is
     *     needed that was not told and has no default; it names all that was found
     */
    public Build build(Defaults defaults) {
        if (!misfits.isEmpty()) {
            throw new UnfitBuild(misfits);
        }
        NotedRefusals refusals = new NotedRefusals(told(), new ArrayList<>(), new ArrayList<>());
        Optional<Build> made = made(defaults, refusals);
        return made.filter(build -> refusals.all().isEmpty())
                .orElseThrow(() -> new UnfitBuild(refusals.all()));
    }

    private Optional<Build> made(Defaults defaults, NotedRefusals refusals) {
        InputSet inputs = InputSet.ofWhole(defaults, whole, input -> "program");
        InputSet ofPack = inputs.ofPack(pack, "program");
        if (!ofPack.lookUpCell(cell)) {
            refusals.note(CELL, "\"" + cell + "\" is no cell of the tables");
            return Optional.empty();
        }
        try {
            PackCompletion one = new PackCompletion(ofPack, () -> 0.0);
            Completed completed = new Completion(inputs, List.of(one), () -> 0.0).complete();
            List<UnaryOperator<String>> keys = List.of(UnaryOperator.identity());
            return new BuildAssembler(title, completed, keys, refusals).assemble();
        } catch (MissingInput missing) {
            refusals.note(missing.key(), "is needed: it was not told and has no default");
            return Optional.empty();
        }
    }

    private Map<Input, Value> told() {
        Map<Input, Value> all = new LinkedHashMap<>(whole);
        all.putAll(pack);
        return all;
    }
}
