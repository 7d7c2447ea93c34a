#pragma once
// The board in the real window over the example library: Mira's recipe has three steps, one of them
// a wait; Ada has a look without a recipe; Tilda has no look.

#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <QTest>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/shell/main_window.h"
#include "ui/wedding_morning/board_photo.h"
#include "ui/wedding_morning/step_row.h"
#include "ui/wedding_morning/tick_box.h"
#include "ui/wedding_morning/timer_pill.h"
#include "ui/wedding_morning/wedding_morning_screen.h"

namespace quarterturn {

class CountingBell final : public Bell {
  public:
    void ring() override { ++rung; }
    bool can_be_heard() override { return heard; }
    bool heard = true;
    int rung = 0;
};

class CountingAwake final : public StayAwake {
  public:
    void ask() override {
        ++asked;
        if (!offered) emit refused();
    }
    void release() override { ++released; }
    int asked = 0;
    int released = 0;
    bool offered = true;
};

inline Recipe board_recipe() {
    Recipe recipe;
    recipe.cautions = "allergic to the gum in strong sprays";
    recipe.prep = {{"foam", "two pumps", "roots"}};
    Step curl{"Curl the lengths away from the face.", 10, {}};
    curl.heat_tool = HeatTool{"tongs", 25, 170};
    curl.setting.cooling_minutes = 15;
    recipe.build = {curl,
                    {"Roll the twist.", 8, {{"hair pin", "bronze", 8, false}}},
                    {"Close it at the nape.", 5, {{"grip", "brown", 6, true}}}};
    recipe.accessory = "leaf comb above the roll, on her left";
    recipe.feedback = "A little softer round the face.";
    return recipe;
}

class BoardTest : public testing::Test {
  protected:
    BoardTest() {
        QSettings().clear();
        Library& library = open.session.library();
        library.recipes().save(open.example.look, board_recipe(), at("2026-11-07T12:00"));
        ada = library.clients().add(client_called("Ada Lindqvist"));
        tilda = library.clients().add(client_called("Tilda Vale"));
        Wedding wedding = *library.weddings().find(open.example.wedding);
        wedding.party.push_back({ada, "bridesmaid"});
        wedding.party.push_back({tilda, "flower girl"});
        library.weddings().change(wedding);
        Look braid;
        braid.client = ada;
        braid.wedding = open.example.wedding;
        braid.name = "side braid";
        ada_look = library.looks().add(braid);
        for (const Angle angle : quarter_angles) {
            if (angle != Angle::right) add_photo(angle);
        }
        make_window();
        go_to(open.example.mira);
        show_active(*window);
    }
    ~BoardTest() override { QSettings().clear(); }

    void add_photo(Angle angle) {
        Photo photo =
            example_photo(std::string(word(angle)) + ".jpg", taken_at("2026-11-07T11:00:00"));
        photo.tags.sitting = open.example.trial;
        photo.tags.look = open.example.look;
        photo.tags.stage = Stage::after;
        photo.tags.angle = angle;
        open.session.library().photos().add(photo);
    }

    // As after a restart of the program.
    void make_window() {
        window.reset();
        const auto saying = [](Session&) -> Screen* { return new SayingScreen; };
        std::vector<ScreenEntry> entries{
            {Moment::coming_up, QStringLiteral("What's coming up"), saying},
            {Moment::round_the_head, QStringLiteral("Going round the head"), saying},
            {Moment::recipe, QStringLiteral("The recipe"), saying},
            {Moment::wedding_morning, QStringLiteral("The wedding morning"),
             [this](Session& session) -> Screen* {
                 return new WeddingMorningScreen(session, {[this] { return now; }, bell, awake});
             }}};
        window = std::make_unique<MainWindow>(open.session, std::move(entries),
                                              [](Session&) { return new QWidget; });
        window->resize(1280, 800);
        window->show();
    }

    void go_to(ClientId client) {
        window->go_to(
            {.moment = Moment::wedding_morning, .wedding = open.example.wedding, .client = client});
        show_active(*window);
    }

    WeddingMorningScreen& board() {
        return *static_cast<WeddingMorningScreen*>(window->screen(Moment::wedding_morning));
    }
    template <class Part>
    QList<Part*> seen() {
        QApplication::processEvents();  // what is new is shown after the event that made it
        QList<Part*> parts;
        for (Part* part : board().findChildren<Part*>()) {
            if (part->isVisible()) parts << part;
        }
        return parts;
    }
    bool says(const QString& words) {
        const auto labels = seen<QLabel>();
        return std::ranges::any_of(
            labels, [&](const QLabel* label) { return label->text().contains(words); });
    }
    QPushButton* button(const QString& words) {
        for (QPushButton* found : seen<QPushButton>()) {
            if (found->text().contains(words)) return found;
        }
        return nullptr;
    }
    BoardPhoto* photo(Angle angle) {
        for (BoardPhoto* found : seen<BoardPhoto>()) {
            if (found->shot().angle == angle) return found;
        }
        return nullptr;
    }
    void press(Qt::Key key, Qt::KeyboardModifiers with = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &board(), key, with);
        QApplication::processEvents();
    }
    void press_space(int step) {
        seen<StepRow>().at(step)->box().setFocus();
        press(Qt::Key_Space);
    }
    std::vector<StepTick> kept_ticks() {
        return open.session.library().boards().ticks(open.example.wedding, open.example.look);
    }
    SayingScreen* other(Moment moment) {
        return static_cast<SayingScreen*>(window->screen(moment));
    }

    OpenSession open;
    ClientId ada;
    ClientId tilda;
    LookId ada_look;
    std::int64_t now = 1'795'241'400;  // 2026-11-21T06:10Z
    std::shared_ptr<CountingBell> bell = std::make_shared<CountingBell>();
    std::shared_ptr<CountingAwake> awake = std::make_shared<CountingAwake>();
    std::unique_ptr<MainWindow> window;
};

}  // namespace quarterturn
