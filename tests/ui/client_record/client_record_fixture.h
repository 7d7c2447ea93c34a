#pragma once

#include <QTest>

#include "tests/indexer/looks/whole_look.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/asks_screen.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/client_record/client_record_screen.h"
#include "ui/widgets/notice.h"

namespace quarterturn {

class ClientRecordScreenTest : public testing::Test, protected AsksScreen {
  protected:
    ClientRecordScreenTest() {
        QObject::connect(&session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        QObject::connect(&session, &Session::asked_for, &screen, [this](const Place& place) {
            went_to = place;
            if (place.moment != Moment::client_record) return;
            screen.arrive(place);
            screen.refresh();
        });
        screen.resize(1280, 800);
        screen.arrive({.moment = Moment::client_record, .client = whole.mira});
        show();
    }

    QWidget& asked() override { return screen; }

    void show() {
        screen.refresh();
        show_active(screen);
    }

    void wait_for_work() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return session.work() == nullptr; }, 20000));
        QCoreApplication::processEvents();  // what has come is shown
    }

    bool wait_for_saved() {
        return QTest::qWaitFor(
            [this] { return screen.findChild<Notice*>()->said().startsWith("Saved:"); }, 20000);
    }

    WholeLook whole;
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T13:30:00"); }};
    const QString problem = session.open(whole.folder / "library");
    ClientRecordScreen screen{session};
    std::optional<Place> went_to;
};

}  // namespace quarterturn
