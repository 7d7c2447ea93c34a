#pragma once
// The screen of before and after over a small library: Mira's bun from the back and the left, and
// Ada's high bun from the front.

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/pairs/fact_section.h"
#include "ui/pairs/pairs_screen.h"
#include "ui/pairs/wall_of_pairs.h"

namespace quarterturn {

inline void follow_records(Session& session, Screen& screen) {
    QObject::connect(&session, &Session::records_changed, &screen, [&] { screen.refresh(); });
}

// What of these is on screen and says so.
template <class Widget>
Widget* showing(const QWidget& screen, const QString& part) {
    for (Widget* widget : screen.findChildren<Widget*>()) {
        if (widget->isVisible() && widget->text().contains(part)) return widget;
    }
    return nullptr;
}

class PairsScreenTest : public testing::Test {
  protected:
    PairsScreenTest() {
        follow_records(open.session, screen);
        screen.resize(1280, 800);
    }

    Library& library() { return open.session.library(); }

    PhotoId add(const std::string& name, Stage stage, Angle angle, LookId look, SittingId sitting,
                double focus = 5) {
        Photo photo = example_photo(name, taken_at("2026-11-07T10:30:00"));
        photo.measures = {focus, 0, 0.5, 0, 0};
        photo.tags.sitting = sitting;
        photo.tags.look = look;
        photo.tags.stage = stage;
        photo.tags.angle = angle;
        return library().photos().add(photo);
    }

    void add_pairs() {
        const LookId bun = open.example.look;
        const SittingId trial = open.example.trial;
        unstyled = add("QTA_0001.jpg", Stage::before, Angle::back, bun, trial);
        sharp = add("QTA_0002.jpg", Stage::after, Angle::back, bun, trial, 6);
        soft = add("QTA_0003.jpg", Stage::after, Angle::back, bun, trial, 2);
        unstyled_left = add("QTA_0004.jpg", Stage::before, Angle::left, bun, trial);
        add("QTA_0005.jpg", Stage::after, Angle::left, bun, trial);
        const ClientId ada = library().clients().add(client_called("Ada Fennimore"));
        Sitting shoot;
        shoot.client = ada;
        shoot.starts = at("2025-04-02T10:00");
        shoot.ends = at("2025-04-02T12:00");
        const SittingId spring = library().sittings().add(shoot);
        Look high;
        high.client = ada;
        high.name = "High bun";
        high.sittings = {spring};
        const LookId look = library().looks().add(high);
        add("QTA_0006.jpg", Stage::before, Angle::front, look, spring);
        add("QTA_0007.jpg", Stage::after, Angle::front, look, spring);
    }

    void say(ClientId client, Use use, ConsentSaid what) {
        ConsentEntry entry;
        entry.client = client;
        entry.use = use;
        entry.said = what;
        entry.said_on = date_of(open.session.now());
        entry.shown = ShownAs::with_her_face;
        entry.recorded_at = open.session.now();
        library().consents().add(entry);
    }
    void allow(ClientId client, Use use) { say(client, use, ConsentSaid::granted); }
    void withdraw(ClientId client, Use use) { say(client, use, ConsentSaid::withdrawn); }

    void show() {
        screen.refresh();
        show_active(screen);
    }

    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(screen.windowHandle(), static_cast<Qt::Key>(key), modifiers);
        show_active(screen);
    }

    void click(const QString& text) {
        auto* button = showing<QPushButton>(screen, text);
        if (!button) throw std::runtime_error("no button " + text.toStdString());
        QTest::mouseClick(button, Qt::LeftButton);
        show_active(screen);
    }

    bool says(const QString& part) { return showing<QLabel>(screen, part) != nullptr; }

    FilterValue* value(const QString& text) { return showing<FilterValue>(screen, text); }
    void tick(const QString& text) {
        QTest::mouseClick(value(text), Qt::LeftButton);
        show_active(screen);
    }

    WallOfPairs& wall() { return *screen.findChild<WallOfPairs*>(); }
    QString words_of(int position) {
        return wall().model()->index(position, 0).data(Qt::AccessibleTextRole).toString();
    }
    void open_pair(int position) {
        wall().setFocus();
        wall().setCurrentIndex(wall().model()->index(position, 0));
        press(Qt::Key_Return);
    }

    OpenSession open;
    PairsScreen screen{open.session};
    PhotoId unstyled, unstyled_left, sharp, soft;
};

}  // namespace quarterturn
