#pragma once

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include "indexer/worker/photo_decoder.h"
#include "tests/indexer/intake/photo_files.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/bringing_in/bringing_in_screen.h"

namespace quarterturn {

inline constexpr int patience_ms = 20000;

class BringingInTest : public testing::Test {
  protected:
    BringingInTest() {
        problem = session.open(example.folder / "library");
        QObject::connect(&session, &Session::records_changed, &screen, &Screen::refresh);
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
    }

    QPushButton* button(const QString& text) {
        for (auto* found : screen.findChildren<QPushButton*>()) {
            if (found->isVisible() && found->text() == text) return found;
        }
        return nullptr;
    }
    bool appears(const QString& text) {
        return QTest::qWaitFor([&] { return button(text) != nullptr; }, patience_ms);
    }
    void press(const QString& text) {
        ASSERT_TRUE(appears(text)) << text.toStdString();
        QTest::mouseClick(button(text), Qt::LeftButton);
        QApplication::processEvents();
    }
    bool says(const QString& words) {
        for (auto* label : screen.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(words)) return true;
        }
        return false;
    }
    bool comes_to_say(const QString& words) {
        return QTest::qWaitFor([&] { return says(words); }, patience_ms);
    }
    void bring_in() {
        screen.look_at({card});
        press(QStringLiteral("Bring them in"));
        ASSERT_TRUE(appears(QStringLiteral("Go round the head")));
    }
    Library& library() { return session.library(); }

    ExampleLibrary example;
    Path card = example.folder / "card";
    std::unique_ptr<Decoder> pictures = make_local_decoder();
    PhotoDecoder decoder{*pictures};
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    QString problem;
    BringingInScreen screen{session};
};

}  // namespace quarterturn
