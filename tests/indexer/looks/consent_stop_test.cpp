// What a client said stays, so undo stops there and says so.

#include <gtest/gtest.h>

#include "tests/support/consent_said.h"

namespace quarterturn {
namespace {

struct ConsentStop : testing::Test, ExampleLibrary {
    bool stops_at(const std::string& said) {
        const auto turned = library.history().undo();
        return turned && turned->stands && *turned == said;
    }
};

TEST_F(ConsentStop, IsMadeByWhatSheRecordsOfConsent) {
    library.history().record("renamed her", [&] {
        library.clients().change({mira, "Mira Vale", {}});
    });
    record_said(library, mira, ConsentSaid::granted, Use::print);
    const auto entries = library.consents().of(mira);
    ASSERT_EQ(entries.size(), 1U);
    attach_paper(library, library.folder() / "records.sqlite", std::array{entries.front().id},
                 at("2026-11-01T08:00"));
    EXPECT_TRUE(stops_at("attached a paper to what Mira Vale allows"));
    EXPECT_TRUE(stops_at("recorded what Mira Vale allows"));
    EXPECT_EQ(library.consents().of(mira).size(), 1U);
    EXPECT_EQ(library.history().undo(), "renamed her");
}

TEST_F(ConsentStop, OneActOfSeveralEntriesAndAPaperIsOne) {
    ConsentEntry entry;
    entry.client = mira;
    entry.said = ConsentSaid::declined;
    entry.said_on = parse_date("2026-11-01").value();
    entry.recorded_at = at("2026-11-01T08:00");
    const auto recorded = record_said(library, {{entry, {Use::print, Use::website}}},
                                      library.folder() / "records.sqlite");
    ASSERT_EQ(recorded.size(), 2U);
    EXPECT_EQ(library.consents().of(mira)[1].papers.size(), 1U);
    EXPECT_TRUE(stops_at("recorded what Mira Okonjo-Lindqvist allows"));
    EXPECT_FALSE(library.history().can_undo());
}

}  // namespace
}  // namespace quarterturn
