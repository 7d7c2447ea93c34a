// The rest of a search comes from a thread; what she no longer looks for never arrives.

#include "ui/all_photos/later_found.h"

#include <QSignalSpy>
#include <QTest>

#include "tests/ui/shell/fixture.h"

namespace quarterturn {
namespace {

struct LaterFoundTest : testing::Test {
    LaterFoundTest() {
        for (int i = 0; i < 30; ++i) {
            const std::string number = std::to_string(i);
            Photo photo = example_photo("QTA_" + number + ".jpg", taken_at("2026-11-07T10:30:00"));
            if (i % 3 == 0) photo.tags.note = "comb";
            open.session.library().photos().add(photo);
        }
        QObject::connect(&later, &LaterFound::found, &later,
                         [this](const auto& photos) { found = photos; });
    }

    static PhotoSearch with(const std::string& words) {
        PhotoSearch search;
        search.words = words;
        return search;
    }

    // Whatever still runs has ended and was heard.
    void let_all_end() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return later.findChildren<QThread*>().isEmpty(); }));
    }

    OpenSession open;
    LaterFound later{open.session};
    std::optional<std::vector<FoundPhoto>> found;
};

TEST_F(LaterFoundTest, FindsWhatTheSearchFinds) {
    later.look_for(with("comb"));
    ASSERT_TRUE(QTest::qWaitFor([this] { return found.has_value(); }));
    const auto all = open.session.library().search().find(with("comb"));
    ASSERT_EQ(all.size(), 10U);
    EXPECT_TRUE(*found == all);
}

TEST_F(LaterFoundTest, OfTwoSearchesOnlyTheLastArrives) {
    QSignalSpy arrived(&later, &LaterFound::found);
    later.look_for({});
    later.look_for(with("comb"));
    let_all_end();
    EXPECT_EQ(arrived.count(), 1);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->size(), 10U);
}

TEST_F(LaterFoundTest, WhatIsForgottenDoesNotArrive) {
    QSignalSpy arrived(&later, &LaterFound::found);
    later.look_for({});
    later.forget();
    let_all_end();
    EXPECT_EQ(arrived.count(), 0);
}

TEST_F(LaterFoundTest, SaysWhyItCannotLook) {
    QSignalSpy failed(&later, &LaterFound::failed);
    const Path library = open.session.library().folder();
    std::filesystem::rename(library, open.example.folder / "away");
    later.look_for({});
    EXPECT_TRUE(QTest::qWaitFor([&] { return !failed.isEmpty(); }));
    EXPECT_TRUE(failed.at(0).at(0).toString().contains(QStringLiteral("connect the drive")));
    std::filesystem::rename(open.example.folder / "away", library);
}

}  // namespace
}  // namespace quarterturn
