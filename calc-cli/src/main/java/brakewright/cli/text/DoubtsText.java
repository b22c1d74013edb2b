package brakewright.cli.text;

import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.doubt.Tolerated;
import brakewright.cli.doubt.Unmeasured;
import java.util.Optional;

/** What is not known exactly, and what to measure first. */
final class DoubtsText {

    private final Showing showing;

    DoubtsText(Showing showing) {
        this.showing = showing;
    }

    void print() {
        AskedSheet asked = showing.asked();
        Page page = showing.page();
        Optional<Tolerated> tolerated = asked.tolerated();
        if (tolerated.isPresent()) {
            new ToleranceTable(tolerated.get(), showing.units(), showing.ink(), page).print();
            page.blank();
        }
        Optional<Unmeasured> unmeasured = asked.unmeasured();
        if (unmeasured.isPresent()) {
            new UnmeasuredTable(unmeasured.get(), showing.units(), showing.ink(), page).print();
        } else {
            page.line(showing.ink().heading("What to measure first"));
            page.note(
                    "The build file gives every value of which a usual spread is known, or the"
                            + " spreads reach values that do not go together.");
        }
    }
}
