#include "ui/settings/settings_screen.h"

#include <SQLiteCpp/Database.h>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include "indexer/store/library_settings.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/settings/library_part.h"
#include "ui/settings/lock_part.h"
#include "ui/shell/new_library_part.h"
#include "ui/widgets/notice.h"

namespace quarterturn {
namespace {

const QString business = QStringLiteral("Your business");

class SettingsScreenTest : public testing::Test {
  protected:
    SettingsScreenTest() {
        QObject::connect(&open.session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
    }
    ~SettingsScreenTest() override {
        screen.hide();
        open.session.use_theme({});
    }

    template <class Widget>
    Widget* named(const QString& name) {
        for (Widget* widget : screen.findChildren<Widget*>()) {
            if (widget->accessibleName() == name) return widget;
        }
        return nullptr;
    }
    template <class Button>
    Button* reading(const QString& text) {
        for (Button* button : screen.findChildren<Button*>()) {
            if (button->text() == text) return button;
        }
        return nullptr;
    }
    bool says(const QString& part) {
        for (const auto* label : screen.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(part)) return true;
        }
        return false;
    }

    void type(const QString& name, const QString& text) {
        auto* field = named<QLineEdit>(name);
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, text);
    }
    void choose_need(const QString& shot, int index) {
        auto* need = named<QComboBox>(shot);
        ASSERT_NE(need, nullptr) << shot.toStdString();
        need->setFocus();
        need->setCurrentIndex(index);
        emit need->activated(index);
    }

    Library& library() { return open.session.library(); }
    std::optional<std::string> set(std::string_view name) { return library().settings().get(name); }
    std::optional<Need> asked(const Shot& shot) {
        for (const ShotLine& line : library().looks().shot_list(open.example.look)) {
            if (line.shot == shot) return line.need;
        }
        return std::nullopt;
    }

