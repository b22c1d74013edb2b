package brakewright.cli.recording;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Problem;
import brakewright.recording.Cleaning;
import brakewright.recording.CurrentSign;
import brakewright.recording.Joining;
import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import brakewright.recording.Repairs;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
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
        Repairs repairs = new Repairs();
        List<Problem> problems = new ArrayList<>();
        List<FileNotes> notes = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        boolean isOneClock = true;
        for (Path path : paths) {
            try {
                Scaled scaled = Scaled.of(RecordingFile.read(path, choice, repairs), problems);
                notes.add(FileNotes.of(scaled));
                RawFile file = scaled.file();
                pieces.addAll(Cleaning.of(file.source(), file.lines(), scaled.columns(), repairs));
                isOneClock &= file.isDated();
            } catch (BuildFileException wrong) {
                wrong.problems().forEach(each -> problems.add(in(path, each, paths.size())));
            }
        }
        if (pieces.isEmpty() && problems.isEmpty()) {
            problems.add(new Problem(0, "", "no row has a time", ""));
        }
        if (!problems.isEmpty()) {
            throw new BuildFileException(problems);
        }
        Recording joined = Joining.join(pieces, isOneClock, repairs);
        if (!(joined.seconds() > 0.0)) {
            throw new BuildFileException(
                    List.of(
                            new Problem(
                                    0,
                                    "",
                                    "no two rows follow each other, so nothing can be added up",
                                    "rows at most "
                                            + Math.round(joined.longestStep())
                                            + " s apart")));
        }
        Optional<CurrentSign> settled = settled(joined, sign);
        return new Recordings(
                settled.map(known -> known.settle(joined)).orElse(joined), settled, notes, repairs);
    }

    private static Problem in(Path path, Problem problem, int files) {
        String name = files == 1 ? "" : String.valueOf(path.getFileName());
        String key = problem.key();
        return new Problem(
                problem.line(),
                name + (name.isEmpty() || key.isEmpty() ? "" : ", ") + key,
                problem.wrong(),
                problem.expected());
    }

    private static Optional<CurrentSign> settled(Recording joined, Optional<Boolean> sign)
            throws BuildFileException {
        if (!joined.has(Quantity.PACK_CURRENT)) {
            return Optional.empty();
        }
        Optional<CurrentSign> settled =
                sign.map(known -> new CurrentSign(known, CurrentSign.Proof.GIVEN))
                        .or(() -> CurrentSign.proved(joined));
        if (settled.isEmpty() && isCurrentEverFlowing(joined)) {
            throw new BuildFileException(
                    List.of(
                            new Problem(
                                    0,
                                    Quantity.PACK_CURRENT.key(),
                                    "nothing shows whether it is positive out of the pack, or"
                                            + " braking and the voltage contradict each other",
                                    "--current-sign out-of-pack-positive, or"
                                            + " out-of-pack-negative")));
        }
        return settled;
    }

    private static boolean isCurrentEverFlowing(Recording joined) {
        for (Piece piece : joined.pieces()) {
            for (int row = 0; row < piece.rows(); row++) {
                if (Math.abs(piece.value(Quantity.PACK_CURRENT, row)) > 0.0) {
                    return true;
                }
            }
        }
        return false;
    }
}
