// What the screen says of the two photos.

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/two_heads/mode_row.h"
#include "ui/two_heads/points_panel.h"
#include "ui/trial_against_today/trial_screen.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::string joined(const std::vector<std::string>& sentences) {
    std::string text;
    for (const std::string& sentence : sentences) text += (text.empty() ? "" : " ") + sentence;
    return text;
}

void add_line(QString& text, const QString& line) {
    if (!text.isEmpty() && !line.isEmpty()) text += QChar(u'\n');
    text += line;
}

QString moment_of(const Photo& photo) {
    if (!photo.moment) return TrialScreen::tr("time unknown");
    //: a day and a time
    return TrialScreen::tr("%1, %2").arg(shown(date_of(*photo.moment)), clock_shown(*photo.moment));
}

}  // namespace

// Where there is no photo to show.
QString TrialScreen::what_to_do(bool made) const {
    if (!look()) {
        return tr(
            "No look is planned for this wedding yet. Plan one in What's coming up; then its "
            "photos stand here.");
    }
    if (!made) {
        return tr(
            "The trial has no photo of this angle. Say which one it is in Going round the "
            "head, or choose another angle.");
    }
    if (!place_button_->isHidden()) {
        return tr(
            "No photo of the day stands here yet. Photos of the day wait for their place: "
            "place them with the button beside.");
    }
    return tr(
        "No photo of the day from this angle yet. Take one, then bring in today's photos "
        "with the button beside.");
}

PairSide TrialScreen::side_of(const std::optional<Photo>& photo, bool made) const {
    PairSide side;
    const bool today = as_made_->wedding.date == session_.today();
    side.which = !made ? tr("At the trial") : today ? tr("Today") : tr("On the day");
    if (!photo) {
        side.when = tr("no photo of this angle");
        side.missing = what_to_do(made);
        return side;
    }
    side.when = moment_of(*photo);
    side.mirrored = photo->tags.mirrored;
    const int edge = qRound(std::max(view_->height(), space(100)) * 1.8 * devicePixelRatioF());
    side.picture = session_.pictures().at_hand(photo->id, edge);
    return side;
}

void TrialScreen::show_sides() {
    if (!as_made_) return;
    const AgreedPair none;
    const AgreedPair& two = pair() ? *pair() : none;
    const PairSide agreed = side_of(two.agreed, false);
    const PairSide made = side_of(two.made, true);
    view_->show_pair(agreed, made, laid_);
    points_->show_pair(agreed, made, two.angle);
}

void TrialScreen::show_words() {
    const bool both = pair() && pair()->both();
    const bool shown = laid_ && laid_->refused.empty();
    modes_->setEnabled(shown);
    points_button_->setEnabled(shown);
    QString waiting;
    if (both && !laid_) {
        waiting = tr("Laying both heads upon each other…");
    } else if (both && !shown) {
        waiting = from_utf8(laid_->refused);
    } else if (shown) {
        waiting = from_utf8(joined(hint_words(*laid_)));
    }
    if (look() && both) add_line(waiting, from_utf8(joined(look()->hints)));
    waiting_->setText(waiting);
    waiting_->setVisible(!waiting.isEmpty());
}

}  // namespace quarterturn
