package brakewright.buildfile;

import java.util.List;

/**
 * A text that was taken apart, as far as it could be understood.
 *
 * @param table what it says
 * @param comments where it is TOML
 * @param unreadLines the lines that were not understood, from 1; 0 for all
 * @param spelling of its form
 */
record WrittenText(
        WrittenTable table, TomlComments comments, List<Integer> unreadLines, Spelling spelling) {

    /** Of a text that says nothing that can be relied on. */
    static WrittenText unread(Spelling spelling) {
        return new WrittenText(WrittenTable.NOTHING, TomlComments.NONE, List.of(0), spelling);
    }

    /**
     * Takes a text apart: JSON where it begins with a brace, as no TOML does, else TOML.
     *
     * @param problems to which is added what is neither
     */
    static WrittenText of(String text, List<Problem> problems) {
        boolean isJson = text.stripLeading().startsWith("{");
        try {
            return isJson ? new JsonText(problems).read(text) : TomlText.read(text, problems);
        } catch (StackOverflowError tooDeep) {
            problems.add(new Problem(0, "", "the file is nested too deeply", ""));
            return unread(isJson ? Spelling.JSON : Spelling.TOML);
        }
    }

    /** What a parser complains of, without the part of the text that it shows below. */
    static String firstLine(String message) {
        return message.split("\\R", 2)[0];
    }
}
