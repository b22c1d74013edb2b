package brakewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The manual page of a command, in the macros that {@code man} sets.
 *
 * <p>Source of the macros: man(7), the classic manual page macros of troff.
 */
final class ManualPage {

    private final CommandSpec command;
    private final StringBuilder page = new StringBuilder();

    ManualPage(CommandSpec command) {
        this.command = command;
    }

    /** The name of the page: that of the command, with dashes for spaces. */
    String name() {
        return command.qualifiedName("-");
    }

    String text() {
        page.setLength(0);
        macro("TH", quoted(name().toUpperCase(Locale.ROOT)), "1", quoted(""), quoted(version()));
        macro("SH", "NAME");
        line(name() + " - " + summary());
        macro("SH", "SYNOPSIS");
        line(synopsis());
        macro("SH", "DESCRIPTION");
        paragraphs(command.usageMessage().description());
        parameters();
        options();
        subcommands();
        macro("SH", "EXIT STATUS");
        line("0 within limits or conditional, 1 outside limits, 2 unusable input or a result that");
        line("cannot be written, 70 a fault in the program.");
        seeAlso();
        return page.toString();
    }

    private String version() {
        return String.join(" ", root().version());
    }

    private CommandSpec root() {
        return command.root();
    }

    /** The first sentence of the description, without its full stop. */
    private String summary() {
        String[] told = command.usageMessage().description();
        String all = told.length == 0 ? command.name() : told[0];
        return all.replaceFirst("[.:]( .*)?$", "");
    }

    private String synopsis() {
        CommandLine.Help help =
                new CommandLine.Help(command, CommandLine.Help.defaultColorScheme(Ansi.OFF));
        return help.synopsis(0).strip().replaceAll("\\s+", " ");
    }

    private void parameters() {
        if (command.positionalParameters().isEmpty()) {
            return;
        }
        macro("SH", "PARAMETERS");
        for (PositionalParamSpec parameter : command.positionalParameters()) {
            entry(parameter.paramLabel(), parameter);
        }
    }

    private void options() {
        if (command.options().isEmpty()) {
            return;
        }
        macro("SH", "OPTIONS");
        for (OptionSpec option : command.options()) {
            String label = option.arity().max() == 0 ? "" : "=" + option.paramLabel();
            entry(String.join(", ", option.names()) + label, option);
        }
    }

    private void entry(String label, ArgSpec argument) {
        macro("TP");
        macro("B", quoted(label));
        paragraphs(argument.renderedDescription());
    }

    private void subcommands() {
        if (command.subcommands().isEmpty()) {
            return;
        }
        macro("SH", "COMMANDS");
        command.subcommands()
                .forEach(
                        (name, each) -> {
                            macro("TP");
                            macro("B", quoted(name));
                            paragraphs(each.getCommandSpec().usageMessage().description());
                        });
    }

    private void seeAlso() {
        List<String> others = new ArrayList<>();
        for (CommandLine each : root().subcommands().values()) {
            others.add(each.getCommandSpec().qualifiedName("-") + "(1)");
        }
        others.add(root().name() + "(1)");
        others.remove(name() + "(1)");
        macro("SH", "SEE ALSO");
        line(String.join(", ", others));
    }

    private void paragraphs(String[] paragraphs) {
        for (String paragraph : paragraphs) {
            if (paragraph.isBlank()) {
                macro("PP");
            } else {
                line(CommandLine.Help.Ansi.OFF.string(paragraph));
            }
        }
    }

    private void macro(String... words) {
        page.append('.').append(String.join(" ", words).stripTrailing()).append('\n');
    }

    private void line(String text) {
        String safe = escaped(text);
        page.append(safe.startsWith(".") || safe.startsWith("'") ? "\\&" : "")
                .append(safe)
                .append('\n');
    }

    private static String quoted(String word) {
        return '"' + escaped(word).replace("\"", "\\(dq") + '"';
    }

    /** A backslash and a dash mean something to troff. */
    private static String escaped(String text) {
        return text.replace("\\", "\\e").replace("-", "\\-").replace('\n', ' ');
    }
}
