#include "ui/keeping_safe/keeping_safe_screen.h"

#include <QTimer>

#include "ui/keeping_safe/backup_part.h"
#include "ui/keeping_safe/card_part.h"
#include "ui/keeping_safe/check_part.h"
#include "ui/keeping_safe/restore_part.h"
#include "ui/shell/keyboard_place.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

KeepingSafeScreen::KeepingSafeScreen(Session& session)
    : card_(new CardPart(session)),
      parts_{new BackupPart(session), new CheckPart(session), card_, new RestorePart(session)} {
    const ScrollingPage page = make_scrolling_page();
    page.column->addWidget(make_title(tr("Keeping it safe")));
    for (WorkPart* part : parts_) page.column->addWidget(part);
    page.column->addStretch();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(page.scroll);
}

QString KeepingSafeScreen::help() const {
    return tr(
        "Choose a drive once, and back up to it with one press from then on, whenever it is "
        "connected. What you stop goes on where it was. Nothing here deletes a photo from a card "
        "or writes over a library; keep a drive with a backup in another place.");
}

void KeepingSafeScreen::refresh() {
    const KeyboardPlace place(*this);
    for (WorkPart* part : parts_) part->refresh();
    // Once it is laid out, so that it is scrolled to.
    QTimer::singleShot(0, this, [this, place] { place.come_back(*this); });
}

void KeepingSafeScreen::arrive(const Place& place) {
    if (!place.sources.empty()) card_->offer(place.sources);
}

}  // namespace quarterturn
