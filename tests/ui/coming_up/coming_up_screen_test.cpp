#include "tests/ui/coming_up/coming_up_fixture.h"

namespace quarterturn {
namespace {

TEST_F(ComingUpScreenTest, ShowsTodaysTrialFirstThenTheWedding) {
    ASSERT_EQ(cards().size(), 2);
    EXPECT_EQ(cards()[0]->accessibleName(), QStringLiteral("Trial, Mira Okonjo-Lindqvist"));
    EXPECT_EQ(cards()[1]->accessibleName(), QStringLiteral("Wedding of Okonjo-Lindqvist and Vale"));
}

TEST_F(ComingUpScreenTest, AClickOnWhatIsLackingGoesThere) {
    QSignalSpy asked(&open.session, &Session::asked_for);
    auto* link = called<SentenceLink>(QStringLiteral("No photos yet."));
    ASSERT_NE(link, nullptr);
    QTest::mouseClick(link, Qt::LeftButton);
    ASSERT_EQ(asked.size(), 1);
    const auto place = asked.front().front().value<Place>();
    EXPECT_EQ(place.moment, Moment::bringing_in);
    EXPECT_EQ(place.look, open.example.look);
    EXPECT_EQ(place.sitting, open.example.trial);
}

TEST_F(ComingUpScreenTest, RemindsOfWhatEndsSoonAndOfWhatHasToBeTakenDown) {
    ConsentEntry entry;
    entry.client = open.example.mira;
    entry.said = ConsentSaid::granted;
    entry.said_on = parse_date("2026-11-01").value();
    entry.until = parse_date("2026-12-01").value();
    entry.recorded_at = at("2026-11-01T10:00");
    record_consent(library(), entry, std::array{Use::website});
    Exported gone;
    gone.photo = PhotoId{99};
    gone.at = at("2026-11-02T10:00");
    library().ledger().add(gone);
    screen.refresh();
    show_active(screen);
    EXPECT_NE(called<SentenceLink>("1 picture went out and may not be shown any longer."), nullptr);
    auto* ends = called<SentenceLink>(
        "Mira Okonjo-Lindqvist allows to be shown on a website until 2026-12-01.");
    ASSERT_NE(ends, nullptr);
    QSignalSpy asked(&open.session, &Session::asked_for);
    QTest::mouseClick(ends, Qt::LeftButton);
    EXPECT_EQ(asked.at(0).front().value<Place>().moment, Moment::portfolio);
    EXPECT_EQ(problems_with(screen), QStringList());
}

// What she waits for first are her weddings.
TEST_F(ComingUpScreenTest, RemindsTheFirstTimeOnceItIsPaintedAndThenOfWhatChanges) {
    const auto reminders = [](const ComingUpScreen& of) {
        const auto links = of.findChildren<SentenceLink*>();
        return std::ranges::count_if(links, [](const SentenceLink* link) {
            return link->text().contains(QStringLiteral("may not be shown any longer"));
        });
    };
    Exported gone;
    gone.photo = PhotoId{99};
    gone.at = at("2026-11-02T10:00");
    library().ledger().add(gone);
    ComingUpScreen first(open.session);
    first.refresh();
    EXPECT_EQ(reminders(first), 0);
    show_active(first);
    EXPECT_TRUE(QTest::qWaitFor([&] { return reminders(first) == 1; }));
    first.refresh();
    EXPECT_EQ(reminders(first), 1) << "nothing has changed";
    gone.photo = PhotoId{98};
    library().ledger().add(gone);
    first.refresh();
    const auto links = first.findChildren<SentenceLink*>();
    EXPECT_TRUE(std::ranges::any_of(links, [](const SentenceLink* link) {
        return link->text().startsWith(QStringLiteral("2 pictures"));
    }));
}

TEST_F(ComingUpScreenTest, TheNextThingToDoIsAButton) {
    QSignalSpy asked(&open.session, &Session::asked_for);
    press(QStringLiteral("Bring photos in"));
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked.front().front().value<Place>().moment, Moment::bringing_in);
}

TEST_F(ComingUpScreenTest, OnTheDayTheBoardIsTheNextThing) {
    const auto kind = [&] {
        return button(QStringLiteral("The wedding morning"))->property("kind").toString();
    };
    EXPECT_NE(kind(), QStringLiteral("next"));
    Wedding wedding = *library().weddings().find(open.example.wedding);
    wedding.date = open.session.today();
    library().weddings().change(wedding);
    screen.refresh();
    show_active(screen);
    EXPECT_EQ(kind(), QStringLiteral("next"));
}

TEST_F(ComingUpScreenTest, ANameLeadsToHerRecordsAndAWeddingToWhatToPack) {
    QSignalSpy asked(&open.session, &Session::asked_for);
    SentenceLink* name = nullptr;
    for (auto* link : screen.findChildren<SentenceLink*>()) {
        if (link->text().contains(QStringLiteral("Mira Okonjo-Lindqvist"))) name = link;
    }
    ASSERT_NE(name, nullptr);
    EXPECT_TRUE(name->accessibleName().startsWith(QStringLiteral("Records of")));
    name->setFocus();
    QTest::keyClick(name, Qt::Key_Return);
    press(QStringLiteral("What to pack"));
    press(QStringLiteral("The wedding morning"));
    ASSERT_EQ(asked.size(), 3);
    const auto record = asked[0].front().value<Place>();
    EXPECT_EQ(record.moment, Moment::client_record);
    EXPECT_EQ(record.client, open.example.mira);
    const auto kit = asked[1].front().value<Place>();
    EXPECT_EQ(kit.moment, Moment::kit_list);
    EXPECT_EQ(kit.wedding, open.example.wedding);
    const auto board = asked[2].front().value<Place>();
    EXPECT_EQ(board.moment, Moment::wedding_morning);
    EXPECT_EQ(board.wedding, open.example.wedding);
}

TEST_F(ComingUpScreenTest, HasNoScreenProblems) {
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    press(QStringLiteral("Change the wedding"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(ComingUpScreenTest, LongNamesInOtherScriptsFit) {
    Wedding wedding = *library().weddings().find(open.example.wedding);
    wedding.name =
        "Αλεξάνδρα Παπαδοπούλου-Κωνσταντινοπούλου and عائشة بنت عبد الرحمن and 長谷川 小百合";
    wedding.venue = std::string(120, 'W');
    library().weddings().change(wedding);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST(ComingUpScreenWithNothing, TeachesWhatBelongsHere) {
    const TemporaryFolder folder;
    NoDecoder decoder;
    Session session(real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); });
    ASSERT_EQ(session.create(folder / "library"), QString());
    ComingUpScreen screen(session);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    EXPECT_EQ(screen.findChildren<OccasionCard*>().size(), 0);
}

}  // namespace
}  // namespace quarterturn
