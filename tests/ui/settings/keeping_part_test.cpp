#include "ui/settings/keeping_part.h"

#include <QComboBox>
#include <fstream>

#include "indexer/erasure/erase.h"
#include "indexer/store/library_settings.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/asks_screen.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/settings/settings_screen.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// Mira was here last in 2026; Ada in 2018.
class KeepingTest : public testing::Test, protected AsksScreen {
  protected:
    KeepingTest() {
        QObject::connect(&open.session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        QObject::connect(&open.session, &Session::asked_for, &screen,
                         [this](const Place& place) { went_to = place; });
        ada = open.session.library().clients().add(client_called("Ada Vale"));
        Sitting sitting;
        sitting.client = ada;
        sitting.starts = at("2018-05-03T10:00:00");
        sitting.ends = at("2018-05-03T12:00:00");
        open.session.library().sittings().add(sitting);
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
    }

    QWidget& asked() override { return screen; }
    void choose(int years) {
        auto* choice = field<QComboBox>("How long looks are kept");
        choice->setCurrentIndex(choice->findData(years));
        emit choice->activated(choice->currentIndex());
    }
    std::optional<int> kept() { return keep_looks_years(open.session.library().settings()); }
    void look_through() {
        press("Which those are");
        ASSERT_TRUE(QTest::qWaitFor([this] { return open.session.work() == nullptr; }, 20000));
        QCoreApplication::processEvents();  // what has come is shown
    }

    OpenSession open;
    SettingsScreen screen{open.session};
    ClientId ada;
    std::optional<Place> went_to;
};

TEST_F(KeepingTest, WhatAnErasureLeftStandsThereUntilItIsGone) {
    EXPECT_TRUE(says("Nothing was erased."));
    Library& library = open.session.library();
    const Path notes = library.folder() / "notes.txt";
    std::ofstream(notes) << "call Ada Vale";
    erase(library, plan_erasure(library, ada, SharedPhotos::stay),
          parse_date("2026-11-07").value());
    screen.refresh();
    QCoreApplication::processEvents();  // what has come is shown
    EXPECT_TRUE(says("7 November 2026: 0 looks and 0 photos."));
    EXPECT_TRUE(says("notes.txt still says it"));
    EXPECT_FALSE(says("Nothing was erased."));
    std::filesystem::remove(notes);
    screen.refresh();
    QCoreApplication::processEvents();  // what has come is shown
    EXPECT_FALSE(says("notes.txt"));
    EXPECT_TRUE(says("7 November 2026: "));
}

TEST_F(KeepingTest, WhatAnErasureLeftGoesFromThereWhenSheHasLookedAtIt) {
    Library& library = open.session.library();
    std::ofstream(library.folder() / "notes.txt") << "call Ada Vale";
    erase(library, plan_erasure(library, ada, SharedPhotos::stay),
          parse_date("2026-11-07").value());
    screen.refresh();
    QCoreApplication::processEvents();  // what has come is shown
    press("I have looked at all of it");
    QCoreApplication::processEvents();
    EXPECT_FALSE(says("notes.txt"));
    EXPECT_EQ(button("I have looked at all of it"), nullptr);
    EXPECT_TRUE(left_by_erasures(library).empty());
}

TEST_F(KeepingTest, LooksAreKeptUntilSheSaysOtherwise) {
    EXPECT_EQ(kept(), std::nullopt);
    EXPECT_FALSE(button("Which those are")->isEnabled());
    choose(5);
    EXPECT_EQ(kept(), 5);
    open.session.undo();
    EXPECT_EQ(kept(), std::nullopt);
    choose(5);
    choose(0);
    EXPECT_EQ(kept(), std::nullopt);
}

TEST_F(KeepingTest, ProposesWhoWasHereLastLongerAgoAndLeadsToHer) {
    choose(5);
    look_through();
    EXPECT_FALSE(button("Mira Okonjo-Lindqvist"));
    const QString ada_words =
        QStringLiteral("%1: last here on %2, 0 looks, 0 photos")
            .arg(isolated(QStringLiteral("Ada Vale")), shown(parse_date("2018-05-03").value()));
    press(ada_words);
    ASSERT_TRUE(went_to);
    EXPECT_EQ(went_to->moment, Moment::client_record);
    EXPECT_EQ(went_to->client, ada);
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    Library& library = open.session.library();
    erase(library, plan_erasure(library, ada, SharedPhotos::stay), open.session.today());
    screen.refresh();
    EXPECT_EQ(button(ada_words), nullptr);
}

TEST_F(KeepingTest, SaysWhenNobodyWasHereThatLongAgo) {
    choose(20);
    look_through();
    EXPECT_TRUE(says("Nothing is that old."));
}

}  // namespace
}  // namespace quarterturn
