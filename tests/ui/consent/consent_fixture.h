#pragma once
// The consent screen over the example library, and what a test asks of it.

#include <QPushButton>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/asks_screen.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/consent/consent_screen.h"
#include "ui/widgets/notice.h"

namespace quarterturn {

class ConsentScreenTest : public testing::Test, protected AsksScreen {
  protected:
    ConsentScreenTest() {
        QObject::connect(&open.session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        QObject::connect(&open.session, &Session::asked_for, &screen,
                         [this](const Place& place) { went_to = place; });
        screen.resize(1280, 800);
        screen.arrive({.moment = Moment::consent, .client = open.example.mira});
        screen.refresh();
        show_active(screen);
    }

    QWidget& asked() override { return screen; }
    Library& library() { return open.session.library(); }
    std::vector<ConsentEntry> entries() { return library().consents().of(open.example.mira); }

    // As the form records it.
    ConsentEntry granted(ShownAs as = ShownAs::hair_only) {
        ConsentEntry entry;
        entry.client = open.example.mira;
        entry.said = ConsentSaid::granted;
        entry.said_on = parse_date("2026-11-07").value();
        entry.shown = as;
        entry.recorded_at = at("2026-11-07T08:00");
        return entry;
    }

    OpenSession open;
    ConsentScreen screen{open.session};
    std::optional<Place> went_to;
};

}  // namespace quarterturn
