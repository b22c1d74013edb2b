package brakewright.cli.doubt;

import brakewright.buildfile.BuildFile;
import brakewright.profile.Entry;
import brakewright.profile.Recommendation;
import brakewright.profile.Situation;
import brakewright.profile.WetRoad;
import brakewright.worksheet.RiddenStop;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The worksheet of a build file with its verdicts, its recommended set and its doubts. Each part is
 * found when it is first asked for, as a page shows some of them only. For one thread.
 */
public final class AskedSheet {

    private final BuildFile file;
    private final Optional<Tolerated> tolerated;
    private final Entry entry;
    private final Worksheet sheet;
    private final Situation situation;
    private @Nullable Judged judged;
    private @Nullable Recommendation recommended;
    private @Nullable Worksheet entered;
    private @Nullable WetRoad wet;
    private @Nullable Optional<Unmeasured> unmeasured;
    private @Nullable Measurements measurements;

    /**
     * Begins a worksheet.
     *
     * @param file the build file, in the situation that is asked about
     * @param tolerated what the tolerances stated do; empty where none is
     * @param entry how finely settings are entered
     */
    public AskedSheet(BuildFile file, Optional<Tolerated> tolerated, Entry entry) {
        this.file = file;
        this.tolerated = tolerated;
        this.entry = entry;
        this.sheet = Worksheet.of(file.build());
        this.situation = Vehicles.of(file).situation();
    }

    /**
     * Returns the build file.
     *
     * @return in the situation that is asked about
     */
    public BuildFile file() {
        return file;
    }

    /**
     * Returns the worksheet.
     *
     * @return with nominal inputs
     */
    public Worksheet sheet() {
        return sheet;
    }

    /**
     * Returns what the tolerances stated do.
     *
     * @return empty where none is
     */
    public Optional<Tolerated> tolerated() {
        return tolerated;
    }

    /**
     * Returns both verdicts.
     *
     * @return at the unfavourable side of the tolerances
     */
    public Judged judged() {
        if (judged == null) {
            judged = Judged.of(situation, sheet, tolerated);
        }
        return judged;
    }

    /**
     * Returns the set that holds together.
     *
     * @return the set, with its verdicts
     */
    public Recommendation recommended() {
        if (recommended == null) {
            recommended = Recommendation.of(situation, entry);
        }
        return recommended;
    }

    /**
     * Returns what a wet road leaves.
     *
     * @return of the settings as they are, and of the set that holds together
     */
    public WetRoad wet() {
        if (wet == null) {
            wet = WetRoad.of(situation, file.build().settings(), recommended(), entry);
        }
        return wet;
    }

    /**
     * Returns what values from tables and assumptions could do.
     *
     * @return empty where every value with a usual spread is given
     */
    public Optional<Unmeasured> unmeasured() {
        if (unmeasured == null) {
            unmeasured = Unmeasured.of(file, tolerated);
        }
        return unmeasured;
    }

    /**
     * Returns what to measure first.
     *
     * @return the weightiest
     */
    public Measurements measurements() {
        if (measurements == null) {
            measurements = Measurements.of(file, tolerated, sheet);
        }
        return measurements;
    }

    /**
     * Returns the worksheet of the vehicle with the set that holds together.
     *
     * @return with nominal inputs
     */
    public Worksheet entered() {
        if (entered == null) {
            entered = Worksheet.of(recommended().build());
        }
        return entered;
    }

    /**
     * Computes the stops that the recommended set gives where one rides.
     *
     * @return at the charge states of the present settings, from the fullest pack down
     */
    public List<RiddenStop> stopsEntered() {
        return RiddenStop.with(recommended().build(), sheet.ridden());
    }
}
