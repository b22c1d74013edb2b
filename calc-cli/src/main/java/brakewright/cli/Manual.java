package brakewright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.AutoComplete;
import picocli.CommandLine;

/** Writes what a system keeps beside a command: manual pages, and what a shell completes. */
public final class Manual {

    private static final String NAME = "brakewright";

    private Manual() {}

    /**
     * Writes the manual page of each command, {@code brakewright-check.1} and so on, and {@code
     * brakewright.bash}, which bash and zsh read.
     *
     * @param arguments the folder
     * @throws IOException if it cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        CommandLine all = Main.commands(Main.COMMANDS);
        Files.writeString(folder.resolve(NAME + ".bash"), AutoComplete.bash(NAME, all));
        write(folder, all);
        for (CommandLine command : all.getSubcommands().values()) {
            write(folder, command);
        }
    }

    private static void write(Path folder, CommandLine command) throws IOException {
        ManualPage page = new ManualPage(command.getCommandSpec());
        Files.writeString(folder.resolve(page.name() + ".1"), page.text());
    }
}
