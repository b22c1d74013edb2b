package brakewright.cli.words;

import brakewright.review.Finding;
import brakewright.review.FindingDetail;
import brakewright.spec.Build;

/** Says what a fuse can and cannot interrupt. */
final class FuseWords {

    private final Build build;

    FuseWords(Build build) {
        this.build = build;
    }

    String of(Finding finding) {
        return switch (finding.topic()) {
            case FUSE_VOLTAGE_OVER ->
                    name(finding)
                            + " breaks up to "
                            + Numbers.significant(finding.limit().orElseThrow())
                            + " V; fully charged it stands at "
                            + Numbers.significant(finding.value().orElseThrow())
                            + " V. When it blows it may burn on as an arc. Replace it.";
            case FUSE_BREAKING_OVER ->
                    name(finding)
                            + " breaks up to "
                            + Numbers.down(finding.limit().orElseThrow(), 0)
                            + " A; a short circuit close behind it may drive up to "
                            + Numbers.up(finding.value().orElseThrow(), 0)
                            + " A through it, and it may burst.";
            case FUSE_BREAKING_UNKNOWN ->
                    "What "
                            + Initial.small(name(finding))
                            + " can break is not given. It must be rated for at least "
                            + Numbers.up(volts(finding), 1)
                            + " V of direct voltage and break "
                            + Numbers.up(finding.limit().orElseThrow(), 0)
                            + " A, what a short circuit may drive through it; else it may burn on"
                            + " as an arc or burst.";
            default -> throw new IllegalArgumentException(finding.id());
        };
    }

    private static double volts(Finding finding) {
        return ((FindingDetail.Breaking) finding.detail().orElseThrow()).voltage();
    }

    String name(Finding finding) {
        return build.battery().isOnePack()
                ? "The main fuse"
                : finding.pack()
                        .map(number -> "The fuse of pack " + number)
                        .orElse("The fuse common to all packs");
    }
}