    OpenSession open;
    SettingsScreen screen{open.session};
};

TEST_F(SettingsScreenTest, SaysBesideTheLockWhatBecameOfLocking) {
    auto* lock = screen.findChild<LockPart*>();
    screen.resize(1280, 400);
    EXPECT_FALSE(screen.rect().contains(lock->mapTo(&screen, QPoint())));
    screen.arrive({.moment = Moment::settings, .of_lock = QStringLiteral("It is locked now.")});
    EXPECT_TRUE(QTest::qWaitFor([&] { return !lock->visibleRegion().isEmpty(); }));
    EXPECT_EQ(lock->findChild<Notice*>()->said(), QStringLiteral("It is locked now."));
}

TEST_F(SettingsScreenTest, AFieldIsSavedAsSheLeavesItAndCanBeUndone) {
    type(business, QStringLiteral("Thistle Quay"));
    EXPECT_EQ(set(business_name_setting), std::nullopt) << "she is still typing";
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(set(business_name_setting), "Thistle Quay");
    type(QStringLiteral("A line below it"), QStringLiteral("by the water"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(says(QStringLiteral("Thistle Quay · by the water")));

    open.session.undo();
    open.session.undo();
    EXPECT_EQ(set(business_name_setting), std::nullopt);
    EXPECT_EQ(named<QLineEdit>(business)->text(), QString());
    open.session.redo();
    EXPECT_EQ(named<QLineEdit>(business)->text(), QStringLiteral("Thistle Quay"));
}

TEST_F(SettingsScreenTest, AFieldIsSavedWhenTheScreenGoes) {
    type(business, QStringLiteral("Thistle Quay"));
    screen.hide();
    EXPECT_EQ(set(business_name_setting), "Thistle Quay");
}

TEST_F(SettingsScreenTest, WhatSheTypesStaysWhenRecordsChangeMeanwhile) {
    type(business, QStringLiteral("Thist"));
    open.session.touch();
    EXPECT_EQ(named<QLineEdit>(business)->text(), QStringLiteral("Thist"));
}

// Another program holds the library, as SQLite tells after it has waited.
TEST_F(SettingsScreenTest, WhyAFieldIsNotSavedStandsBesideIt) {
    library().database().handle().setBusyTimeout(0);
    Library other = Library::open(library().folder());
    type(business, QStringLiteral("Thistle Quay"));
    {
        const Transaction theirs(other.database());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        EXPECT_TRUE(says(QStringLiteral("Another program is writing to this library")));
        EXPECT_EQ(named<QLineEdit>(business)->text(), QStringLiteral("Thistle Quay"));
    }
    type(business, QStringLiteral("Thistle Quay"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(set(business_name_setting), "Thistle Quay");
    EXPECT_FALSE(says(QStringLiteral("Another program")));
}

TEST_F(SettingsScreenTest, HerShotListHoldsForLooksWithoutOneOfTheirOwn) {
    const Shot during_left{Stage::during, Angle::left};
    const Shot crown{Stage::after, Angle::crown};
    choose_need(QStringLiteral("During, left"), 0);
    choose_need(QStringLiteral("After, crown"), 2);
    EXPECT_EQ(asked(during_left), Need::required);
    EXPECT_EQ(asked(crown), std::nullopt);
    open.session.undo();
    EXPECT_EQ(asked(crown), Need::nice_to_have);
    EXPECT_EQ(named<QComboBox>(QStringLiteral("After, crown"))->currentIndex(), 1);

    auto* back =
        reading<QPushButton>(QStringLiteral("Back to the list that came with the program"));
    EXPECT_TRUE(back->isEnabled());
    QTest::mouseClick(back, Qt::LeftButton);
    EXPECT_EQ(library().looks().own_default_shot_list(), default_shot_list());
    EXPECT_FALSE(back->isEnabled());
    open.session.undo();
    EXPECT_EQ(asked(during_left), Need::required);
}

TEST_F(SettingsScreenTest, TheWheelChangesNoChoice) {
    auto* need = named<QComboBox>(QStringLiteral("After, front"));
    QWheelEvent wheel(QPointF(5, 5), need->mapToGlobal(QPointF(5, 5)), {}, {0, -120}, Qt::NoButton,
                      Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(need, &wheel);
    EXPECT_EQ(need->currentIndex(), 0);
    EXPECT_EQ(asked({Stage::after, Angle::front}), Need::required);
}

TEST_F(SettingsScreenTest, ThePaperIsChosenByArrowKeysAndUndone) {
    auto* a4 = reading<QRadioButton>(QStringLiteral("A4"));
    EXPECT_TRUE(a4->isChecked());
    a4->setFocus();
    QTest::keyClick(a4, Qt::Key_Right);
    EXPECT_EQ(usual_paper(library().settings()), Paper::a3);
    open.session.undo();
    EXPECT_EQ(set(paper_setting), std::nullopt);
    EXPECT_TRUE(a4->isChecked());
}

TEST_F(SettingsScreenTest, MoodAndTextSizeCountAtOnceAndAreRemembered) {
    const QSignalSpy built_anew(&open.session, &Session::theme_changed);
    reading<QRadioButton>(QStringLiteral("Dawn, dim for early mornings"))->click();
    EXPECT_EQ(QApplication::palette().color(QPalette::Window),
              make_palette(Mood::dawn).color(QPalette::Window));
    EXPECT_EQ(built_anew.count(), 0) << "another colour leaves every screen as it stands";
    reading<QRadioButton>(QStringLiteral("Largest text"))->click();
    EXPECT_EQ(remembered_theme(), (Theme{Mood::dawn, TextSize::largest}));
    EXPECT_EQ(built_anew.count(), 1);
}

TEST_F(SettingsScreenTest, ShowsTheFolderAndStartsAnotherLibrary) {
    EXPECT_TRUE(says(QString::fromStdString(library().folder().native())));
    auto* part = screen.findChild<NewLibraryPart*>();
    auto* field = part->findChild<QLineEdit*>();
    auto* start = part->findChild<QPushButton*>();
    const Path other = open.example.folder / "other";
    field->setText(QString::fromStdString((open.example.folder / "library").native()));
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_TRUE(part->findChild<Notice*>()->said().contains(QStringLiteral("library")));
    ASSERT_NE(start, nullptr);
    field->setText(QString::fromStdString(other.native()));
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(library().folder(), other);
}

TEST_F(SettingsScreenTest, HasNoScreenProblems) {
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
