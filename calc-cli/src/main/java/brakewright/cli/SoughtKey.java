package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.InputNumber;
import brakewright.buildfile.InputPlace;
import brakewright.buildfile.Variations;
import brakewright.buildfile.internal.Nearest;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.profile.CellMass;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.WhichPack;
import java.util.List;
import java.util.Optional;

/**
 * A key whose value is sought, and between which values.
 *
 * @param place the number asked for
 * @param places all numbers that change with it
 * @param low the lowest value asked about
 * @param high the highest value asked about
 */
record SoughtKey(InputPlace place, List<InputPlace> places, double low, double high) {

    /**
     * Assumption: our own choice, where the mass of a cell is not known; few packs of this class
     * have more cells side by side.
     */
    private static final int MOST_PARALLEL = 100;

    /** Assumption: our own choice; slower than this nothing is braked electrically [m/s]. */
    private static final double SLOWEST = 0.3;

    /** Assumption: our own choice; a use of less charge than this is none [1]. */
    private static final double STEP = 1e-3;

    /** Assumption: our own choice [1]. */
    private static final double BEYOND = 1.1;

    static final List<String> KEYS =
            List.of(
                    "motor_drive_current",
                    "motor_brake_current",
                    "pack_discharge_current",
                    "pack_regen_current",
                    "speed_cap",
                    "charge_from",
                    "parallel");

    /** Understands a key. */
    static SoughtKey of(BuildFile file, String key) {
        if (key.endsWith("_taper")) {
            throw new Unusable(
                    key
                            + " is a pair and has no single answer; brakewright explain BUILD "
                            + key.replace('_', '-')
                            + " tells where it must end and how wide it must be");
        }
        Optional<InputPlace> found = file.variations().find(key);
        if (found.isEmpty() && file.packs().size() > 1 && key.equals("parallel")) {
            throw new Unusable("the file has several packs: ask for packs.1.parallel or another");
        }
        if (found.isEmpty() || !isAskable(found.get().input())) {
            throw new Unusable(
                    "\""
                            + key
                            + "\" cannot be solved for; "
                            + Nearest.to(key, KEYS)
                                    .map(nearest -> "the nearest is " + nearest + "; ")
                                    .orElse("")
                            + "there are "
                            + String.join(", ", KEYS));
        }
        InputPlace place = found.get();
        Variations variations = file.variations();
        double possible = InputNumber.highest(place.input());
        return switch (place.input()) {
            case USE_CHARGE_FROM ->
                    new SoughtKey(
                            place,
                            List.of(place),
                            file.build().use().chargeTo() + STEP,
                            Math.max(
                                    file.build().use().chargeTo() + 2.0 * STEP,
                                    file.build().use().chargeFrom()));
            case SETTINGS_SPEED_CAP ->
                    new SoughtKey(
                            place,
                            List.of(
                                    place,
                                    new InputPlace(
                                            Input.USE_SPEED_MAX,
                                            WhichPack.WHOLE,
                                            InputPlace.Part.WHOLE)),
                            Math.min(SLOWEST, 0.1 * fastest(file)),
                            Math.min(possible, fastest(file)));
            case PACK_PARALLEL ->
                    new SoughtKey(place, List.of(place), 1.0, mostParallel(file, place));
            default -> new SoughtKey(place, List.of(place), 0.0, possible);
        };
    }

    /** A little beyond all that is set and all that back-EMF permits, so that what binds shows. */
    private static double fastest(BuildFile file) {
        Build build = file.build();
        return BEYOND * Math.max(Limits.of(build).speedCap().value(), build.highestSpeed());
    }

    /** As many as weigh no more than the whole vehicle, but never fewer than there are. */
    private static double mostParallel(BuildFile file, InputPlace place) {
        double present = file.variations().nominal(place).orElse(1.0);
        return Math.max(
                present,
                cells(file, place)
                        .map(cells -> cells.most(file.build().vehicle().mass()))
                        .orElse(MOST_PARALLEL));
    }

    /** What the cells of the pack asked about weigh; empty where the mass of one is not known. */
    Optional<CellMass> cells(BuildFile file) {
        return cells(file, place);
    }

    private static Optional<CellMass> cells(BuildFile file, InputPlace place) {
        Variations variations = file.variations();
        return variations
                .nominal(new InputPlace(Input.CELL_MASS, place.pack(), InputPlace.Part.WHOLE))
                .flatMap(
                        mass ->
                                variations
                                        .nominal(
                                                new InputPlace(
                                                        Input.PACK_SERIES,
                                                        place.pack(),
                                                        InputPlace.Part.WHOLE))
                                        .map(series -> new CellMass(mass, series.intValue())));
    }

    /** The fullest charge cannot lie below the emptiest, wherever that is. */
    SoughtKey above(double emptiest) {
        double least = emptiest + STEP;
        return place.input() == Input.USE_CHARGE_FROM && least > low
                ? new SoughtKey(place, places, least, Math.max(high, least + STEP))
                : this;
    }

    private static boolean isAskable(Input input) {
        return setting(input).isPresent()
                || input == Input.USE_CHARGE_FROM
                || input == Input.PACK_PARALLEL;
    }

    boolean isCount() {
        return place.input() == Input.PACK_PARALLEL;
    }

    /**
     * Whether lower values are milder throughout. A less full pack takes more, but bears a lower
     * speed cap and may need a wider taper.
     */
    boolean isOrdered() {
        return place.input() != Input.USE_CHARGE_FROM;
    }

    /** The setting that it is; empty for what is none. */
    Optional<LimitId> setting() {
        return setting(place.input());
    }

    private static Optional<LimitId> setting(Input input) {
        return Optional.ofNullable(
                switch (input) {
                    case SETTINGS_MOTOR_DRIVE_CURRENT -> LimitId.MOTOR_DRIVE_CURRENT;
                    case SETTINGS_MOTOR_BRAKE_CURRENT -> LimitId.MOTOR_BRAKE_CURRENT;
                    case SETTINGS_PACK_DISCHARGE_CURRENT -> LimitId.PACK_DISCHARGE_CURRENT;
                    case SETTINGS_PACK_REGEN_CURRENT -> LimitId.PACK_REGEN_CURRENT;
                    case SETTINGS_SPEED_CAP -> LimitId.SPEED_CAP;
                    default -> null;
                });
    }
}
