#include "ui/pairs/progress_page.h"

#include <QButtonGroup>
#include <QKeyEvent>
#include <QLocale>
#include <QScrollArea>
#include <QStyle>

#include "ui/pairs/laid_frame.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString day_of_frame(const ProgressFrame& frame) {
    if (!frame.photo.moment) return ProgressPage::tr("day unknown");
    return isolated(
        QLocale().toString(to_qdate(date_of(*frame.photo.moment)), QStringLiteral("d MMM yyyy")));
}

QString work_of_frame(const ProgressFrame& frame) {
    QStringList words;
    if (frame.sitting) words << shown(*frame.sitting);
    if (frame.photo.tags.stage) words << shown(*frame.photo.tags.stage);
    return words.join(QStringLiteral(", "));
}

}  // namespace

ProgressPage::ProgressPage(Session& session, LaidPairs& laid, QWidget* parent)
    : QWidget(parent),
      session_(session),
      laid_(laid),
      title_(make_heading({})),
      words_(make_quiet({})),
      angles_(new FlowLayout(space(2))),
      large_(new LaidFrame),
      scroll_(new QScrollArea),
      row_(make_row(2)) {
    QPushButton* back = make_button(tr("Back to the pair"));
    connect(back, &QPushButton::clicked, this, &ProgressPage::left);
    QHBoxLayout* top = make_row(4);
    top->addWidget(back);
    top->addWidget(title_, 1);
    auto* row = new QWidget;
    row->setProperty("kind", QStringLiteral("page"));
    row->setLayout(row_);
    scroll_->setWidget(row);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    large_->setMinimumHeight(space(30));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(6), space(3), space(6), space(2));
    column->setSpacing(space(2));
    column->addLayout(top);
    column->addLayout(angles_);
    column->addWidget(words_);
    column->addWidget(large_, 1);
    column->addWidget(scroll_);
    scroll_->installEventFilter(this);
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this] {
        if (isVisible()) show_frames();
    });
    connect(&laid_, &LaidPairs::laid, this, [this] {
        if (isVisible()) show_frames();
    });
}

const std::vector<ProgressFrame>& ProgressPage::frames() const {
    static const std::vector<ProgressFrame> none;
    const auto found = progress_.find(angle_);
    return found == progress_.end() ? none : found->second;
}

void ProgressPage::show_client(ClientId client, std::optional<Angle> angle) {
    progress_ = progress_of(session_.library(), client);
    const auto record = session_.library().clients().find(client);
    //: whose progress
    title_->setText(tr("Progress over time  ·  %1")
                        .arg(record ? isolated(from_utf8(record->name)) : QString()));
    if (angle) angle_ = *angle;
    if (!progress_.contains(angle_) && !progress_.empty()) angle_ = progress_.begin()->first;
    if (angle) current_ = frames().size();  // until the newest is chosen
    show_angles();
    choose_angle(angle_);
}

void ProgressPage::show_angles() {
    empty_layout(angles_);
    delete group_;
    group_ = new QButtonGroup(this);
    for (const auto& [angle, frames] : progress_) {
        const QString count = QLocale().toString(static_cast<int>(frames.size()));
        //: an angle and how many photos there are of it
        QPushButton* button = make_button(tr("%1  %2").arg(capitalised_words(shown(angle)), count));
        button->setAccessibleName(tr("%1, %2").arg(
            shown(angle), tr("%n photo(s)", nullptr, static_cast<int>(frames.size()))));
        button->setCheckable(true);
        button->setChecked(angle == angle_);
        group_->addButton(button, static_cast<int>(angle));
        angles_->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, angle] { choose_angle(angle); });
    }
}

void ProgressPage::choose_angle(Angle angle) {
    const bool same = angle == angle_ && current_ < frames().size();
    angle_ = angle;
    if (!same) current_ = frames().empty() ? 0 : frames().size() - 1;
    build_row();
    want_pictures();
    step_to(current_);
}

void ProgressPage::build_row() {
    empty_layout(row_);
    buttons_.clear();
    row_->addStretch();
    for (std::size_t i = 0; i < frames().size(); ++i) {
        auto* button = new FrameButton(day_of_frame(frames()[i]), work_of_frame(frames()[i]));
        connect(button, &FrameButton::clicked, this, [this, i] { step_to(i); });
        row_->addWidget(button);
        button->show();  // at once: what is not there yet takes no focus
        buttons_.push_back(button);
    }
    row_->addStretch();
    const int bar = scroll_->style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    const int height = buttons_.empty() ? 0 : buttons_.front()->sizeHint().height();
    scroll_->setFixedHeight(height + bar + space(1));
}

