#include "indexer/rules/ring.h"

namespace quarterturn {
namespace {

std::optional<Quarter> standing(const CoverageReport& report, Angle angle, Need need) {
    std::array<int, 4> lines{};
    int all = 0;
    for (const CoverageLine& line : report.lines) {
        if (line.wanted.shot.angle != angle || line.wanted.need != need) continue;
        ++lines.at(static_cast<std::size_t>(line.verdict));
        ++all;
    }
    const auto count = [&](Coverage verdict) { return lines[static_cast<std::size_t>(verdict)]; };
    if (all == 0) return std::nullopt;
    if (count(Coverage::missing) > 0) {
        const bool some = count(Coverage::covered) + count(Coverage::weak) > 0;
        return some ? Quarter::partly : Quarter::missing;
    }
    if (count(Coverage::weak) > 0) return Quarter::weak;
    return count(Coverage::waived) > 0 ? Quarter::waived : Quarter::covered;
}

}  // namespace

Ring ring_of(const CoverageReport& report) {
    Ring ring{};
    std::ranges::transform(quarter_angles, ring.begin(), [&](Angle angle) {
        const auto required = standing(report, angle, Need::required);
        if (required) return *required;
        return standing(report, angle, Need::nice_to_have).value_or(Quarter::waived);
    });
    return ring;
}

}  // namespace quarterturn
