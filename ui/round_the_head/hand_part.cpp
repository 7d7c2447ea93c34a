#include "ui/round_the_head/hand_part.h"

#include "indexer/rules/disagreement.h"
#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/reason_field.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double tallest_picture = 1.1;  // of its width

QString suggestion_question(const AngleSuggestion& suggestion) {
    //: a suggested angle and where it comes from: "Is it the left? So says its file name."
    return HandPart::tr("Yes, it is the %1 (Y)").arg(shown(suggestion.angle));
}

}  // namespace

HandPart::HandPart(Session& session, HeadRound& round, QWidget* parent)
    : QWidget(parent),
      session_(session),
      round_(round),
      content_(new QWidget),
      nothing_(make_quiet(tr("No photo is chosen. Choose a photo that lies round the head to look "
                             "at it again."))),
      tile_spot_(new QWidget),
      name_(make_quiet({})),
      goes_to_(make_text({})) {
    auto* column = new QVBoxLayout(content_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(tile_spot_);
    column->addWidget(name_);
    column->addWidget(goes_to_);
    build_questions(*column);
    build_actions(*column);
    column->addStretch();
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(nothing_);
    all->addWidget(content_);
    all->addStretch();
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this](PhotoId photo) {
        if (tile_ && tile_->photo() == photo) show_picture();
    });
}

void HandPart::build_questions(QVBoxLayout& column) {
    suggestion_ = make_next_button({});
    connect(suggestion_, &QPushButton::clicked, this, [this] { round_.take_suggestion(); });
    disagreement_ = new Notice;
    accepted_ = make_quiet({});
    use_anyway_ = make_button(tr("Use it anyway… (W)"));
    connect(use_anyway_, &QPushButton::clicked, this, &HandPart::ask_why);
    not_anyway_ = make_quiet_button(tr("Do not use it after all"));
    connect(not_anyway_, &QPushButton::clicked, this, [this] { round_.use_anyway({}); });
    reason_ = new ReasonField(tr("Why is it good enough?"), tr("Use it"));
    connect(reason_, &ReasonField::given, this,
            [this](const QString& reason) { round_.use_anyway(reason); });
    connect(reason_, &ReasonField::closed, this, [this] { setFocus(); });
    column.addWidget(suggestion_);
    column.addWidget(disagreement_);
    column.addWidget(accepted_);
    column.addWidget(use_anyway_);
    column.addWidget(not_anyway_);
    column.addWidget(reason_);
}

void HandPart::build_actions(QVBoxLayout& column) {
    const auto add = [&](const QString& text, auto act) {
        QPushButton* button = make_quiet_button(text);
        connect(button, &QPushButton::clicked, this, act);
        column.addWidget(button, 0, Qt::AlignLeading);
        return button;
    };
    mirrored_ = add(tr("Taken in a mirror (M)"), [this] { round_.turn_round(); });
    add(tr("Every pixel (E)"), [this] { emit every_pixel_asked(); });
    add(tr("Side by side (S)"), [this] { emit side_by_side_asked(); });
    add(tr("Put it into the bin (Delete)"), [this] { round_.put_into_bin(); });
    off_ = add(tr("Take it off (Backspace)"), [this] { round_.take_off(); });
}

void HandPart::ask_why() {
    if (use_anyway_->isVisible()) reason_->ask();
}

void HandPart::show_round() {
    const Photo* photo = round_.in_hand();
    content_->setVisible(photo);
    nothing_->setVisible(!photo);
    if (!photo) return;
    show_tile(*photo);
    show_words(*photo);
    show_questions(*photo);
}

int HandPart::picture_edge() const {
    return qRound(width() * tallest_picture * devicePixelRatioF());
}

void HandPart::fit_tile() {
    const Photo* photo = round_.in_hand();
    if (!tile_ || !photo) return;
    const QSize picture(photo->file.width, photo->file.height);
    const QSize room(width(), qRound(width() * tallest_picture));
    const QSize size = picture.isEmpty() ? room : picture.scaled(room, Qt::KeepAspectRatio);
    tile_spot_->setFixedHeight(size.height());
    tile_->setGeometry(QRect(QPoint((width() - size.width()) / 2, 0), size));
}

void HandPart::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit_tile();
    if (tile_ && round_.in_hand()) show_picture();
}

void HandPart::show_tile(const Photo& photo) {
    if (!tile_ || tile_->photo() != photo.id) {
        if (tile_) tile_->deleteLater();
        tile_ = new PhotoTile(photo.id, {}, tile_spot_);
        connect(tile_, &PhotoTile::clicked, this, &HandPart::every_pixel_asked);
        tile_->show();
        fit_tile();
        reason_->setVisible(false);
    }
    PhotoLook look = look_of(photo);
    look.others_in_burst = static_cast<int>(round_.frames_in_hand().size()) - 1;
    look.picture = tile_->look().picture;
    if (const auto suggested = round_.suggestion()) {
        look.asked = tr("%1?").arg(shown(suggested->angle));
    }
    tile_->show_look(look);
    tile_->setAccessibleName(tr("The photo in hand: %1").arg(tile_->accessibleName()));
    show_picture();
    session_.pictures().want(this, {{photo, picture_edge()}});
}

void HandPart::show_picture() {
    PhotoLook look = tile_->look();
    look.picture = session_.pictures().at_hand(tile_->photo(), picture_edge());
    const QString name = tile_->accessibleName();
    tile_->show_look(look);
    tile_->setAccessibleName(name);
}

QString HandPart::goes_to(const Photo& photo) const {
    const QString look = from_utf8(round_.round().state.look.name);
    if (round_.waits(photo.id)) {
        if (round_.stage() == Stage::before) return tr("It goes to: before, for every look");
        //: a stage and a look
        return tr("It goes to: %1, %2").arg(shown(round_.stage()), look);
    }
    //: a stage and an angle
    return tr("It lies at: %1, %2").arg(shown(*photo.tags.stage), shown(*photo.tags.angle));
}

void HandPart::show_words(const Photo& photo) {
    const QString name = from_utf8(photo.file.name);
    //: a time and a file name
    name_->setText(photo.moment ? tr("%1, %2").arg(clock_shown(*photo.moment), name) : name);
    goes_to_->setText(goes_to(photo));
    mirrored_->setText(photo.tags.mirrored ? tr("Not in a mirror (M)")
                                           : tr("Taken in a mirror (M)"));
    off_->setVisible(!round_.waits(photo.id));
}

void HandPart::show_questions(const Photo& photo) {
    const auto suggested = round_.suggestion();
    suggestion_->setVisible(suggested.has_value());
    if (suggested) {
        suggestion_->setText(suggestion_question(*suggested));
        suggestion_->setToolTip(tr("Suggested by: %1").arg(from_utf8(suggested->source)));
    }
    const auto question = disagreement(photo);
    disagreement_->say(question ? from_utf8(*question) : QString());
    const bool flawed = !photo.flaws.empty();
    const bool accepted = !photo.tags.accepted_because.empty();
    use_anyway_->setVisible(flawed && !accepted);
    not_anyway_->setVisible(accepted);
    accepted_->setVisible(accepted);
    accepted_->setText(tr("Used anyway: %1").arg(from_utf8(photo.tags.accepted_because)));
}

}  // namespace quarterturn
