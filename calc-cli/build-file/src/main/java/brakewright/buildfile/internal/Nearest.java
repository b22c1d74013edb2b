package brakewright.buildfile.internal;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Finds the word that a misspelt one most likely means. */
public final class Nearest {

    private Nearest() {}

    /**
     * Returns the nearest of the candidates.
     *
     * @param word the misspelt word
     * @param candidates what it may mean
     * @return the nearest; empty where even that shares too little with the word
     */
    public static Optional<String> to(String word, Collection<String> candidates) {
        String best = "";
        int least = Integer.MAX_VALUE;
        for (String candidate : candidates) {
            int distance = edits(word, candidate, false);
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        return least <= Math.max(2, word.length() / 2) ? Optional.of(best) : Optional.empty();
    }

    /**
     * Puts the words first that a misspelt one most likely means.
     *
     * @param word the misspelt word
     * @param candidates what it may mean
     * @return all of them; those that are equally near in the order given
     */
    public static List<String> first(String word, Collection<String> candidates) {
        return candidates.stream()
                .sorted(Comparator.comparingInt(candidate -> edits(word, candidate, false)))
                .toList();
    }

    /**
     * Returns the dotted key that a misspelt one most likely means: a key of the same table, else
     * one of the tables in it, else one of any table. Only the last names are compared, and at most
     * a third of the letters may be wrong.
     *
     * @param key the misspelt key
     * @param candidates every key and table there is
     * @return the nearest; empty where none is near enough
     */
    public static Optional<String> key(String key, Collection<String> candidates) {
        String table = table(key);
        List<Predicate<String>> circles =
                List.of(
                        candidate -> table(candidate).equals(table),
                        candidate -> candidate.startsWith(table),
                        candidate -> true);
        return circles.stream()
                .map(circle -> candidates.stream().filter(circle).toList())
                .flatMap(circle -> amongst(circle, key).stream())
                .findFirst();
    }

    private static Optional<String> amongst(List<String> candidates, String key) {
        String name = name(key);
        int most = Math.max(1, name.length() / 3);
        return candidates.stream()
                .filter(candidate -> slips(name, name(candidate)) <= most)
                .min(
                        Comparator.<String>comparingInt(candidate -> slips(name, name(candidate)))
                                .thenComparingInt(candidate -> edits(key, candidate, false))
                                .thenComparing(Comparator.naturalOrder()));
    }

    /** With its dot, so that one table does not begin like another. */
    private static String table(String key) {
        return key.substring(0, key.lastIndexOf('.') + 1);
    }

    private static String name(String key) {
        return key.substring(key.lastIndexOf('.') + 1);
    }

    /**
     * Returns how many letters are missing, superfluous, wrong or exchanged with their neighbour.
     *
     * <p>Lengths that differ by more than the longest name of a key are not looked at further.
     */
    private static int slips(String word, String meant) {
        int apart = Math.abs(word.length() - meant.length());
        if (apart > Math.max(1, word.length() / 3)) {
            return Integer.MAX_VALUE;
        }
        return edits(word, meant, true);
    }

    /**
     * Returns in how many steps one word becomes the other.
     *
     * <p>Source: V. I. Levenshtein, Soviet Physics Doklady 10 (1966), 707; exchanged neighbours as
     * in F. J. Damerau, Communications of the ACM 7 (1964), 171.
     *
     * @param mayExchange whether letters that change places are one step instead of two
     */
    private static int edits(String word, String meant, boolean mayExchange) {
        int[] before = new int[meant.length() + 1];
        int[] last = IntStream.rangeClosed(0, meant.length()).toArray();
        for (int i = 1; i <= word.length(); i++) {
            int[] row = new int[meant.length() + 1];
            row[0] = i;
            for (int j = 1; j <= meant.length(); j++) {
                int wrong = word.charAt(i - 1) == meant.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + wrong);
                boolean isExchanged =
                        mayExchange
                                && i > 1
                                && j > 1
                                && word.charAt(i - 1) == meant.charAt(j - 2)
                                && word.charAt(i - 2) == meant.charAt(j - 1);
                if (isExchanged) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
            }
            before = last;
            last = row;
        }
        return last[meant.length()];
    }
}
