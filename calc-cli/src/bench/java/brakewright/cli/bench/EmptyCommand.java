package brakewright.cli.bench;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;

/** A command that does nothing, with as many subcommands as the real one: the yardstick of start-up. */
@Command(
        name = "empty",
        mixinStandardHelpOptions = true,
        subcommands = {
            EmptyCommand.First.class,
            EmptyCommand.Second.class,
            EmptyCommand.Third.class,
            EmptyCommand.Fourth.class,
            EmptyCommand.Fifth.class,
            EmptyCommand.Sixth.class,
            EmptyCommand.Seventh.class,
            EmptyCommand.Eighth.class,
            HelpCommand.class
        })
public final class EmptyCommand implements Runnable {

    /** Does nothing. */
    @Command(name = "worksheet", mixinStandardHelpOptions = true)
    public static final class First implements Runnable {
        @Override
        public void run() {}
    }

    /** Does nothing. */
    @Command(name = "explain", mixinStandardHelpOptions = true)
    public static final class Second implements Runnable {
        @Override
        public void run() {}
    }

    /** Does nothing. */
    @Command(name = "check", mixinStandardHelpOptions = true)
    public static final class Third implements Runnable {
        @Override
        public void run() {}
    }

    /** Does nothing. */
    @Command(name = "compare", mixinStandardHelpOptions = true)
    public static final class Fourth implements Runnable {
        @Override
        public void run() {}
    }

    /** Does nothing. */
    @Command(name = "solve", mixinStandardHelpOptions = true)
    public static final class Fifth implements Runnable {
        @Override
        public void run() {}
    }

    /** Does nothing. */
    @Command(name = "sweep", mixinStandardHelpOptions = true)
    public static final class Sixth implements Runnable {
        @Override
        public void run() {}
    }

    /** Does nothing. */
    @Command(name = "ride", mixinStandardHelpOptions = true)
    public static final class Seventh implements Runnable {
        @Override
        public void run() {}
    }

    /** Does nothing. */
    @Command(name = "history", mixinStandardHelpOptions = true)
    public static final class Eighth implements Runnable {
        @Override
        public void run() {}
    }

    @Override
    public void run() {}

    /**
     * Runs the command.
     *
     * @param arguments of the command line
     */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new EmptyCommand()).execute(arguments));
    }
}
