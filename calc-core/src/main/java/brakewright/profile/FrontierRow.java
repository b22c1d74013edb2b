package brakewright.profile;

/**
 * One row of a frontier: for a value of another key the answer.
 *
 * @param fixed the value that is held
 * @param answer with it
 */
public record FrontierRow(double fixed, Answer answer) {}
