#include "indexer/rules/ring.h"

namespace quarterturn {
namespace {

int how_bad(Coverage verdict) {
    switch (verdict) {
        case Coverage::covered:
            return 0;
        case Coverage::waived:
            return 1;
        case Coverage::weak:
            return 2;
        case Coverage::missing:
            return 3;
    }
    return 3;
}

std::optional<Coverage> worst(const CoverageReport& report, Angle angle, Need need) {
    std::optional<Coverage> result;
    for (const CoverageLine& line : report.lines) {
        if (line.wanted.shot.angle != angle || line.wanted.need != need) continue;
        if (!result || how_bad(line.verdict) > how_bad(*result)) result = line.verdict;
    }
    return result;
}

}  // namespace

std::array<Coverage, 4> ring_quarters(const CoverageReport& report) {
    std::array<Coverage, 4> result{};
    std::transform(quarter_angles.begin(), quarter_angles.end(), result.begin(), [&](Angle angle) {
        const auto required = worst(report, angle, Need::required);
        if (required) return *required;
        return worst(report, angle, Need::nice_to_have).value_or(Coverage::waived);
    });
    return result;
}

}  // namespace quarterturn
