package brakewright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A folder of build files that a test writes. */
record BuildFolder(Path folder) {

    /** The example with two unequal packs and tolerances, which is not among the others. */
    static final String TOUR_BOARD = Path.of("examples", "salt-flat-tour-board.toml").toString();

    /** Writes a build file; returns its path. */
    String put(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name + ".toml"), text).toString();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    String put(String name, BuildText text) {
        return put(name, text.text());
    }

    /** The trail board without tolerances, ready for lines to be changed. */
    static BuildText exactBoard() {
        BuildText board = BuildText.of(Example.TRAIL_BOARD);
        board.replace("motor", "resistance", "resistance = \"68 mΩ\"");
        return board;
    }

    /** The exact board with proposals whose brake currents rise from 31 A. */
    String withProposals(String file, String... names) {
        String board = exactBoard().text();
        StringBuilder text = new StringBuilder(board.substring(0, board.indexOf("[proposals")));
        for (int i = 0; i < names.length; i++) {
            text.append("[proposals.\"").append(names[i]).append("\"]\n");
            text.append("motor_brake_current = \"").append(31 + i).append(" A\"\n");
        }
        return put(file, text.toString());
    }

    /** The tour board with a line in place of another. */
    String tourBoard(String name, String line, String instead) {
        try {
            String text = Files.readString(Path.of(TOUR_BOARD));
            if (!text.contains(line)) {
                throw new IllegalArgumentException("no line \"" + line + "\"");
            }
            return put(name, text.replace(line, instead));
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** The names of all files, hidden ones too. */
    List<String> files() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
