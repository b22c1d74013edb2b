package brakewright.outside;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ArgumentsSource;

/**
 * Holds the model against values from outside the project. The method is run once for every row of
 * the source's table that is about the quantity, and every run is written to {@code
 * target/outside-checks.csv}.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Tag("outside")
@ParameterizedTest(name = "{0}")
@ArgumentsSource(OutsideCases.class)
@interface OutsideCheck {

    /** The quantity that is checked, as the rows name it. */
    String quantity();

    /** The table of expected values, {@code <source>.csv} beside this package. */
    String source();
}