void ProgressPage::want_pictures() {
    std::vector<PictureWish> wishes;
    if (current_ < frames().size()) {
        wishes.push_back({frames()[current_].photo, qRound(std::max(large_->height(), space(60)) *
                                                           1.8 * devicePixelRatioF())});
    }
    for (const ProgressFrame& frame : frames()) wishes.push_back({frame.photo, small_long_edge});
    session_.pictures().want(this, wishes);
    std::vector<TwoPhotos> pairs;
    for (std::size_t i = 1; i < frames().size(); ++i) {
        pairs.push_back({frames().front().photo, frames()[i].photo});
    }
    session_.attempt([&] { laid_.want(pairs); });
}

void ProgressPage::step_to(std::size_t frame) {
    current_ = frame;
    want_pictures();
    show_frames();
    if (current_ < buttons_.size()) {
        buttons_[current_]->setFocus(Qt::OtherFocusReason);
        scroll_->ensureWidgetVisible(buttons_[current_]);
    }
}

std::optional<Similarity> ProgressPage::lay_of(std::size_t frame) {
    if (frame == 0) return Similarity{};
    const auto* laid = laid_.at_hand(frames().front().photo.id, frames()[frame].photo.id);
    if (!laid || !laid->pair.refused.empty() || !laid->pair.alignment.sure()) return std::nullopt;
    return laid->pair.alignment.second_onto_first;
}

void ProgressPage::show_frames() {
    // The window on the first that is shown with all of them, so that nothing jumps.
    std::optional<Box> window;
    for (std::size_t i = 1; i < frames().size() && !window; ++i) {
        const auto* laid = laid_.at_hand(frames().front().photo.id, frames()[i].photo.id);
        if (lay_of(i)) window = window_of(laid->pair, 0.8);
    }
    const auto picture_of = [&](std::size_t i, int edge) {
        const Photo& photo = frames()[i].photo;
        FramePicture picture{session_.pictures().at_hand(photo.id, edge), photo.tags.mirrored,
                             window ? lay_of(i) : std::nullopt, window.value_or(Box{})};
        return picture;
    };
    for (std::size_t i = 0; i < buttons_.size(); ++i) {
        buttons_[i]->show_frame(picture_of(i, small_long_edge), i == current_);
    }
    if (current_ >= frames().size()) {
        words_->setText(
            tr("There is no tagged photo of this client yet. Tag some going round the "
               "head; they stand here by date."));
        return;
    }
    const int edge = qRound(std::max(large_->height(), space(60)) * 1.8 * devicePixelRatioF());
    large_->show_frame(picture_of(current_, edge));
    const QString what =
        tr("%1, %2").arg(day_of_frame(frames()[current_]), work_of_frame(frames()[current_]));
    large_->setAccessibleName(what);
    const bool laid = window && lay_of(current_);
    words_->setText(frames().size() == 1 ? tr("The only photo of this angle so far.")
                    : laid               ? tr("%1. The head lies where it lay at first.").arg(what)
                           : tr("%1. Shown whole: whether the heads lie upon each other is not "
                                "sure.")
                                 .arg(what));
}

void ProgressPage::keyPressEvent(QKeyEvent* event) {
    const bool forth = layoutDirection() == Qt::LeftToRight;
    const auto step = [&](bool on) {
        if (on && current_ + 1 < frames().size()) step_to(current_ + 1);
        if (!on && current_ > 0) step_to(current_ - 1);
    };
    switch (event->key()) {
        case Qt::Key_Right:
            return step(forth);
        case Qt::Key_Left:
            return step(!forth);
        case Qt::Key_Home:
            if (!frames().empty()) step_to(0);
            return;
        case Qt::Key_End:
            if (!frames().empty()) step_to(frames().size() - 1);
            return;
        default:
            QWidget::keyPressEvent(event);
    }
}

// Before the row scrolls by them.
bool ProgressPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched != scroll_ || event->type() != QEvent::KeyPress) return false;
    keyPressEvent(static_cast<QKeyEvent*>(event));
    return event->isAccepted();
}

void ProgressPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (isVisible() && !frames().empty()) want_pictures();
}

}  // namespace quarterturn
