package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The build file that a command names: finds and reads it. */
final class BuildArgument {

    private static final Path STANDARD_INPUT = Path.of("-");

    private static final String EXAMPLE = "vineyard-trail-board.toml";

    @Parameters(
            index = "0",
            paramLabel = "BUILD",
            description = "The build file; - is standard input.")
    private Path path = Path.of("");

    /** Reads the file that is named. */
    BuildFile read() {
        return read(path);
    }

    /** Reads a file, or standard input where that is named by a dash. */
    static BuildFile read(Path path) {
        if (path.equals(STANDARD_INPUT)) {
            return fromStandardInput();
        }
        if (path.toString().isEmpty()) {
            throw new Unusable("the name of the build file is empty; there is no such file");
        }
        if (Files.isDirectory(path)) {
            throw new Unusable(
                    path
                            + ": this is a folder; a build file is wanted, for example "
                            + path.resolve(EXAMPLE));
        }
        if (!Files.exists(path)) {
            throw new Unusable(path + ": there is no such file");
        }
        if (!Files.isRegularFile(path)) {
            throw new Unusable(path + ": this is no ordinary file");
        }
        try {
            return read(path.toString(), Files.readAllBytes(path));
        } catch (IOException unreadable) {
            throw new Unusable(path + ": the file cannot be read", unreadable);
        }
    }

    private static BuildFile fromStandardInput() {
        byte[] bytes;
        try {
            bytes = System.in.readAllBytes();
        } catch (IOException unreadable) {
            throw new Unusable("standard input cannot be read", unreadable);
        }
        if (bytes.length == 0) {
            throw new Unusable(
                    "standard input is empty, or was read already; a build file is wanted, for"
                            + " example brakewright worksheet - < board.toml");
        }
        return read("standard input", bytes);
    }

    /** Reads the example that the program carries. */
    static BuildFile example() {
        try (InputStream in = BuildArgument.class.getResourceAsStream("examples/" + EXAMPLE)) {
            if (in == null) {
                throw new IllegalStateException("the built-in example is missing");
            }
            return read(EXAMPLE, in.readAllBytes());
        } catch (IOException unreadable) {
            throw new IllegalStateException("the built-in example is unreadable", unreadable);
        }
    }

    private static BuildFile read(String name, byte[] bytes) {
        try {
            return BuildFile.read(bytes, Ahead.tables());
        } catch (BuildFileException wrong) {
            throw new Unusable(name, wrong);
        }
    }
}
