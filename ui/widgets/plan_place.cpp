#include "ui/widgets/plan_place.h"

#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QPainter>

#include "ui/theme/theme.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int around_words = 6;
constexpr int wrapped_in_middle = Qt::AlignCenter | Qt::TextWordWrap;

// The key that puts a photo there.
QString key_of(Angle angle) {
    const QString with_shift = PlanPlace::tr("Shift %1");
    switch (angle) {
        case Angle::front:
            return QStringLiteral("↑");
        case Angle::back:
            return QStringLiteral("↓");
        case Angle::left:
            return QStringLiteral("←");
        case Angle::right:
            return QStringLiteral("→");
        case Angle::left_three_quarter:
            return with_shift.arg(QStringLiteral("←"));
        case Angle::right_three_quarter:
            return with_shift.arg(QStringLiteral("→"));
        case Angle::crown:
            return with_shift.arg(QStringLiteral("↑"));
        case Angle::detail:
            return with_shift.arg(QStringLiteral("↓"));
    }
    return {};
}

}  // namespace

PlanPlace::PlanPlace(Angle angle, QWidget* parent) : QAbstractButton(parent), angle_(angle) {
    setFocusPolicy(Qt::StrongFocus);
    setAcceptDrops(true);
    setAttribute(Qt::WA_Hover);
    setFont(text_font(TextRole::small));
    show_state({});
}

void PlanPlace::show_state(const PlanPlaceState& state) {
    state_ = state;
    state_.photo.caption = standing();
    QStringList words{described(state_.photo)};
    if (state.photos > 1) words << tr("%n photo(s)", nullptr, state.photos);
    if (state.suggested) words << tr("suggested for this photo");
    setAccessibleName(words.join(QStringLiteral(", ")));
    setToolTip(accessibleName());
    update();
}

QString PlanPlace::standing() const {
    const QString angle = shown(angle_);
    if (!state_.verdict) return angle;
    if (*state_.verdict == Coverage::missing && state_.need == Need::nice_to_have) {
        //: an angle that the shot list would like but does not require
        return tr("%1, nice to have").arg(angle);
    }
    //: an angle and how it stands, as in "left, covered"
    return tr("%1, %2").arg(angle, shown(*state_.verdict));
}

// Where there is no room for all of it, how it stands is seen in the ring.
QString PlanPlace::caption() const {
    const QString& whole = state_.photo.caption;
    return QFontMetrics(font()).horizontalAdvance(whole) <= width() ? whole : shown(angle_);
}

void PlanPlace::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (state_.has_photo) {
        PhotoLook photo = state_.photo;
        photo.caption = caption();
        draw_photo(painter, rect(), photo, palette(), font());
    } else {
        draw_empty(painter);
    }
    if (state_.suggested || photo_above_) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(accent_colour(palette()), 4, Qt::DotLine, Qt::RoundCap));
        const int words = state_.has_photo ? caption_height(font()) : 0;
        painter.drawRoundedRect(QRectF(rect()).adjusted(4, 4, -4, -4 - words), 8, 8);
    }
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

int PlanPlace::least_width() const {
    return QFontMetrics(font()).horizontalAdvance(shown(angle_)) + 2 * around_words + 2;
}

// The same where it is empty.
QString PlanPlace::words_of_gap() const {
    const QRect room = rect().adjusted(around_words, around_words, -around_words, -around_words);
    for (const QString& angle : {state_.photo.caption, shown(angle_)}) {
        const QString words = angle + QLatin1Char('\n') + key_of(angle_);
        if (room.contains(fontMetrics().boundingRect(room, wrapped_in_middle, words))) return words;
    }
    return shown(angle_);
}

void PlanPlace::draw_empty(QPainter& painter) const {
    const QRect room = rect().adjusted(around_words, around_words, -around_words, -around_words);
    const QString words = words_of_gap();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font());
    draw_gap(painter, painter.boundingRect(room, wrapped_in_middle, words));
    painter.setPen(ink_colour(palette()));
    painter.drawText(room, wrapped_in_middle, words);
}

// A shot that the list requires is dashed, as gaps are everywhere. The crown lies on the head,
// which is frame enough; only its words need a ground.
void PlanPlace::draw_gap(QPainter& painter, const QRect& words) const {
    if (angle_ == Angle::crown) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(underMouse() ? wash_colour(palette()) : card_colour(palette()));
        painter.drawRoundedRect(words.adjusted(-4, -2, 4, 2), 6, 6);
        return;
    }
    const bool wanted = state_.verdict && state_.need == Need::required;
    painter.setPen(
        QPen(outline_colour(palette()), wanted ? 2.5 : 1.5, wanted ? Qt::DashLine : Qt::SolidLine));
    painter.setBrush(underMouse() ? wash_colour(palette()) : Qt::transparent);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), 8, 8);
}

void PlanPlace::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space) {
        QAbstractButton::keyPressEvent(event);
    } else if (event->key() == Qt::Key_Return) {
        click();
    } else {
        event->ignore();
    }
}

void PlanPlace::dragEnterEvent(QDragEnterEvent* event) {
    if (carried_photos(*event->mimeData()).empty()) return;
    photo_above_ = true;
    update();
    event->acceptProposedAction();
}

void PlanPlace::dragLeaveEvent(QDragLeaveEvent*) {
    photo_above_ = false;
    update();
}

void PlanPlace::dropEvent(QDropEvent* event) {
    photo_above_ = false;
    update();
    event->acceptProposedAction();
    emit dropped(carried_photos(*event->mimeData()));
}

}  // namespace quarterturn
