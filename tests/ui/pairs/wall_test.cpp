// The wall: finding pairs by facts, words and kept filters.

#include <QLayout>
#include <QListWidget>
#include <QSignalSpy>
#include <set>

#include "indexer/looks/pairs.h"
#include "tests/ui/pairs/pairs_fixture.h"
#include "ui/pairs/pair_page.h"
#include "ui/pairs/wall_page.h"
#include "ui/widgets/choice_list.h"

namespace quarterturn {
namespace {

TEST_F(PairsScreenTest, WithoutPairsItSaysHowTheyComeAboutAndLeadsThere) {
    show();
    EXPECT_TRUE(says(QStringLiteral("A pair makes itself")));
    QSignalSpy asked(&open.session, &Session::asked_for);
    click(QStringLiteral("Tag photos going round the head"));
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][0].value<Place>().moment, Moment::round_the_head);
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(PairsScreenTest, EachPairSaysWhoseItIsWhichLookAndWhichAngle) {
    add_pairs();
    show();
    EXPECT_TRUE(says(QStringLiteral("3 pairs, the newest first")));
    EXPECT_EQ(words_of(0), QStringLiteral("Mira Okonjo-Lindqvist, low twisted bun, Back"));
    EXPECT_EQ(words_of(2), QStringLiteral("Ada Fennimore, High bun, Front"));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(PairsScreenTest, APairComesWithItsTagsAndGoesWithThem) {
    add_pairs();
    show();
    Tags tags = library().photos().find(sharp)->tags;
    tags.angle = Angle::front;
    open.session.change_photos([&](Library& records) {
        records.history().apply({"tagged", {{sharp, tags}}, {}});
    });
    tags = library().photos().find(soft)->tags;
    tags.angle = Angle::front;
    open.session.change_photos([&](Library& records) {
        records.history().apply({"tagged", {{soft, tags}}, {}});
    });
    EXPECT_TRUE(says(QStringLiteral("2 pairs")));
    open.session.undo();
    EXPECT_TRUE(says(QStringLiteral("3 pairs")));
}

TEST_F(PairsScreenTest, TickedValuesCombineCountEachOtherAndAreClearedInOneClick) {
    add_pairs();
    show();
    EXPECT_EQ(value(QStringLiteral("back"))->accessibleName(), QStringLiteral("back, 1 pair"));
    EXPECT_EQ(value(QStringLiteral("low bun"))->accessibleName(),
              QStringLiteral("low bun, 2 pairs"));
    tick(QStringLiteral("low bun"));
    EXPECT_TRUE(says(QStringLiteral("2 pairs found")));
    EXPECT_EQ(value(QStringLiteral("front"))->accessibleName(), QStringLiteral("front, 0 pairs"));
    EXPECT_EQ(value(QStringLiteral("high bun"))->accessibleName(),
              QStringLiteral("high bun, 1 pair"))
        << "a fact's own values stay countable";
    tick(QStringLiteral("back"));
    EXPECT_TRUE(says(QStringLiteral("1 pair found")));
    EXPECT_EQ(words_of(0), QStringLiteral("Mira Okonjo-Lindqvist, low twisted bun, Back"));
    click(QStringLiteral("Clear the filters"));
    EXPECT_TRUE(says(QStringLiteral("3 pairs, the newest first")));
    EXPECT_FALSE(value(QStringLiteral("back"))->isChecked());
}

TEST_F(PairsScreenTest, ValuesAreTickedByKeyboardAndKeepIt) {
    add_pairs();
    show();
    value(QStringLiteral("left"))->setFocus();
    press(Qt::Key_Space);
    EXPECT_TRUE(says(QStringLiteral("1 pair found")));
    EXPECT_TRUE(value(QStringLiteral("left"))->hasFocus());
}

TEST_F(PairsScreenTest, ASectionOpensAndTellsWhatIsChosenWhenItIsShut) {
    add_pairs();
    show();
    EXPECT_EQ(value(QStringLiteral("2025")), nullptr);
    QTest::mouseClick(showing<SectionHead>(screen, QStringLiteral("Year")), Qt::LeftButton);
    tick(QStringLiteral("2025"));
    EXPECT_TRUE(says(QStringLiteral("1 pair found")));
    auto* head = showing<SectionHead>(screen, QStringLiteral("Year"));
    QTest::mouseClick(head, Qt::LeftButton);
    EXPECT_EQ(head->accessibleName(), QStringLiteral("Year: 2025"));
}

TEST_F(PairsScreenTest, TypedWordsFindPairsAndEscapeShowsAllAgain) {
    add_pairs();
    show();
    press(Qt::Key_F, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("fenni"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("1 pair found")); }));
    EXPECT_EQ(words_of(0), QStringLiteral("Ada Fennimore, High bun, Front"));
    press(Qt::Key_Escape);
    EXPECT_TRUE(says(QStringLiteral("3 pairs, the newest first")));
    EXPECT_NE(showing<QLineEdit>(screen, QString()), nullptr);
    EXPECT_EQ(showing<QLineEdit>(screen, QStringLiteral("fenni")), nullptr);
}

