package brakewright.cli.words;

import brakewright.fitting.Fitted;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a result of a recorded ride is, how it is found, and where it ends being true. */
public enum RideWord {
    /** The top speed. */
    HELD_SPEED(
            "the highest speed that lasted for the time of --hold.",
            "In every window of that length the lowest speed counts, so that no single row makes"
                    + " it; of these the highest is told.",
            "A slope, the wind or a wheel that slips is in it. Compare the mean of both"
                    + " directions."),
    /** The top speed both ways. */
    BOTH_WAYS(
            "the mean of the highest speeds held on one stretch in both directions.",
            "Positions tell where and which way: within 100 m, opposite to within 30°, the slower"
                    + " at least 0.7 of the faster.",
            "Even slope and steady wind fall out to first order, gusts and traffic do not."),
    /** Energy and charge. */
    ENERGY(
            "what flowed out of the pack and back, and what that makes for a kilometre.",
            "Voltage times current over time, straight between rows; nothing is added across a"
                    + " gap.",
            "A current sensor that is off by a per cent is off so here. Idle power is in it."),
    /** Hard stops and pulls. */
    HARD_CHANGES(
            "where the speed changed fast, with the distance and the mean and highest rate.",
            "The rate over about a second of the speed: at least 1 m/s² at its highest, half of that"
                    + " throughout, and 2 m/s in all.",
            "Wheels that lock or spin tell a rate that the vehicle never had."),
    /** Limits. */
    LIMITS_EXCEEDED(
            "where more flowed than the pack may give or take, or a rating or a voltage was"
                    + " passed.",
            "The limits of the build file, row by row, at the recorded charge and temperature.",
            "What was not recorded was not looked at, and between rows nothing is seen."),
    /** The model. */
    AGAINST_MODEL(
            "what was measured beside what the model takes for the same speeds and slopes.",
            "The recorded ride is driven stretch by stretch through the steps that predict a"
                    + " route.",
            "Explained is the part of a difference that the tolerances of the build file make up"
                    + " for; the rest is a fault of description, recording or model."),
    /** By steps of current. */
    PACK_RESISTANCE(
            "how far the pack's voltage falls for each ampere, over 1 s and over 10 s.",
            "Least squares of the change of voltage over the change of current between rows that"
                    + " far apart; of it joints and leads is what the cells as described leave.",
            "Over 10 s the rest voltage falls a little, too. Cold cells resist more: where their"
                    + " temperature varied it is told for each."),
    /** By charge. */
    CAPACITY(
            "what a whole charge holds.",
            "The slope of the charge that flowed over the shown charge, wherever that falls.",
            "A shown charge that is itself counted gives the capacity that somebody entered."),
    /** At a stand. */
    IDLE_POWER(
            "what electronics draw while it stands.",
            "The mean of stands of 3 s and more, their first and last second left out.",
            "Lights and heaters count if they were on."),
    /** By positions. */
    WHEEL_DIAMETER(
            "the wheels that positions tell.",
            "Distance by position over distance by the wheels, over 250 m each, times the"
                    + " diameter described.",
            "It holds if the recorder counts with the one described. A tape does as well."),
    /** Tyres and air. */
    ROLLING_AND_DRAG(
            "rolling resistance and drag area by the energy: with them the model takes as much as"
                    + " was measured.",
            "Least squares over blocks of 10 s of even riding within what the settings permit.",
            "All else is taken as described: a wrong mass, efficiency or wind ends in them."),
    /** By coasting. */
    COASTING(
            "rolling resistance and drag area where it rolled without drive or brake.",
            "What 3 s take of the momentum, less slope and the motors' own drag; least squares over"
                    + " the square of the air's speed.",
            "It needs no efficiency, but a brake that somebody touched ends in them."),
    /** Kv. */
    MOTOR_KV(
            "the speed of the motors for each volt.",
            "Even riding at which neither cap nor current holds the speed: the Kv that needs just"
                    + " the voltage that was there. The highest count, if the speed follows the"
                    + " voltage.",
            "Nobody records the throttle. Windings are taken to be as warm as the air."),
    /** The regen current. */
    REGEN_PLATEAU(
            "the current into the pack at which the controllers hold.",
            "The mean of brakings that come within a twentieth of the highest for a second.",
            "A rider who never brakes in full shows none.");

    private final String meaning;
    private final String how;
    private final String trust;

    RideWord(String meaning, String how, String trust) {
        this.meaning = meaning;
        this.how = how;
        this.trust = trust;
    }

    /**
     * Returns the word as it is typed.
     *
     * @return lower case with hyphens, {@code ride-} before it
     */
    public String key() {
        return "ride-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Finds a word.
     *
     * @param key as it is typed
     * @return the word; empty where there is none
     */
    public static Optional<RideWord> ofKey(String key) {
        return Arrays.stream(values()).filter(word -> word.key().equals(key)).findFirst();
    }

    /**
     * Returns the word that explains what is fitted.
     *
     * @param what the value
     * @return its word
     */
    public static RideWord of(Fitted what) {
        return switch (what) {
            case INSTANT_RESISTANCE, PULL_RESISTANCE, JOINT_RESISTANCE -> PACK_RESISTANCE;
            case CAPACITY -> CAPACITY;
            case IDLE_POWER -> IDLE_POWER;
            case WHEEL_DIAMETER -> WHEEL_DIAMETER;
            case ROLLING_RESISTANCE, DRAG_AREA -> ROLLING_AND_DRAG;
            case COASTING_ROLLING, COASTING_DRAG -> COASTING;
            case SPEED_CONSTANT -> MOTOR_KV;
            case REGEN_PLATEAU -> REGEN_PLATEAU;
        };
    }

    /**
     * Returns what it is.
     *
     * @return a sentence without its subject
     */
    public String meaning() {
        return meaning;
    }

    /**
     * Returns how it is found.
     *
     * @return sentences
     */
    public String how() {
        return how;
    }

    /**
     * Returns where it ends being true.
     *
     * @return sentences
     */
    public String trust() {
        return trust;
    }
}
