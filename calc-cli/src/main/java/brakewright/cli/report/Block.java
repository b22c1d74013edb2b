package brakewright.cli.report;

import brakewright.cli.chart.Chart;
import java.util.List;

/** A part of a chapter. */
public sealed interface Block {

    /**
     * A sentence or several.
     *
     * @param text the sentences
     */
    record Sentences(String text) implements Block {}

    /**
     * Sentences about one thing each, beside its name.
     *
     * @param entries in their order
     */
    record Entries(List<Entry> entries) implements Block {

        /** Copies the entries. */
        public Entries {
            entries = List.copyOf(entries);
        }
    }

    /**
     * Sentences about one thing.
     *
     * @param label its name, or a signal word
     * @param gravity of the signal word
     * @param text the sentences
     */
    record Entry(String label, Gravity gravity, String text) {}

    /**
     * Sentences that are told one by one.
     *
     * @param sentences in their order
     */
    record Items(List<String> sentences) implements Block {

        /** Copies the sentences. */
        public Items {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * A table; the first cell of each row names it.
     *
     * @param caption what it tells
     * @param heads of the columns; empty where there are none
     * @param rows all equally long
     */
    record Table(String caption, List<String> heads, List<List<String>> rows) implements Block {

        /** Copies the texts. */
        public Table {
            heads = List.copyOf(heads);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Lines to copy.
     *
     * @param lines as they are
     */
    record Copy(List<String> lines) implements Block {

        /** Copies the lines. */
        public Copy {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A picture with its numbers behind it.
     *
     * @param chart the picture
     */
    record Picture(Chart chart) implements Block {}

    /**
     * Lines to fill in by hand.
     *
     * @param fields what is asked, and what is known of it
     */
    record Form(List<Field> fields) implements Block {

        /** Copies the fields. */
        public Form {
            fields = List.copyOf(fields);
        }
    }

    /**
     * One thing to fill in.
     *
     * @param label what is asked
     * @param text what is known of it; empty for blank lines
     * @param lines how many blank lines there are
     */
    record Field(String label, String text, int lines) {}
}
