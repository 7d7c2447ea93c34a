#include "ui/wedding_morning/step_row.h"

#include <QMouseEvent>
#include <QPainter>

#include "ui/pictures/picture_loader.h"
#include "ui/theme/theme.h"
#include "ui/wedding_morning/board_button.h"
#include "ui/wedding_morning/marked_line.h"
#include "ui/wedding_morning/tick_box.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/veil.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double photo_width = 4.5;  // bodies
constexpr double photo_height = 6;
constexpr double widest_words_of_timer = 11;

}  // namespace

StepRow::StepRow(int number, const BoardStep& step, const BoardType& type, QWidget* parent)
    : QFrame(parent), number_(number), step_(step), type_(type), box_(new TickBox(number, type)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(type.px(0.4), type.px(0.4), type.px(0.6), type.px(0.4));
    row->setSpacing(type.px(0.5));
    row->addWidget(box_, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout;
    column->setSpacing(type.px(0.3));
    row->addLayout(column, 1);
    add_words(*column);
    if (!step.cautions.empty()) {
        column->addWidget(
            new MarkedLine(LineMark::heat, lines_of(step.cautions), type, BoardRole::small));
    }
    add_photos(*column);
    add_timer(*column);
    column->addStretch(1);
    //: %1 is the number of a step, %2 what is done in it
    box_->setAccessibleName(tr("Step %1: %2").arg(number).arg(from_utf8(step.words)));
    connect(box_, &TickBox::clicked, this, &StepRow::ticked);
    setCursor(Qt::PointingHandCursor);
    show_done(step.done, false);
}

void StepRow::add_words(QVBoxLayout& column) {
    next_ = make_text(tr("Next"));
    next_->setFont(type_.font(BoardRole::heading));
    // The first line stands beside the middle of the box.
    const int line = QFontMetrics(type_.font(BoardRole::body)).height();
    column.addSpacing(std::max(0, (type_.target() - line) / 2));
    column.addWidget(next_);
    words_ = make_text(from_utf8(step_.words));
    column.addWidget(words_);
}

void StepRow::add_photos(QVBoxLayout& column) {
    if (step_.photos.empty()) return;
    auto* row = new FlowLayout(type_.px(0.4));
    for (const Photo& photo : step_.photos) {
        const std::size_t index = photos_.size();
        auto* tile = new PhotoTile(photo.id, {type_.px(photo_width), type_.px(photo_height)});
        connect(tile, &PhotoTile::clicked, this, [this, index] { emit photo_asked(index); });
        row->addWidget(tile);
        photos_.push_back(tile);
    }
    column.addLayout(row);
}

void StepRow::add_timer(QVBoxLayout& column) {
    if (!step_.waiting_minutes) return;
    //: minutes, and what waits so long: "Start 15 min: cooling"
    const QString words =
        tr("Start %1 min: %2").arg(*step_.waiting_minutes).arg(from_utf8(step_.waits_for));
    QPushButton* start =
        make_button(on_lines(words, type_.font(BoardRole::small), type_.px(widest_words_of_timer)));
    start->setAccessibleName(words);
    suit_board(*start, type_);
    connect(start, &QPushButton::clicked, this, &StepRow::timer_asked);
    column.addWidget(start, 0, Qt::AlignLeading);
}

int StepRow::photo_edge() const {
    return qRound(type_.px(photo_height) * devicePixelRatioF());
}

void StepRow::show_pictures(const PictureLoader& pictures, bool are_veiled) {
    for (std::size_t i = 0; i < photos_.size(); ++i) {
        PhotoLook look = look_of(step_.photos[i]);
        look.flaws.clear();  // it shows how a hand lies, not how the look is
        const QImage picture = pictures.at_hand(step_.photos[i].id, photo_edge());
        look.picture = are_veiled ? veiled(picture) : picture;
        photos_[i]->show_look(look);
        photos_[i]->setAccessibleName(tr("Photo %1 of step %2: enlarge").arg(i + 1).arg(number_));
    }
}

void StepRow::show_done(bool done, bool next) {
    step_.done = done;
    is_next_ = next;
    box_->setChecked(done);
    next_->setVisible(next);
    words_->setFont(type_.font(next ? BoardRole::heading : BoardRole::body));
    show_kind(*words_, done ? QStringLiteral("quiet") : QString());
    box_->setAccessibleDescription(next ? tr("next") : QString());
    update();
}

void StepRow::paintEvent(QPaintEvent*) {
    if (!is_next_) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(accent_colour(palette()), 3));
    painter.setBrush(card_colour(palette()));
    painter.drawRoundedRect(QRectF(rect()).adjusted(2, 2, -2, -2), 12, 12);
}

void StepRow::mousePressEvent(QMouseEvent* event) {
    event->accept();
}

void StepRow::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !rect().contains(event->pos())) return;
    box_->setFocus(Qt::MouseFocusReason);
    box_->click();
}

}  // namespace quarterturn
