package brakewright.assembly;

import brakewright.spec.Input;
import java.util.List;
import java.util.Map;

/**
 * The inputs of a build, those that were filled in too.
 *
 * @param whole those that are told once
 * @param packs those of each pack
 */
public record Completed(Map<Input, Resolved> whole, List<Map<Input, Resolved>> packs) {}
