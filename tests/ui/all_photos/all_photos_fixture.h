#pragma once
// The screen of all photos over four photos of the example library.

#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/all_photos/all_photos_screen.h"
#include "ui/all_photos/photo_shelves.h"
#include "ui/theme/theme.h"

namespace quarterturn {

class AllPhotosTest : public testing::Test {
  protected:
    AllPhotosTest() {
        QObject::connect(&open.session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        screen.resize(1280, 800);
    }

    Library& library() { return open.session.library(); }

    PhotoId add(const std::string& name, const char* taken, Tags tags = {},
                std::vector<Flaw> flaws = {}) {
        Photo photo = example_photo(name, taken ? std::optional(taken_at(taken)) : std::nullopt);
        photo.tags = std::move(tags);
        photo.flaws = std::move(flaws);
        return library().photos().add(photo);
    }

    // Two of the trial, one of a year before that lies nowhere, and one without a time.
    void add_photos() {
        Tags placed;
        placed.sitting = open.example.trial;
        placed.look = open.example.look;
        placed.stage = Stage::after;
        placed.angle = Angle::left;
        placed.note = "the comb sits low";
        first = add("a.jpg", "2026-11-07T10:12:00", placed, {Flaw::out_of_focus});
        Tags waiting;
        waiting.sitting = open.example.trial;
        second = add("b.jpg", "2026-11-07T10:10:00", waiting);
        third = add("c.jpg", "2025-03-02T10:00:00");
        last = add("d.jpg", nullptr);
    }

    void show() {
        screen.refresh();
        show_active(screen);
    }

    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(screen.windowHandle(), static_cast<Qt::Key>(key), modifiers);
        show_active(screen);
    }

    void type(const QString& words) {
        press(Qt::Key_F, Qt::ControlModifier);
        QTest::keyClicks(QApplication::focusWidget(), words);
        press(Qt::Key_Return);
    }

    template <class Widget>
    Widget* with_text(const QString& part) {
        for (Widget* widget : screen.findChildren<Widget*>()) {
            if (widget->isVisible() && widget->text().contains(part)) return widget;
        }
        return nullptr;
    }

    bool says(const QString& part) { return with_text<QLabel>(part) != nullptr; }
    PhotoShelves& shelves() { return *screen.findChild<PhotoShelves*>(); }
    QLineEdit& field() { return *screen.findChild<QLineEdit*>(); }

    int washed_pixels() {
        const QImage picture = shelves().viewport()->grab().toImage();
        const QRgb wash = wash_colour(shelves().palette()).rgb();
        int count = 0;
        for (int y = 0; y < picture.height(); ++y) {
            for (int x = 0; x < picture.width(); ++x) count += picture.pixel(x, y) == wash ? 1 : 0;
        }
        return count;
    }

    OpenSession open;
    AllPhotosScreen screen{open.session};
    PhotoId first, second, third, last;
};

}  // namespace quarterturn
