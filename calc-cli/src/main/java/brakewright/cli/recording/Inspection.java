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
 * What was found out about the files of one ride, whether or not they can be used.
 *
 * @param files what was found out about each that can be parted into columns
 * @param read the recording; empty where there are problems
 * @param problems why it cannot be used
 */
public record Inspection(List<FileNotes> files, Optional<Recordings> read, List<Problem> problems) {

    /** Copies the lists. */
    public Inspection {
        files = List.copyOf(files);
        problems = List.copyOf(problems);
    }

    /**
     * Reads the files of one ride.
     *
     * @param paths of the files, at least one, in the order in which they were ridden where their
     *     clocks do not tell it
     * @param choice what is told about their columns
     * @param sign whether a current out of the pack is positive in the files; empty where that is
     *     to be proved
     * @return what they are
     * @throws IOException if a file cannot be read
     */
    public static Inspection of(List<Path> paths, ColumnChoice choice, Optional<Boolean> sign)
            throws IOException {
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
                FileNotes.ofRefused(path, choice).ifPresent(notes::add);
                wrong.problems().forEach(each -> problems.add(in(path, each, paths.size())));
            }
        }
        if (pieces.isEmpty() && problems.isEmpty()) {
            problems.add(new Problem(0, "", "no row has a time", ""));
        }
        return problems.isEmpty()
                ? joined(Joining.join(pieces, isOneClock, repairs), sign, notes, repairs)
                : new Inspection(notes, Optional.empty(), problems);
    }

    private static Inspection joined(
            Recording joined, Optional<Boolean> sign, List<FileNotes> notes, Repairs repairs) {
        List<Problem> problems = new ArrayList<>();
        if (!(joined.seconds() > 0.0)) {
            problems.add(
                    new Problem(
                            0,
                            "",
                            "no two rows follow each other, so nothing can be added up",
                            "rows at most " + Math.round(joined.longestStep()) + " s apart"));
        }
        Optional<CurrentSign> settled =
                joined.has(Quantity.PACK_CURRENT)
                        ? settled(joined, sign, problems)
                        : Optional.empty();
        Recordings read =
                new Recordings(
                        settled.map(known -> known.settle(joined)).orElse(joined),
                        settled,
                        notes,
                        repairs);
        return new Inspection(
                notes, problems.isEmpty() ? Optional.of(read) : Optional.empty(), problems);
    }

    /** Told or proved; what was told must not be what braking or the voltage contradict. */
    private static Optional<CurrentSign> settled(
            Recording joined, Optional<Boolean> sign, List<Problem> problems) {
        Optional<CurrentSign> proved = CurrentSign.proved(joined);
        if (sign.isPresent()) {
            proved.filter(known -> known.isOutPositive() != sign.get())
                    .filter(known -> known.proof() != CurrentSign.Proof.BALANCE)
                    .ifPresent(
                            known ->
                                    problems.add(
                                            new Problem(
                                                    0,
                                                    Quantity.PACK_CURRENT.key(),
                                                    "it is told to be "
                                                            + word(sign.get())
                                                            + ", but "
                                                            + known.proof().meaning()
                                                            + ", by which it is "
                                                            + word(known.isOutPositive()),
                                                    "no --current-sign and none in [recording],"
                                                            + " or the other one")));
            return Optional.of(new CurrentSign(sign.get(), CurrentSign.Proof.GIVEN));
        }
        if (proved.isEmpty() && isCurrentEverFlowing(joined)) {
            problems.add(
                    new Problem(
                            0,
                            Quantity.PACK_CURRENT.key(),
                            "nothing shows whether it is positive out of the pack, or braking and"
                                    + " the voltage contradict each other",
                            "--current-sign out-of-pack-positive, or out-of-pack-negative"));
        }
        return proved;
    }

    private static String word(boolean isOutPositive) {
        return isOutPositive ? "positive out of the pack" : "negative out of the pack";
    }

    /**
     * Returns the recording.
     *
     * @return the recording
     * @throws BuildFileException with every reason why it cannot be used
     */
    public Recordings usable() throws BuildFileException {
        if (!problems.isEmpty()) {
            throw new BuildFileException(problems);
        }
        return read.orElseThrow();
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
