package brakewright.cli.report;

import brakewright.cli.words.Cautions;
import java.util.ArrayList;
import java.util.List;

/**
 * A document about one vehicle.
 *
 * @param title what the vehicle is called
 * @param kind what is told of it
 * @param lead sentences below the title
 * @param banners what matters most
 * @param chapters in their order
 */
public record Report(
        String title,
        String kind,
        List<String> lead,
        List<Banner> banners,
        List<Chapter> chapters) {

    /**
     * A verdict.
     *
     * @param subject what it is about
     * @param word the verdict
     * @param gravity how grave it is
     * @param sentences what it depends on
     */
    public record Banner(String subject, String word, Gravity gravity, List<String> sentences) {

        /** Copies the sentences. */
        public Banner {
            sentences = List.copyOf(sentences);
        }
    }

    /** Copies the parts. */
    public Report {
        lead = List.copyOf(lead);
        banners = List.copyOf(banners);
        chapters = List.copyOf(chapters);
    }

    /**
     * Says something before all else.
     *
     * @param sentence what is said
     * @return a changed copy
     */
    public Report saying(String sentence) {
        List<String> before = new ArrayList<>(List.of(sentence));
        before.addAll(lead);
        return new Report(title, kind, before, banners, chapters);
    }

    /** What everyone who acts on a document should know. */
    static Chapter cautions() {
        return new Chapter("Cautions", List.of(new Block.Items(Cautions.all())));
    }
}
