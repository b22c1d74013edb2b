package brakewright.spec;

/**
 * A battery of more than one pack, told apart from one of any number.
 *
 * @param battery two or three packs
 */
public record Joined(Battery battery) {}
