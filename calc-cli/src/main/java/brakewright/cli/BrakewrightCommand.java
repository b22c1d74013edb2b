package brakewright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command without a subcommand: says what there is. {@link Main} adds the subcommands. */
@Command(
        name = "brakewright",
        description = {
            "Safe motor, pack and brake currents for small battery-electric vehicles.",
            "",
            "Reads a build file (TOML) that describes a vehicle, and says what to enter into its"
                    + " controllers, what holds each number down, and up to which speed and charge"
                    + " the present setting is safe."
        },
        mixinStandardHelpOptions = true,
        version = "brakewright 0.1.0",
        footer = {
            "",
            "Exit status: 0 within limits or conditional, 1 outside limits, 2 unusable input or a"
                    + " result that cannot be written, 70 a fault in the program."
        })
final class BrakewrightCommand implements Runnable {

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Missing command");
    }
}
