package brakewright.assembly;

import brakewright.spec.Build;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Curve;
import brakewright.spec.Input;
import brakewright.spec.Stance;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Makes a vehicle in code: asks step by step for what must be known, lets anything else be told,
 * and takes the rest from tables as a build file would. All of it is looked at once, at the end.
 *
 * <p>Of several packs each is told with {@code andPack}, and what else is told of a pack behind it;
 * {@link Input#PACKS_JOINING} says how they are joined, in parallel where nothing is said.
 *
 * <p>Steps are kept, not copied: one such chain makes one vehicle, on one thread.
 */
public final class BuildSteps
        implements BuildStep.OfRider,
                BuildStep.OfVehicle,
                BuildStep.OfDrive,
                BuildStep.OfMotor,
                BuildStep.OfController,
                BuildStep.OfPack {

    private static final String CELL = "pack.cell";
    private static final String SOURCE = "program";

    private final String title;
    private final Map<Input, Value> whole = new EnumMap<>(Input.class);
    private final List<ToldPack> packs = new ArrayList<>(List.of(new ToldPack()));
    private final List<Told> refused = new ArrayList<>();

    /** What is told of one pack. */
    private static final class ToldPack {

        private final Map<Input, Value> values = new EnumMap<>(Input.class);
        private String cell = "";
    }

    /** A value that cannot be, of a pack by its place from 0. */
    private record Told(Input input, int place, String fault) {}

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
        last().cell = cellId;
        return with(Input.PACK_SERIES, series).with(Input.PACK_PARALLEL, parallel);
    }

    @Override
    public BuildSteps pack(KnownCell known, int series, int parallel) {
        known.values().forEach(this::put);
        return with(Input.PACK_SERIES, series).with(Input.PACK_PARALLEL, parallel);
    }

    /**
     * Tells of one more pack, of cells that the tables know. What is told of a pack from here on is
     * about this one.
     *
     * @param cellId as the tables call it
     * @param series groups in series
     * @param parallel cells in each
     * @return the same steps
     */
    public BuildSteps andPack(String cellId, int series, int parallel) {
        packs.add(new ToldPack());
        return pack(cellId, series, parallel);
    }

    /**
     * Tells of one more pack, of other cells. What is told of a pack from here on is about this
     * one.
     *
     * @param known what is known of the cell
     * @param series groups in series
     * @param parallel cells in each
     * @return the same steps
     */
    public BuildSteps andPack(KnownCell known, int series, int parallel) {
        packs.add(new ToldPack());
        return pack(known, series, parallel);
    }

    /**
     * Tells a number besides.
     *
     * @param input of what; of a pack, of the one told last
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
            refused.add(new Told(input, packs.size() - 1, fault.get()));
        } else {
            (PackCompletion.isOfPack(input) ? last().values : whole).put(input, value);
        }
        return this;
    }

    private ToldPack last() {
        return packs.get(packs.size() - 1);
    }

    /**
     * Makes the vehicle.
     *
     * @param defaults what is taken where nothing was told
     * @return the vehicle
     * @throws UnfitBuild if something told cannot be or does not go together, or something is
     *     needed that was not told and has no default; it names all that was found, of several
     *     packs as {@code packs.1.series}
     */
    public Build build(Defaults defaults) {
        List<UnfitBuild.Misfit> misfits = misfits();
        if (!misfits.isEmpty()) {
            throw new UnfitBuild(misfits);
        }
        NotedRefusals refusals = new NotedRefusals(told(), new ArrayList<>(), new ArrayList<>());
        Optional<Build> made = made(defaults, refusals);
        return made.filter(build -> refusals.all().isEmpty())
                .orElseThrow(() -> new UnfitBuild(refusals.all()));
    }

    private List<UnfitBuild.Misfit> misfits() {
        List<UnfitBuild.Misfit> misfits = new ArrayList<>();
        for (Told each : refused) {
            misfits.add(misfit(each.input(), each.place(), each.fault()));
        }
        if (packs.size() == 1) {
            told().keySet().stream()
                    .flatMap(key -> Input.ofKey(key).stream())
                    .filter(InputForm::isOfSeveralPacks)
                    .forEach(
                            input ->
                                    misfits.add(misfit(input, 0, "is told of several packs only")));
        }
        return misfits;
    }

    private UnfitBuild.Misfit misfit(Input input, int place, String fault) {
        String key = PackCompletion.isOfPack(input) ? keyOf(input.key(), place) : input.key();
        return new UnfitBuild.Misfit(key, input.unit(), fault);
    }

    private Optional<Build> made(Defaults defaults, NotedRefusals refusals) {
        InputSet inputs = InputSet.ofWhole(defaults, whole, input -> SOURCE);
        List<PackCompletion> told = new ArrayList<>();
        List<UnaryOperator<String>> keys = new ArrayList<>();
        for (int k = 0; k < packs.size(); k++) {
            int place = k;
            InputSet ofPack = inputs.ofPack(packs.get(k).values, SOURCE);
            if (!ofPack.lookUpCell(packs.get(k).cell)) {
                refusals.note(
                        keyOf(CELL, k), "\"" + packs.get(k).cell + "\" is no cell of the tables");
            }
            told.add(new PackCompletion(ofPack, () -> 0.0));
            keys.add(key -> keyOf(key, place));
        }
        if (!refusals.all().isEmpty()) {
            return Optional.empty();
        }
        try {
            Completed completed = new Completion(inputs, told, () -> 0.0).complete();
            return new BuildAssembler(title, completed, keys, refusals).assemble();
        } catch (MissingInput missing) {
            refusals.note(missing.key(), "is needed: it was not told and has no default");
            return Optional.empty();
        }
    }

    /** What a key of a pack is called, of one by its place from 0. */
    private String keyOf(String key, int place) {
        return PackKeys.of(key, packs.size() == 1 ? WhichPack.WHOLE : WhichPack.of(place + 1));
    }

    private Map<String, Value> told() {
        Map<String, Value> all = new LinkedHashMap<>();
        whole.forEach((input, value) -> all.put(input.key(), value));
        for (int k = 0; k < packs.size(); k++) {
            int place = k;
            packs.get(k)
                    .values
                    .forEach((input, value) -> all.put(keyOf(input.key(), place), value));
        }
        return all;
    }
}