TEST_F(PairsScreenTest, WhatIsFoundInVainIsSaidWithAWayOut) {
    add_pairs();
    show();
    tick(QStringLiteral("high bun"));
    tick(QStringLiteral("back"));
    EXPECT_TRUE(says(QStringLiteral("No pair has all of this")));
    EXPECT_EQ(problems_with(screen), QStringList());
    click(QStringLiteral("Show all pairs"));
    EXPECT_TRUE(says(QStringLiteral("3 pairs, the newest first")));
}

TEST_F(PairsScreenTest, AFilterIsKeptUnderHerNameChosenAgainAndForgotten) {
    add_pairs();
    show();
    EXPECT_EQ(showing<QPushButton>(screen, QStringLiteral("Keep this filter")), nullptr);
    tick(QStringLiteral("low bun"));
    click(QStringLiteral("Keep this filter"));
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("My buns"));
    press(Qt::Key_Return);
    ASSERT_EQ(library().pair_filters().all().size(), 1U);
    EXPECT_EQ(library().pair_filters().all().front().name, "My buns");
    click(QStringLiteral("Clear the filters"));
    click(QStringLiteral("Kept filters"));
    auto* list = screen.findChild<ChoiceList*>();
    ASSERT_NE(list, nullptr);
    EXPECT_EQ(list->findChild<QListWidget*>()->item(0)->text(), QStringLiteral("My buns"));
    QTest::keyClick(list->findChild<QListWidget*>(), Qt::Key_Return);
    show_active(screen);
    EXPECT_TRUE(says(QStringLiteral("2 pairs found")));
    EXPECT_TRUE(value(QStringLiteral("low bun"))->isChecked());
    click(QStringLiteral("Forget this filter"));
    EXPECT_TRUE(library().pair_filters().all().empty());
    open.session.undo();
    EXPECT_EQ(library().pair_filters().all().size(), 1U);
    open.session.undo();
    EXPECT_TRUE(library().pair_filters().all().empty());
}

TEST_F(PairsScreenTest, OnlyWhatIsInViewIsAskedFor) {
    for (int i = 0; i < 400; ++i) {
        Look look;
        look.client = open.example.mira;
        look.name = "bun " + std::to_string(i);
        look.sittings = {open.example.trial};
        const LookId id = library().looks().add(look);
        const std::string number = std::to_string(i);
        add("B" + number + ".jpg", Stage::before, Angle::back, id, open.example.trial);
        add("A" + number + ".jpg", Stage::after, Angle::back, id, open.example.trial);
    }
    QSignalSpy refused(&open.session.pictures(), &PictureLoader::refused);
    show();
    ASSERT_EQ(wall().model()->rowCount(), 400);
    ASSERT_TRUE(QTest::qWaitFor([&] { return refused.size() >= 12; }));
    QTest::qWait(200);
    EXPECT_LT(refused.size(), 80) << "of 800 photos those on screen, and no more";
    const auto first = refused.size();
    wall().setFocus();
    press(Qt::Key_End);
    EXPECT_TRUE(QTest::qWaitFor([&] { return refused.size() > first; }))
        << "what she scrolls to is asked for";
}

TEST_F(PairsScreenTest, AClientIsNotShownAnythingWithoutConsent) {
    add_pairs();
    show();
    QSignalSpy alone(&screen, &Screen::alone_asked);
    click(QStringLiteral("For a client"));
    EXPECT_TRUE(says(QStringLiteral("None of these pairs may be shown to a client")));
    EXPECT_EQ(alone.size(), 0);
    EXPECT_EQ(problems_with(screen), QStringList());
}

