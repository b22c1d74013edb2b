package brakewright.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which of several defaults holds. */
class DefaultTest {

    private static final ReferenceTables TABLES =
            ReferenceTables.read(
                    name ->
                            name.equals("defaults.csv")
                                    ? new StringReader(
                                            """
                                            key,when,value,unit,source,kind,note
                                            a.b,stance=seated,2,m,own-choice,common-practice,
                                            a.b,,1,m,own-choice,common-practice,
                                            a.b,stance=seated; chemistry=lfp,3,m,own-choice,common-practice,
                                            """)
                                    : ReferenceTables.shipped(name));

    @Test
    void theMostSpecificThatMatchesHolds() {
        assertThat(value(Map.of())).isEqualTo(1.0);
        assertThat(value(Map.of("stance", "standing-forward"))).isEqualTo(1.0);
        assertThat(value(Map.of("stance", "seated"))).isEqualTo(2.0);
        assertThat(value(Map.of("stance", "seated", "chemistry", "nmc"))).isEqualTo(2.0);
        assertThat(value(Map.of("stance", "seated", "chemistry", "lfp"))).isEqualTo(3.0);
        assertThat(value(Map.of("chemistry", "lfp"))).isEqualTo(1.0);
    }

    private static double value(Map<String, String> facts) {
        return TABLES.defaultFor("a.b", facts).orElseThrow().value();
    }
}
