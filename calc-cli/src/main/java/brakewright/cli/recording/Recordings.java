package brakewright.cli.recording;

import brakewright.buildfile.BuildFileException;
import brakewright.recording.CurrentSign;
import brakewright.recording.Recording;
import brakewright.recording.Repairs;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The files of one ride, read and joined.
 *
 * @param recording its current positive out of the pack
 * @param sign how the files count the current, and what shows it; empty where there is none
 * @param files what was found out about each
 * @param repairs what was not taken as it stood
 */
public record Recordings(
        Recording recording, Optional<CurrentSign> sign, List<FileNotes> files, Repairs repairs) {

    /** Copies the list. */
    public Recordings {
        files = List.copyOf(files);
    }

    /**
     * Reads the files of one ride.
     *
     * @param paths of the files, at least one, in the order in which they were ridden where their
     *     clocks do not tell it
     * @param choice what is told about their columns
     * @param sign whether a current out of the pack is positive in the files; empty where that is
     *     to be proved
     * @return the recording
     * @throws IOException if a file cannot be read
     * @throws BuildFileException with every reason why they cannot be used
     */
    public static Recordings read(List<Path> paths, ColumnChoice choice, Optional<Boolean> sign)
            throws IOException, BuildFileException {
        return Inspection.of(paths, choice, sign).usable();
    }
}
