package brakewright.formula;

import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.MotorHeat;

/**
 * The terms that a vehicle gives as they are. What belongs to one of several packs, or is read from
 * a curve, is not among them.
 *
 * @param build the vehicle
 */
public record Inputs(Build build) {

    /**
     * Makes a term of an input.
     *
     * @param input which
     * @return the term with the vehicle's own value
     * @throws IllegalArgumentException if the input is not one number of the whole vehicle that a
     *     formula names
     * @throws java.util.NoSuchElementException if it is not known
     */
    public Term of(Input input) {
        return Term.given(input, value(input));
    }

    /**
     * Makes a term of the highest speed that will be met.
     *
     * @return that in use, or a speed cap above it
     */
    public Term highestSpeed() {
        return build.highestSpeed() > build.use().speedMax()
                ? Term.given(Input.SETTINGS_SPEED_CAP, build.highestSpeed())
                : of(Input.USE_SPEED_MAX);
    }

    private double value(Input input) {
        return switch (input) {
            case RIDER_MASS -> build.rider().mass();
            case RIDER_MASS_HEIGHT -> build.rider().massHeight();
            case RIDER_SUPPORT_HALF_LENGTH -> build.rider().supportHalfLength();
            case VEHICLE_MASS -> build.vehicle().mass();
            case VEHICLE_CARGO -> build.vehicle().cargo();
            case VEHICLE_WHEEL_DIAMETER -> build.vehicle().wheelDiameter();
            case VEHICLE_WHEELBASE -> build.vehicle().axles().wheelbase();
            case VEHICLE_MASS_CENTRE_HEIGHT -> build.vehicle().axles().massCentreHeight();
            case VEHICLE_MASS_CENTRE_FROM_FRONT -> build.vehicle().axles().massCentreFromFront();
            case VEHICLE_ROLLING_RESISTANCE -> build.vehicle().rollingResistance();
            case VEHICLE_DRAG_AREA -> build.vehicle().dragArea();
            case VEHICLE_GRIP -> build.vehicle().grip();
            case VEHICLE_ROTATING_SHARE -> build.vehicle().rotatingShare();
            case DRIVE_MOTORS -> build.drive().motors();
            case DRIVE_REDUCTION -> build.drive().reduction();
            case DRIVE_EFFICIENCY -> build.drive().efficiency();
            case MOTOR_KV -> build.motor().kvRpmPerVolt();
            case MOTOR_RESISTANCE -> build.motor().resistanceAt20C();
            case MOTOR_POLE_PAIRS -> build.motor().polePairs();
            case MOTOR_INDUCTANCE -> build.motor().inductance();
            case MOTOR_NO_LOAD_CURRENT -> build.motor().noLoadCurrent();
            case MOTOR_VISCOUS_DRAG -> build.motor().viscousDrag();
            case MOTOR_WINDING_LIMIT -> build.motor().windingLimitC();
            case MOTOR_WINDING_TO_CASE -> heat().windingToCase();
            case MOTOR_CASE_TO_AIR -> heat().caseToAir();
            case MOTOR_WINDING_HEAT_CAPACITY -> heat().windingHeatCapacity();
            case MOTOR_CASE_HEAT_CAPACITY -> heat().caseHeatCapacity();
            case CONTROLLER_COUNT -> build.controllers().count();
            case CONTROLLER_EFFICIENCY -> build.controllers().efficiency();
            case CONTROLLER_VOLTAGE_RATING -> build.controllers().voltageRating();
            case CONTROLLER_REGEN_RESPONSE -> build.controllers().regenResponse();
            case PACK_TEMPERATURE -> build.battery().temperatureC();
            case TRUNK_RESISTANCE -> build.battery().trunkResistance();
            case USE_CHARGE_FROM -> build.use().chargeFrom();
            case USE_CHARGE_TO -> build.use().chargeTo();
            case USE_SPEED_MAX -> build.use().speedMax();
            case USE_AMBIENT -> build.use().climate().ambientC();
            case USE_PACK_TEMPERATURE -> build.use().climate().coldestPackC();
            case USE_ALTITUDE -> build.use().climate().altitude();
            case USE_SLOPE_MAX -> build.use().slope();
            case USE_SLOPE_LENGTH -> build.use().slopeLength();
            case USE_HARD_PULL -> build.use().effort().hardPull();
            case USE_HARD_BRAKE -> build.use().effort().hardBrake();
            case USE_CRUISE_SPEED -> build.use().riding().cruiseSpeed();
            case USE_HEADWIND -> build.use().riding().headwind();
            case USE_IDLE_POWER -> build.use().riding().idlePower();
            case USE_STOPS_PER_KM -> 1000.0 * build.use().riding().stopsPerMetre();
            case MARGINS_RATING -> build.margins().rating();
            case MARGINS_CONTROLLER_VOLTAGE -> build.margins().controllerVoltage();
            case MARGINS_GRIP -> build.margins().grip();
            case CRITERIA_RIDER_DECELERATION_MAX -> build.criteria().riderDecelerationMax();
            case SETTINGS_MOTOR_DRIVE_CURRENT -> build.settings().motorDriveCurrent().orElseThrow();
            case SETTINGS_PACK_DISCHARGE_CURRENT ->
                    build.settings().packDischargeCurrent().orElseThrow();
            default ->
                    throw new IllegalArgumentException(
                            input.key() + " is not one number of a vehicle");
        };
    }

    private MotorHeat heat() {
        return build.motor().heat().orElseThrow();
    }
}