TEST_F(PairsScreenTest, AClientSeesOnlyPairsOfWhomBothPhotosMayBeShownAndNoName) {
    add_pairs();
    allow(open.example.mira, Use::consultation);
    library().credits().set(std::array{unstyled, sharp, unstyled_left}, Credit{});
    show();
    QSignalSpy alone(&screen, &Screen::alone_asked);
    QObject::connect(&screen, &Screen::alone_asked, &screen,
                     [&](bool on) { screen.stand_alone(on); });
    click(QStringLiteral("For a client"));
    ASSERT_EQ(alone.size(), 1) << "the pair from the back; of the left one it is not recorded "
                                  "whose the second photo is";
    EXPECT_TRUE(says(QStringLiteral("1 of 1")));
    EXPECT_TRUE(says(QStringLiteral("1 pair that may be shown in consultation")));
    EXPECT_TRUE(screen.is_for_client());
    EXPECT_NE(showing<QPushButton>(screen, QStringLiteral("End the showing")), nullptr);
    for (const QLabel* label : screen.findChildren<QLabel*>()) {
        EXPECT_FALSE(label->isVisible() && label->text().contains(QStringLiteral("Mira")));
    }
    EXPECT_EQ(problems_with(screen), QStringList());
    withdraw(open.example.mira, Use::consultation);
    open.session.touch();
    EXPECT_FALSE(says(QStringLiteral("1 of 1"))) << "what was allowed no longer is";
    EXPECT_TRUE(says(QStringLiteral("Nothing may be shown here any longer.")));
    EXPECT_EQ(alone.size(), 1) << "the wall with its names is not for her";
    for (const QLabel* label : screen.findChildren<QLabel*>()) {
        EXPECT_FALSE(label->isVisible() && label->text().contains(QStringLiteral("Mira")));
    }
    EXPECT_EQ(problems_with(screen), QStringList());
}

TEST_F(PairsScreenTest, TheUseThatIsAllowedIsAFilterWithItsCount) {
    add_pairs();
    allow(open.example.mira, Use::website);
    library().credits().set(std::array{unstyled, sharp}, Credit{});
    show();
    QTest::mouseClick(showing<SectionHead>(screen, QStringLiteral("Use allowed by consent")),
                      Qt::LeftButton);
    EXPECT_EQ(value(QStringLiteral("website"))->accessibleName(),
              QStringLiteral("website, 1 pair"));
    tick(QStringLiteral("website"));
    EXPECT_TRUE(says(QStringLiteral("1 pair found")));
}

TEST_F(PairsScreenTest, PairsWhosePhotosWentAreNamed) {
    add_pairs();
    show();
    PairId back;
    for (const Pair& pair : library().pairs().all()) {
        if (pair.made.place.angle == Angle::back) back = pair.id;
    }
    choose_frames(library(), back, std::nullopt, soft);
    std::vector<TagChange> gone;
    for (const PhotoId photo : {sharp, soft}) {
        Tags tags = library().photos().find(photo)->tags;
        tags.stage = Stage::during;
        gone.push_back({photo, tags});
    }
    open.session.change_photos([&](Library& records) {
        records.history().apply({"tagged", gone, {}});
    });
    EXPECT_TRUE(says(QStringLiteral("2 pairs")));
    EXPECT_TRUE(says(QStringLiteral("Mira Okonjo-Lindqvist"))) << "whose pair is lost";
    EXPECT_TRUE(says(QStringLiteral("no others stand for them")));
    EXPECT_EQ(problems_with(screen), QStringList());
    open.session.undo();
    EXPECT_FALSE(says(QStringLiteral("no others stand for them")));
}

TEST_F(PairsScreenTest, ThePairThatIsLostIsToldAlsoWhileThereIsNoOther) {
    const LookId bun = open.example.look;
    const SittingId trial = open.example.trial;
    add("QTA_0001.jpg", Stage::before, Angle::back, bun, trial);
    const PhotoId after = add("QTA_0002.jpg", Stage::after, Angle::back, bun, trial);
    show();
    choose_frames(library(), library().pairs().all().front().id, std::nullopt, after);
    Tags tags = library().photos().find(after)->tags;
    tags.stage = Stage::during;
    open.session.change_photos([&](Library& records) {
        records.history().apply({"tagged", {{after, tags}}, {}});
    });
    EXPECT_TRUE(says(QStringLiteral("A pair makes itself")));
    EXPECT_TRUE(says(QStringLiteral("no others stand for them")));
    EXPECT_TRUE(says(QStringLiteral("low twisted bun, Back")));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(PairsScreenTest, MarginsAreThoseOfTheReadingDirection) {
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    PairsScreen mirrored(open.session);
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    const auto margins_of = [](QWidget& any, auto* kind) {
        return any.findChild<std::remove_pointer_t<decltype(kind)>*>()->layout()->contentsMargins();
    };
    for (const auto& [ours, theirs] :
         {std::pair(margins_of(screen, static_cast<PairPage*>(nullptr)),
                    margins_of(mirrored, static_cast<PairPage*>(nullptr))),
          std::pair(margins_of(screen, static_cast<WallPage*>(nullptr)),
                    margins_of(mirrored, static_cast<WallPage*>(nullptr)))}) {
        EXPECT_EQ(ours.left(), theirs.right());
        EXPECT_EQ(ours.right(), theirs.left());
        EXPECT_NE(ours.left(), ours.right());
    }
}

}  // namespace
}  // namespace quarterturn
