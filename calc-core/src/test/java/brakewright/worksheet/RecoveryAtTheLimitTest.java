package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.machine.WindingHeat;
import brakewright.spec.MotorHeat;
import org.junit.jupiter.api.Test;

class RecoveryAtTheLimitTest {

    @Test
    void findsTheRestOfAWindingThatRoundsToItsLimit() {
        WindingHeat motor =
                new WindingHeat(new MotorHeat(0.5, 1.6, 60.0, 450.0), 0.04, 120.0, 20.0, 0.0);
        double cold = motor.timeToLimit(motor.cold(), 63.0).orElseThrow();
        assertThat(new Recovery(motor, motor, 63.0, 0.3 * cold).after(cold)).isPresent();
    }
}
