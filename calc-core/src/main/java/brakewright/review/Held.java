package brakewright.review;

import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.spec.WhichPack;
import java.util.Optional;

/**
 * What a check holds against what.
 *
 * @param topic under which an excess is told
 * @param setting the setting that is to blame; empty where it is none in particular
 * @param against the constraint
 * @param pack which of several packs it is about, or the whole
 * @param cellsC the cell temperature [°C]; NaN where it does not depend on it
 */
record Held(
        Topic topic,
        Optional<LimitId> setting,
        ConstraintId against,
        WhichPack pack,
        double cellsC) {

    static Held setting(Topic topic, LimitId setting, ConstraintId against) {
        return new Held(topic, Optional.of(setting), against, WhichPack.WHOLE, Double.NaN);
    }

    Held ofPack(WhichPack which) {
        return new Held(topic, setting, against, which, cellsC);
    }

    Held withCells(double temperatureC) {
        return new Held(topic, setting, against, pack, temperatureC);
    }

    /** The same comparison, at whatever cell temperature. */
    boolean isAlike(Held other) {
        return topic == other.topic
                && setting.equals(other.setting)
                && against == other.against
                && pack.equals(other.pack);
    }

    Finding.Builder finding() {
        Finding.Builder finding = Finding.of(topic, against.signal()).against(against).ofPack(pack);
        setting.ifPresent(finding::about);
        return finding;
    }
}
