#include "indexer/rules/ring.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

CoverageLine line(Stage stage, Angle angle, Coverage verdict, Need need = Need::required) {
    CoverageLine judged;
    judged.wanted = {{stage, angle}, need};
    judged.verdict = verdict;
    return judged;
}

TEST(Ring, AQuarterStandsAsItsWorstRequiredLine) {
    CoverageReport report;
    report.lines = {line(Stage::before, Angle::left, Coverage::covered),
                    line(Stage::after, Angle::left, Coverage::covered),
                    line(Stage::before, Angle::front, Coverage::weak),
                    line(Stage::after, Angle::front, Coverage::covered),
                    line(Stage::before, Angle::right, Coverage::weak),
                    line(Stage::after, Angle::right, Coverage::missing),
                    line(Stage::before, Angle::back, Coverage::waived),
                    line(Stage::after, Angle::back, Coverage::covered)};
    const Ring expected{Quarter::covered, Quarter::weak, Quarter::partly, Quarter::waived};
    EXPECT_EQ(ring_of(report), expected);
}

TEST(Ring, NiceToHaveCountsOnlyWhereNothingIsRequired) {
    CoverageReport report;
    report.lines = {line(Stage::after, Angle::left, Coverage::covered),
                    line(Stage::during, Angle::left, Coverage::missing, Need::nice_to_have),
                    line(Stage::after, Angle::front, Coverage::missing, Need::nice_to_have)};
    const Ring expected{Quarter::covered, Quarter::missing, Quarter::waived, Quarter::waived};
    EXPECT_EQ(ring_of(report), expected);
}

TEST(Ring, AQuarterIsMissingOnlyWhereNothingOfItIsThere) {
    CoverageReport report;
    report.lines = {line(Stage::before, Angle::left, Coverage::missing),
                    line(Stage::after, Angle::left, Coverage::waived),
                    line(Stage::before, Angle::front, Coverage::missing),
                    line(Stage::after, Angle::front, Coverage::covered)};
    const Ring expected{Quarter::missing, Quarter::partly, Quarter::waived, Quarter::waived};
    EXPECT_EQ(ring_of(report), expected);
}

TEST(Ring, FurtherAnglesAreNoQuarters) {
    CoverageReport report;
    for (const Angle angle : quarter_angles)
        report.lines.push_back(line(Stage::after, angle, Coverage::covered));
    report.lines.push_back(line(Stage::after, Angle::crown, Coverage::missing));
    const auto quarters = ring_of(report);
    EXPECT_EQ(std::count(quarters.begin(), quarters.end(), Quarter::covered), 4);
}

}  // namespace
}  // namespace quarterturn
