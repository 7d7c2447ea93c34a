#pragma once
// The consent screen over the example library, and what a test asks of it.

#include <QAbstractButton>
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/consent/consent_screen.h"
#include "ui/widgets/notice.h"

namespace quarterturn {

class ConsentScreenTest : public testing::Test {
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

    Library& library() { return open.session.library(); }
    std::vector<ConsentEntry> entries() { return library().consents().of(open.example.mira); }

    bool says(const QString& words) {
        for (const auto* label : screen.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(words)) return true;
        }
        return false;
    }
    // By its text or its name for a screen reader.
    QAbstractButton* button(const QString& name) {
        for (auto* found : screen.findChildren<QAbstractButton*>()) {
            if (found->isVisible() && (found->accessibleName() == name || found->text() == name)) {
                return found;
            }
        }
        return nullptr;
    }
    void press(const QString& name) {
        QAbstractButton* found = button(name);
        ASSERT_NE(found, nullptr) << name.toStdString();
        found->setFocus();
        QTest::keyClick(found, Qt::Key_Space);
        QCoreApplication::processEvents();  // what has come is shown
    }
    template <class Field>
    Field* field(const QString& name) {
        for (auto* found : screen.findChildren<Field*>()) {
            if (found->isVisible() && found->accessibleName() == name) return found;
        }
        ADD_FAILURE() << "no field " << name.toStdString();
        return nullptr;
    }

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
