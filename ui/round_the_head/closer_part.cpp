#include "ui/round_the_head/closer_part.h"

#include <QShortcut>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString words_of(const Photo& photo, bool every_pixel) {
    QStringList parts{time_or_name(photo), from_utf8(photo.file.name)};
    for (const Flaw flaw : photo.flaws) parts << shown(flaw);
    if (photo.tags.mirrored) parts << CloserPart::tr("mirrored, turned");
    if (!every_pixel) parts << CloserPart::tr("fetching every pixel…");
    return parts.join(QStringLiteral(", "));
}

}  // namespace

CloserPart::CloserPart(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(build_row());
    QHBoxLayout* panes = make_row(4);
    for (Side& side : sides_) {
        side = build_side();
        panes->addWidget(side.box, 1);
    }
    column->addLayout(panes, 1);
    QPushButton* whose = make_quiet_button(tr("Whose photo it is, and who is seen"));
    connect(whose, &QPushButton::clicked, this,
            [this] { session_.go_to({.moment = Moment::portfolio, .photo = photos_.front().id}); });
    column->addWidget(whose, 0, Qt::AlignLeading);
    for (std::size_t i = 0; i < sides_.size(); ++i) {
        connect(sides_[i].pane, &PhotoPane::looked, sides_[1 - i].pane, &PhotoPane::look);
        connect(sides_[i].pane, &PhotoPane::looked, this, &CloserPart::show_all);
    }
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this] {
        if (isVisible()) show_all();
    });
}

QWidget* CloserPart::build_row() {
    auto* box = new QWidget;
    auto* row = new FlowLayout(space(2), box);
    const auto add = [&](const QString& text, const QKeySequence& key, auto act) {
        QPushButton* button = make_button(text);
        connect(button, &QPushButton::clicked, this, act);
        auto* shortcut = new QShortcut(key, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, button, &QPushButton::click);
        row->addWidget(button);
        return button;
    };
    add(tr("Back to the head (Esc)"), Qt::Key_Escape, [this] { emit closed(); });
    nearness_ = add(tr("Every pixel (E)"), Qt::Key_E, [this] { whole_or_pixels(); });
    two_button_ = add(tr("Side by side (S)"), Qt::Key_S, [this] { show_two(!two_); });
    step_buttons_ = {add(tr("Previous beside it (,)"), Qt::Key_Comma, [this] { step(-1); }),
                     add(tr("Next beside it (.)"), Qt::Key_Period, [this] { step(1); })};
    return box;
}

CloserPart::Side CloserPart::build_side() {
    Side side{new QWidget, new PhotoPane, make_quiet({})};
    auto* column = new QVBoxLayout(side.box);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(side.pane, 1);
    column->addWidget(side.words);
    return side;
}

void CloserPart::show_photos(std::vector<Photo> photos, bool side_by_side) {
    photos_ = std::move(photos);
    second_ = 1;
    for (const Side& side : sides_) side.pane->look({{0.5, 0.5}, side_by_side ? 0.0 : 1.0});
    two_button_->setEnabled(photos_.size() > 1);
    show_two(side_by_side && photos_.size() > 1);
    sides_.front().pane->setFocus();
}

void CloserPart::show_two(bool two) {
    two_ = two;
    sides_[1].box->setVisible(two_);
    for (QPushButton* button : step_buttons_) button->setVisible(two_ && photos_.size() > 2);
    two_button_->setText(two_ ? tr("This one alone (S)") : tr("Side by side (S)"));
    std::vector<PictureWish> wishes{{photos_.front(), 0}};
    if (two_) wishes.push_back({photos_[second_], 0});
    session_.pictures().want(this, wishes);
    show_all();
}

void CloserPart::step(int by) {
    if (!two_ || photos_.size() < 2) return;
    const auto others = static_cast<int>(photos_.size()) - 1;
    second_ = static_cast<std::size_t>((static_cast<int>(second_) - 1 + by + others) % others + 1);
    show_two(true);
}

void CloserPart::whole_or_pixels() {
    const Closeness now = sides_.front().pane->closeness();
    const Closeness then{now.middle, now.scale > 0 ? 0.0 : 1.0};
    for (const Side& side : sides_) side.pane->look(then);
    show_all();
}

void CloserPart::show_side(const Side& side, const Photo& photo) {
    const QImage picture = session_.pictures().at_hand(photo.id, 0);
    const QSize full(photo.file.width, photo.file.height);
    const bool every_pixel =
        std::max(picture.width(), picture.height()) >= std::max(full.width(), full.height());
    side.pane->show_photo(picture, full, photo.tags.mirrored);
    side.words->setText(words_of(photo, every_pixel));
    side.pane->setAccessibleName(words_of(photo, true));
}

void CloserPart::show_all() {
    if (photos_.empty()) return;
    show_side(sides_[0], photos_.front());
    if (two_) show_side(sides_[1], photos_[second_]);
    const bool whole = sides_.front().pane->closeness().scale <= 0;
    nearness_->setText(whole ? tr("Every pixel (E)") : tr("The whole photo (E)"));
}

}  // namespace quarterturn
