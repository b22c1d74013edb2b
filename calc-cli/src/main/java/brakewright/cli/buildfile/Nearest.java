package brakewright.cli.buildfile;

import java.util.Collection;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the word that a misspelt one most likely means. */
public final class Nearest {

    private static final LevenshteinDistance DISTANCE = LevenshteinDistance.getDefaultInstance();

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
            int distance = DISTANCE.apply(word, candidate);
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        return least <= Math.max(2, word.length() / 2) ? Optional.of(best) : Optional.empty();
    }
}
