package brakewright.review;

import brakewright.operation.RegenOvershoot;

/**
 * What a finding of one kind tells beside its value and its limit, so that whoever words it works
 * nothing out again.
 */
public sealed interface FindingDetail
        permits FindingDetail.HeldBack, FindingDetail.Breaking, FindingDetail.Surge {

    /** What holds the electric brake back. */
    enum HeldBack implements FindingDetail {
        /** The pack regen current that is set. */
        PACK_LIMIT("pack-regen-current"),
        /** The high-voltage taper, which leaves less of it. */
        HIGH_VOLTAGE_TAPER("high-voltage-taper");

        private final String key;

        HeldBack(String key) {
            this.key = key;
        }

        /**
         * Returns the name that worksheets use.
         *
         * @return lower case with hyphens
         */
        public String key() {
            return key;
        }
    }

    /**
     * What a fuse has to break beside a current.
     *
     * @param voltage of full packs [V]
     */
    record Breaking(double voltage) implements FindingDetail {}

    /**
     * What a hard grab sends into the packs before the regen limiter acts.
     *
     * @param overshoot how much, for how long and where
     */
    record Surge(RegenOvershoot overshoot) implements FindingDetail {}
}
