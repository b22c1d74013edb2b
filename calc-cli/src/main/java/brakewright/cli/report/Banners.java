package brakewright.cli.report;

import brakewright.cli.doubt.Judged;
import brakewright.cli.report.Report.Banner;
import brakewright.cli.words.Initial;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.review.BrakeVerdict;
import java.util.List;

/** Both verdicts on settings. */
final class Banners {

    private Banners() {}

    static List<Banner> of(Judged judged, UnitSystem units) {
        VerdictWords words = new VerdictWords(judged.build(), units);
        return List.of(
                new Banner(
                        "Pack and parts",
                        Initial.capital(judged.word()),
                        Gravity.of(judged.review().verdict().outcome()),
                        words.of(judged.review())),
                brake("Brake", judged.brake(), words));
    }

    static Banner brake(String subject, BrakeVerdict brake, VerdictWords words) {
        return new Banner(
                subject,
                Initial.capital(brake.word().key()),
                Gravity.of(brake.word()),
                List.of(words.of(brake)));
    }
}
