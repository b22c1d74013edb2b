package brakewright.recording;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What of a recording was not taken as it stood, and by which rule.
 *
 * @param rule which
 * @param quantity whose fields; empty where whole rows are concerned
 * @param count how many fields or rows
 * @param places the first of them
 */
public record Repair(Rule rule, Optional<Quantity> quantity, int count, List<Place> places) {

    /** How many places are kept of each kind: more tell nothing more. */
    static final int MOST_PLACES = 20;

    /** Copies the places. */
    public Repair {
        places = List.copyOf(places);
    }

    /** By which rule something was left out or put right. */
    public enum Rule {
        /** A field is no number: it is left out. */
        UNREADABLE("no number, field left out"),
        /** A row has fewer or more fields than the header: which is missing is not known. */
        ODD_ROW("not as many fields as the header, row left out"),
        /** A row has no time that can be read: it is left out. */
        NO_TIME("no time that can be read, row left out"),
        /** The time of one row is far from those around it: the row is left out. */
        TIME_LEAP("its time leaps away and back, row left out"),
        /** Rows do not ascend in time: they are put in order. */
        OUT_OF_ORDER("out of order, rows sorted by their time"),
        /** A row stands there again: the later one is left out. */
        REPEATED_ROW("the same row again, left out"),
        /** Two rows differ but have one time: the later one is left out. */
        REPEATED_TIME("another row of the same time, left out"),
        /** The clock fell back and ran on from there: what follows is another piece. */
        CLOCK_ANEW("the clock began anew, another piece from there on"),
        /** A clock passed midnight: a day is added. */
        MIDNIGHT("the clock passed midnight, a day added"),
        /** A value that no vehicle of this class can have: it is left out. */
        IMPOSSIBLE("beyond what is possible, field left out"),
        /** A value that leaps away and back, faster than any vehicle: it is left out. */
        SPIKE("leaps away and back, field left out"),
        /** Rows repeat in all they hold while the vehicle moves: the recorder froze. */
        FROZEN("frozen while the speed is not zero, rows left out"),
        /**
         * Rows repeat again and again while the vehicle moves: steady riding, coarsely recorded.
         */
        REPEATING("the same for 5 s and more, again and again: taken as steady, rows kept"),
        /** A position too far from the last for any speed: it is left out. */
        POSITION_LEAP("farther from the last than can be ridden, position left out"),
        /** Positions stand still while the wheels turn: they are left out. */
        POSITION_STUCK("stands still while the wheels turn, position left out"),
        /** A charge far off its neighbours that comes back: it is left out. */
        CHARGE_LEAP("leaps away and comes back, field left out"),
        /** A row of a piece lies within the time of another: the later file's is left out. */
        OVERLAP("within the time of another piece, row left out"),
        /** Wheel speeds disagree with positions: the speeds of the positions are taken instead. */
        SPEED_CONTRADICTED("contradicts the positions, whose speed is taken instead"),
        /** A voltage that the cells in series cannot have: it is left out. */
        VOLTS_BEYOND_CELLS("not a voltage of so many cells in series, field left out");

        private final String meaning;

        Rule(String meaning) {
            this.meaning = meaning;
        }

        /**
         * Returns the name that files use.
         *
         * @return lower case with hyphens
         */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /**
         * Returns what was found and done.
         *
         * @return a clause without a full stop
         */
        public String meaning() {
            return meaning;
        }
    }
}
