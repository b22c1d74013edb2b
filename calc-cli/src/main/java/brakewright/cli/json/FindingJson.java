package brakewright.cli.json;

import brakewright.cli.words.FindingWords;
import brakewright.cli.words.UnitSystem;
import brakewright.operation.RegenOvershoot;
import brakewright.review.Finding;
import brakewright.review.FindingDetail;
import brakewright.spec.Build;
import brakewright.spec.Unit;
import java.util.List;

/** Writes findings: what each is about, its numbers, and what its kind tells beside. */
final class FindingJson {

    private final JsonText json;
    private final FindingWords words;

    FindingJson(JsonText json, Build build) {
        this.json = json;
        this.words = new FindingWords(build, UnitSystem.SI);
    }

    void write(String name, List<Finding> findings) {
        json.startArray(name);
        findings.forEach(this::write);
        json.endArray();
    }

    private void write(Finding finding) {
        json.startObject();
        json.text("id", finding.id());
        json.pack(finding.pack());
        json.text("signal", finding.signal().key());
        json.text("text", words.of(finding));
        json.number("value", finding.value());
        json.number("limit", finding.limit());
        if (finding.unit() != Unit.NONE) {
            json.text("unit", finding.unit().plain());
        }
        json.number("charge", finding.charge());
        json.number("worst_charge", finding.worstCharge());
        json.number("speed_m_per_s", finding.speed());
        json.number("temperature_C", finding.temperatureC());
        json.text("topic", finding.topic().key());
        finding.subject().ifPresent(setting -> json.text("setting", setting.key()));
        finding.constraint().ifPresent(constraint -> json.text("bound_by", constraint.key()));
        finding.detail().ifPresent(this::detail);
        json.endObject();
    }

    private void detail(FindingDetail detail) {
        if (detail instanceof FindingDetail.HeldBack held) {
            json.text("held_back_by", held.key());
        } else if (detail instanceof FindingDetail.Breaking breaking) {
            json.number("must_break_V", breaking.voltage());
        } else if (detail instanceof FindingDetail.Surge surge) {
            surge(surge.overshoot());
        }
    }

    private void surge(RegenOvershoot surge) {
        json.startObject("surge");
        json.text("trip", surge.trip().key());
        json.number("pack_current_A", surge.current());
        json.number("let_through_A", surge.let());
        json.number("may_take_A", surge.permitted());
        json.number("passed_from_m_per_s", surge.speed());
        json.number("charge", surge.charge());
        json.number("cells_C", surge.cellsC());
        json.number("lasts_s", surge.response());
        json.number("trip_delay_s", surge.delay());
        json.number("trip_delay_typical_s", surge.typicalDelay());
        json.text("opens", surge.opens() ? "yes" : surge.delay().isPresent() ? "no" : "unknown");
        json.endObject();
    }
}
