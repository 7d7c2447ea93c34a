#include "ui/sign_off/shot_row.h"

#include "ui/shell/session.h"
#include "ui/sign_off/waiving.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_frame.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/reason_field.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QSize tile_size() {
    return {space(18), space(22)};
}

QString title_of(const ShotLine& wanted) {
    //: a stage and an angle
    const QString shot =
        ShotRow::tr("%1, %2").arg(shown(wanted.shot.stage), shown(wanted.shot.angle));
    const QString title = shot.left(1).toUpper() + shot.mid(1);
    return wanted.need == Need::required ? title : ShotRow::tr("%1 (nice to have)").arg(title);
}

QString sentence(const std::string& words) {
    QString text = from_utf8(words);
    return text.left(1).toUpper() + text.mid(1) + QLatin1Char('.');
}

}  // namespace

ShotRow::ShotRow(Session& session, const LookState& state, const CoverageLine& line,
                 QWidget* parent)
    : QWidget(parent), session_(session), look_(state.look.id), line_(line) {
    for (const Photo& photo : state.photos) {
        if (photo.id == line_.photo) photo_ = photo;
    }
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(4));
    row->addWidget(build_picture(), 0, Qt::AlignTop);
    QVBoxLayout* column = make_column(1);
    add_words(*column);
    add_waiving(*column);
    column->addStretch();
    row->addLayout(column, 1);
}

QWidget* ShotRow::build_picture() {
    if (!photo_) return new EmptyFrame(tile_size());
    tile_ = new PhotoTile(photo_->id, tile_size());
    PhotoLook look = look_of(*photo_);
    look.flaws.clear();  // said in the words beside it
    tile_->show_look(look);
    tile_->setAccessibleName(tr("Photo of: %1").arg(title_of(line_.wanted)));
    connect(tile_, &PhotoTile::clicked, this, &ShotRow::go_there);
    return tile_;
}

void ShotRow::show_picture() {
    if (!tile_) return;
    PhotoLook look = tile_->look();
    look.picture = session_.pictures().at_hand(tile_->photo(), small_long_edge);
    const QString name = tile_->accessibleName();
    tile_->show_look(look);
    tile_->setAccessibleName(name);
}

void ShotRow::go_there() {
    session_.go_to({.moment = Moment::round_the_head,
                    .look = look_,
                    .shot = line_.wanted.shot,
                    .photo = line_.photo});
}

void ShotRow::add_words(QVBoxLayout& column) {
    QLabel* title = make_text(title_of(line_.wanted));
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    column.addWidget(title);
    if (line_.verdict == Coverage::covered) {
        const bool anyway = photo_ && !photo_->tags.accepted_because.empty();
        column.addWidget(
            make_quiet(anyway ? tr("Used anyway: %1").arg(from_utf8(photo_->tags.accepted_because))
                              : tr("Covered.")));
    } else if (line_.verdict == Coverage::waived) {
        column.addWidget(make_quiet(tr("Waived: %1").arg(from_utf8(line_.waived_because))));
    } else {
        auto* link = new SentenceLink(sentence(gap_text(line_)));
        connect(link, &SentenceLink::clicked, this, &ShotRow::go_there);
        column.addWidget(link);
    }
}

void ShotRow::add_waiving(QVBoxLayout& column) {
    const Shot shot = line_.wanted.shot;
    if (line_.verdict == Coverage::waived) {
        QPushButton* back = make_quiet_button(tr("Take the waiver back"));
        connect(back, &QPushButton::clicked, this,
                [this, shot] { session_.change_records(taking_waiver_back(look_, shot)); });
        column.addWidget(back, 0, Qt::AlignLeading);
    }
    if (!open_gap(line_)) return;
    QPushButton* waive = make_quiet_button(tr("Waive it…"));
    waive->setAccessibleName(tr("Waive: %1").arg(title_of(line_.wanted)));
    auto* reason =
        new ReasonField(tr("Why can the look be made again without it?"), tr("Waive it"));
    connect(waive, &QPushButton::clicked, reason, &ReasonField::ask);
    connect(reason, &ReasonField::given, this, [this, shot](const QString& because) {
        session_.change_records(waiving(look_, {shot, to_utf8(because)}));
    });
    column.addWidget(waive, 0, Qt::AlignLeading);
    column.addWidget(reason);
}

}  // namespace quarterturn
