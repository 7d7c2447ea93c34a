#pragma once
// A look with photos and a recipe, its client's second look, and the screen over them.

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>

#include "indexer/worker/photo_decoder.h"
#include "tests/indexer/looks/whole_look.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/recipe/marked_button.h"
#include "ui/recipe/part_card.h"
#include "ui/recipe/recipe_screen.h"
#include "ui/recipe/step_card.h"

namespace quarterturn {

class RecipeScreenTest : public testing::Test {
  protected:
    RecipeScreenTest() {
        QObject::connect(&session, &Session::records_changed, screen.get(),
                         [this] { screen->refresh(); });
        screen->resize(1280, 800);
    }

    static LookId add_second_look(WholeLook& whole) {
        Look evening;
        evening.client = whole.mira;
        evening.wedding = whole.wedding;
        evening.name = "let down in waves";
        evening.sittings = {whole.trial};
        return whole.library.looks().add(evening);
    }

    void show(LookId look) {
        screen->arrive({.moment = Moment::recipe, .look = look});
        screen->refresh();
        show_active(*screen);
    }

    PartCard& part(RecipePlace place) {
        for (PartCard* card : screen->findChildren<PartCard*>()) {
            if (card->place() == place) return *card;
        }
        throw std::runtime_error("no such part");
    }

    QList<StepCard*> steps() {
        QList<StepCard*> cards;
        for (StepCard* card : screen->findChildren<StepCard*>()) {
            if (card->isVisible()) cards << card;
        }
        std::ranges::sort(cards, {}, [](const StepCard* card) { return card->y(); });
        return cards;
    }

    // As a screen reader names it.
    QWidget* named(const QString& name) {
        for (QWidget* widget : screen->findChildren<QWidget*>()) {
            if (widget->isVisible() && widget->accessibleName() == name) return widget;
        }
        return nullptr;
    }

    template <class Button>
    Button* with_text(const QString& part) {
        for (Button* button : screen->findChildren<Button*>()) {
            if (button->isVisible() && button->text().contains(part)) return button;
        }
        return nullptr;
    }

    template <class Button = QPushButton>
    void press(const QString& text) {
        auto* button = with_text<Button>(text);
        ASSERT_NE(button, nullptr) << text.toStdString();
        button->setFocus();
        key(Qt::Key_Return);
    }

    // Where the keyboard is: an open list takes it from the field below.
    QWidget* at_the_keys() {
        if (QWidget* list = QApplication::activePopupWidget()) return list;
        QWidget* focus = screen->focusWidget();
        return focus ? focus : screen.get();
    }
    void key(Qt::Key pressed, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(at_the_keys(), pressed, with);
        show_active(*screen);
    }
    void type(const QString& words) {
        for (const QChar letter : words) QTest::keyClicks(at_the_keys(), QString(letter));
        show_active(*screen);
    }

    void say_step(const QString& words) {
        named(QStringLiteral("The next step"))->setFocus();
        type(words);
        key(Qt::Key_Return);
    }

    Recipe draft(LookId look) {
        const auto kept = session.library().recipes().draft(look);
        return kept ? kept->recipe : Recipe{};
    }
    // Once she has paused.
    Recipe kept(LookId look) {
        EXPECT_TRUE(QTest::qWaitFor(
            [&] { return with_text<QLabel>(QStringLiteral("Not kept yet")) == nullptr; }));
        return draft(look);
    }
    std::vector<RecipeRevision> revisions(LookId look) {
        return session.library().recipes().revisions(look);
    }

    WholeLook whole;
    LookId evening = add_second_look(whole);
    std::unique_ptr<Decoder> pictures = make_local_decoder();
    PhotoDecoder decoder{*pictures};
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T13:30:00"); }};
    const QString problem = session.open(whole.folder / "library");
    std::unique_ptr<RecipeScreen> screen = std::make_unique<RecipeScreen>(session);
};

}  // namespace quarterturn
