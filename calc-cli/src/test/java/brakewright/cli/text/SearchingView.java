package brakewright.cli.text;

import brakewright.profile.Situation;
import brakewright.spec.Settings;

/** A view as none may be: it looks for a corner of the tolerances. */
public final class SearchingView {

    private SearchingView() {}

    /**
     * Breaks the rule.
     *
     * @param situation the vehicle in its use
     * @return a text
     */
    public static String text(Situation situation) {
        return "" + situation.nominal(Settings.NONE).mass();
    }
}
