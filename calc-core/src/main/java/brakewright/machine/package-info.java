/**
 * What a motor does with its current: torque, back-EMF, losses, the voltage it needs, and how hot
 * it gets.
 *
 * <p>The entry classes are {@link brakewright.machine.MotorModel} and {@link
 * brakewright.machine.WindingHeat}. The machine is a permanent-magnet one without saturation or
 * field weakening: torque is proportional to current. Its copper resistance rises with temperature
 * by a straight line (−50 to 250 °C). The heat of winding and case is solved exactly, not stepped.
 *
 * <pre>{@code
 * MotorModel motor = new MotorModel(board.motor(), board.controllers().basis());
 * double torque = motor.torqueConstant() * 30.0;            // N·m, at 30 A
 * double loss = motor.lossResistance(80.0) * 30.0 * 30.0;   // W, windings at 80 °C
 * double volts = motor.voltageNeed(300.0, 30.0, 80.0);      // V, at 300 rad/s
 * }</pre>
 */
@NullMarked
package brakewright.machine;

import org.jspecify.annotations.NullMarked;
