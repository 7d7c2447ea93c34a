#pragma once
// The screen over the example library, whose trial has 24 photos a minute apart.

#include <QApplication>
#include <QTest>

#include "indexer/intake/tagging.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/round_the_head/round_the_head_screen.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {

class RoundTest : public testing::Test {
  protected:
    RoundTest() {
        QObject::connect(&open.session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        screen.resize(1280, 800);
    }

    Library& library() { return open.session.library(); }

    PhotoId add(Photo photo) {
        photo.tags.sitting = open.example.trial;
        return library().photos().add(photo);
    }

    void add_photos(int count) {
        for (int i = 0; i < count; ++i) {
            Photo photo = example_photo("P" + std::to_string(1000 + i) + ".jpg",
                                        taken_at("2026-11-07T10:05:00"));
            photo.file.taken->local += std::chrono::minutes(i);
            ids.push_back(add(photo));
        }
    }

    void show() {
        screen.arrive({.moment = Moment::round_the_head, .look = open.example.look});
        screen.refresh();
        show_active(screen);
        screen.findChild<PhotoTile*>() ? screen.findChild<PhotoTile*>()->setFocus()
                                       : screen.setFocus();
    }

    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(screen.windowHandle(), static_cast<Qt::Key>(key), modifiers);
        show_active(screen);
    }

    Tags tags(PhotoId photo) { return library().photos().find(photo)->tags; }

    template <class Widget>
    Widget* with_text(const QString& part) {
        for (Widget* widget : screen.findChildren<Widget*>()) {
            if (widget->isVisible() && widget->text().contains(part)) return widget;
        }
        return nullptr;
    }

    std::vector<PhotoId> waiting() {
        std::vector<PhotoId> waiting;
        for (const auto& shot : round_the_head(library(), open.example.look).waiting) {
            waiting.push_back(shot.photo.id);
        }
        return waiting;
    }

    OpenSession open;
    RoundTheHeadScreen screen{open.session};
    std::vector<PhotoId> ids;
};

}  // namespace quarterturn
