package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.buildfile.KeyGuide;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The guide lists every key of a build file as the table of keys has it. */
class GuideKeysTest {

    private static final GuideKeys LIST = new GuideKeys(new KeyGuide(Ahead.tables()));

    /** Writes the list first where {@code -Dbrakewright.guide=write} asks for it. */
    @Test
    void theListIsWhatTheTableGives() throws IOException {
        GuidePage page = GuidePage.of("keys.md");
        GuidePage expected = page.withPart("list of keys", LIST.list());
        assertThat(expected.keptFor(page).text())
                .as("written anew from keys.csv with -Dbrakewright.guide=write")
                .isEqualTo(expected.text());
    }
}
