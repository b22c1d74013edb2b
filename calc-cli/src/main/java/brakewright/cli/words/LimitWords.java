package brakewright.cli.words;

import brakewright.limit.Constraint;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.spec.CurrentBasis;
import brakewright.spec.WhichPack;
import brakewright.worksheet.HeldBy;

/** What limits and constraints are called in a sentence. */
public final class LimitWords {

    private LimitWords() {}

    /**
     * Returns what a limit is called.
     *
     * @param id the limit
     * @return a noun
     */
    public static String of(LimitId id) {
        return switch (id) {
            case MOTOR_DRIVE_CURRENT -> "motor drive current";
            case MOTOR_BRAKE_CURRENT -> "motor brake current";
            case PACK_DISCHARGE_CURRENT -> "pack discharge current";
            case PACK_REGEN_CURRENT -> "pack regen current";
            case LOW_VOLTAGE_TAPER -> "low-voltage taper";
            case HIGH_VOLTAGE_TAPER -> "high-voltage taper";
            case SPEED_CAP -> "speed cap";
        };
    }

    /**
     * Returns in few letters what holds a number down.
     *
     * @param holder the constraint or the drive
     * @return a noun without an article
     */
    public static String brief(HeldBy holder) {
        if (holder instanceof HeldBy.AConstraint constraint) {
            return brief(constraint.id());
        }
        return switch (((HeldBy.TheDrive) holder).holder()) {
            case MOTOR_CURRENT -> "motor current";
            case PACK_CURRENT -> "pack current";
            case VOLTAGE -> "pack voltage";
            case STANDSTILL -> "standstill";
        };
    }

    /**
     * Returns what a constraint is called where there is little room.
     *
     * @param id the constraint
     * @return at most twenty letters
     */
    public static String brief(ConstraintId id) {
        return switch (id) {
            case CELL_CHARGE_RATING -> "cell charge rating";
            case CELL_CHARGE_RATING_AT_CHARGE -> "cell rating so full";
            case VOLTAGE_CEILING -> "voltage ceiling";
            case PROTECTION_OVERVOLTAGE_TRIP -> "over-voltage trip";
            case PROTECTION_CHARGE_TRIP -> "charge trip";
            case CONTROLLER_VOLTAGE_RATING -> "controller voltage";
            case CELL_DISCHARGE_RATING -> "cell draw rating";
            case VOLTAGE_FLOOR -> "voltage floor";
            case PROTECTION_UNDERVOLTAGE_TRIP -> "under-voltage trip";
            case PROTECTION_DISCHARGE_TRIP -> "discharge trip";
            case CONTROLLER_PACK_RATING -> "controller (pack)";
            case MAIN_FUSE -> "main fuse";
            case FUSE_VOLTAGE_RATING -> "fuse voltage rating";
            case MAIN_WIRE -> "main wire";
            case MAIN_PLUG -> "main plug";
            case TEMPERATURE_WINDOW -> "temperature window";
            case MOTOR_CURRENT_RATING -> "motor rating";
            case CONTROLLER_MOTOR_RATING -> "controller (motor)";
            case WINDING_HEAT -> "winding heat";
            case REGEN_OVERSHOOT -> "late regen limiter";
            case GRIP -> "tyre grip";
            case TIPPING -> "vehicle tipping";
            case RIDER_BALANCE -> "rider's balance";
            case RIDER_TOLERANCE -> "what the rider bears";
            case REMAINING_BRAKE -> "remaining brake";
            case WANTED_DECELERATION -> "wanted brake";
            case CONTROLLER_BACK_EMF -> "controller back-EMF";
            case PACK_BACK_EMF -> "back-EMF above pack";
            case LOOP_GAIN -> "loop gain";
        };
    }

    /**
     * Returns what a constraint is called, with the pack where it is about one of several.
     *
     * @param constraint the constraint
     * @return a noun
     */
    public static String of(Constraint constraint) {
        return of(constraint.id(), constraint.pack());
    }

    /**
     * Returns what a constraint is called, with the pack where it is about one of several.
     *
     * @param id the constraint
     * @param pack which it is about, or the whole
     * @return a noun
     */
    public static String of(ConstraintId id, WhichPack pack) {
        return of(id) + pack.map(number -> " (pack " + number + ")").orElse("");
    }

    /**
     * Returns what a constraint is called.
     *
     * @param id the constraint
     * @return a noun
     */
    public static String of(ConstraintId id) {
        return switch (id) {
            case CELL_CHARGE_RATING -> "the cells' charge rating";
            case CELL_CHARGE_RATING_AT_CHARGE -> "the cells' charge rating so full";
            case VOLTAGE_CEILING -> "the cells' voltage ceiling";
            case PROTECTION_OVERVOLTAGE_TRIP -> "the protection's over-voltage trip";
            case PROTECTION_CHARGE_TRIP -> "the protection's charge trip";
            case CONTROLLER_VOLTAGE_RATING -> "the controller's voltage rating";
            case CELL_DISCHARGE_RATING -> "the cells' discharge rating";
            case VOLTAGE_FLOOR -> "the cells' voltage floor";
            case PROTECTION_UNDERVOLTAGE_TRIP -> "the protection's under-voltage trip";
            case PROTECTION_DISCHARGE_TRIP -> "the protection's discharge trip";
            case CONTROLLER_PACK_RATING -> "the controllers' pack rating";
            case MAIN_FUSE -> "the main fuse";
            case FUSE_VOLTAGE_RATING -> "the fuse's voltage rating";
            case MAIN_WIRE -> "the main wire";
            case MAIN_PLUG -> "the main plug";
            case TEMPERATURE_WINDOW -> "the cells' temperature window";
            case MOTOR_CURRENT_RATING -> "the motor's rating";
            case CONTROLLER_MOTOR_RATING -> "the controller's motor rating";
            case WINDING_HEAT -> "the winding's heat";
            case REGEN_OVERSHOOT -> "the lateness of the regen limiter";
            case GRIP -> "the grip of the tyres";
            case TIPPING -> "the vehicle's tipping";
            case RIDER_BALANCE -> "the rider's balance";
            case RIDER_TOLERANCE -> "what the rider bears";
            case REMAINING_BRAKE -> "what is left of the brakes";
            case WANTED_DECELERATION -> "the deceleration wanted";
            case CONTROLLER_BACK_EMF -> "back-EMF at the controller";
            case PACK_BACK_EMF -> "back-EMF above the pack";
            case LOOP_GAIN -> "the taper's loop gain";
        };
    }

    /**
     * Says what the motor currents are.
     *
     * @param basis of settings and ratings
     * @return a sentence
     */
    public static String motorCurrents(CurrentBasis basis) {
        String told =
                switch (basis) {
                    case PHASE_PEAK -> "peaks of the phase current";
                    case PHASE_RMS -> "effective values of the phase current, 1/√2 of its peak";
                    case DC_EQUIVALENT -> "direct currents through two phases";
                };
        return "Motor currents, set and rated, are " + told + " (" + basis.key() + ").";
    }
}
