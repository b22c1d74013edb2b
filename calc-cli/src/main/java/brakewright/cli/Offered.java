package brakewright.cli;

import brakewright.buildfile.KeyGuide;
import brakewright.cli.text.Ink;
import brakewright.cli.text.TablesText;
import brakewright.cli.words.RideWord;
import brakewright.explain.ResultId;
import brakewright.limit.LimitId;
import brakewright.profile.Quantity;
import java.util.Arrays;
import java.util.Iterator;
import java.util.stream.Stream;

/** The words that a shell offers where an option or argument takes one of a closed list. */
final class Offered {

    private Offered() {}

    /** Words that are looked up only when a completion is written. */
    private abstract static class Words implements Iterable<String> {

        abstract Stream<String> words();

        @Override
        public Iterator<String> iterator() {
            return words().iterator();
        }
    }

    /** Of a worksheet. */
    static final class SheetSections extends Words {
        @Override
        Stream<String> words() {
            return new ShowOptions.OfSheet().known().stream();
        }
    }

    /** Of a check. */
    static final class CheckSections extends Words {
        @Override
        Stream<String> words() {
            return new ShowOptions.OfCheck().known().stream();
        }
    }

    /** Rows of a comparison, and what a sweep reports. */
    static final class Results extends Words {
        @Override
        Stream<String> words() {
            return Arrays.stream(Quantity.values()).map(Quantity::key);
        }
    }

    /** What can be solved for. */
    static final class Sought extends Words {
        @Override
        Stream<String> words() {
            return SoughtKey.KEYS.stream();
        }
    }

    /** Limits and results that can be explained. */
    static final class Explained extends Words {
        @Override
        Stream<String> words() {
            return Stream.of(
                            Arrays.stream(LimitId.values()).map(LimitId::key),
                            Arrays.stream(ResultId.values()).map(ResultId::key),
                            Arrays.stream(RideWord.values()).map(RideWord::key))
                    .flatMap(words -> words);
        }
    }

    /** Tables and their rows. */
    static final class Tables extends Words {
        @Override
        Stream<String> words() {
            return new TablesText(Ahead.tables(), new Ink(false, true)).names().stream();
        }
    }

    /** Keys of a build file. */
    static final class Keys extends Words {
        @Override
        Stream<String> words() {
            return new KeyGuide(Ahead.tables()).all().stream().map(KeyGuide.Entry::key);
        }
    }
}
