package brakewright.cli;

import brakewright.cli.buildfile.BuildFile;
import brakewright.cli.buildfile.BuildFileException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Finds and reads the build file that a command names. */
final class BuildArgument {

    private static final String EXAMPLE = "vineyard-trail-board.toml";

    private BuildArgument() {}

    /** Reads a file. */
    static BuildFile read(Path path) {
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
