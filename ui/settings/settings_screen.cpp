#include "ui/settings/settings_screen.h"

#include <QScrollArea>
#include <QTimer>

#include "ui/settings/business_part.h"
#include "ui/settings/erased_part.h"
#include "ui/settings/help_part.h"
#include "ui/settings/keeping_part.h"
#include "ui/settings/library_part.h"
#include "ui/settings/lock_part.h"
#include "ui/settings/paper_part.h"
#include "ui/settings/shots_part.h"
#include "ui/settings/window_part.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

SettingsScreen::SettingsScreen(Session& session)
    : lock_(new LockPart(session)), parts_{new BusinessPart(session), new ShotsPart(session),
                                           new PaperPart(session),    new KeepingPart(session),
                                           new ErasedPart(session),   new WindowPart(session),
                                           new LibraryPart(session),  lock_,
                                           new HelpPart(session)} {
    const ScrollingPage page = make_scrolling_page();
    page.column->addWidget(make_title(tr("Settings")));
    for (SettingsPart* part : parts_) page.column->addWidget(part);
    page.column->addStretch();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(page.scroll);
    scroll_ = page.scroll;
}

QString SettingsScreen::help() const {
    return tr(
        "Every choice counts at once, and a field as soon as you leave it. What belongs to the "
        "library can be undone; how the window looks is changed by choosing again.");
}

void SettingsScreen::refresh() {
    for (SettingsPart* part : parts_) part->refresh();
}

void SettingsScreen::arrive(const Place& place) {
    if (place.of_lock.isEmpty()) return;
    lock_->say_done(place.of_lock);
    // Once it is laid out, so that it is scrolled to.
    QTimer::singleShot(0, this, [this] { scroll_->ensureWidgetVisible(lock_); });
}

void SettingsScreen::hideEvent(QHideEvent* event) {
    for (SettingsPart* part : parts_) part->leave();
    Screen::hideEvent(event);
}

}  // namespace quarterturn
