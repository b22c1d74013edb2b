package brakewright.assembly;

import brakewright.spec.CurrentBasis;
import brakewright.spec.Input;
import brakewright.spec.Stance;

/** What must be known of a vehicle, one after the other; {@link BuildSteps} begins. */
public interface BuildStep {

    /** Who rides. */
    interface OfRider {

        /**
         * Tells of the rider.
         *
         * @param mass with gear [kg]
         * @param stance how they are carried
         * @return the next step
         */
        OfVehicle rider(double mass, Stance stance);
    }

    /** What rolls. */
    interface OfVehicle {

        /**
         * Tells of the vehicle.
         *
         * @param mass with the pack, without the rider [kg]
         * @param wheelDiameter of a driven wheel under load [m]
         * @return the next step
         */
        OfDrive vehicle(double mass, double wheelDiameter);
    }

    /** How its motors reach the road. */
    interface OfDrive {

        /**
         * Tells of the drive.
         *
         * @param motors how many
         * @param reduction motor turns per wheel turn [1]
         * @return the next step
         */
        OfMotor drive(int motors, double reduction);
    }

    /** One of its motors, all alike. */
    interface OfMotor {

        /**
         * Tells of the motor.
         *
         * @param kvRpmPerVolt no-load speed per volt, peak of line to line [rpm/V]
         * @param resistance between two of the three leads, at 20 °C [Ω]
         * @return the next step
         */
        OfController motor(double kvRpmPerVolt, double resistance);
    }

    /** One of its controllers, all alike. */
    interface OfController {

        /**
         * Tells of the controller; that there are several is told by {@link
         * Input#CONTROLLER_COUNT}.
         *
         * @param basis what it means by motor current
         * @param motorCurrentRating continuous, per motor [A]
         * @param packCurrentRating continuous [A]
         * @param voltageRating highest that it bears [V]
         * @return the next step
         */
        OfPack controller(
                CurrentBasis basis,
                double motorCurrentRating,
                double packCurrentRating,
                double voltageRating);
    }

    /** Its pack. */
    interface OfPack {

        /**
         * Tells of a pack of cells that the tables know.
         *
         * @param cellId as the tables call it
         * @param series groups in series
         * @param parallel cells in each
         * @return what else may be told
         */
        BuildSteps pack(String cellId, int series, int parallel);

        /**
         * Tells of a pack of other cells.
         *
         * @param known what is known of the cell
         * @param series groups in series
         * @param parallel cells in each
         * @return what else may be told
         */
        BuildSteps pack(KnownCell known, int series, int parallel);
    }
}
