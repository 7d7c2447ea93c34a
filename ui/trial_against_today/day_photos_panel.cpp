#include "ui/trial_against_today/day_photos_panel.h"

#include <QComboBox>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QSize thumb_size() {
    return {space(21), space(28)};
}

}  // namespace

DayPhotosPanel::DayPhotosPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      list_(make_column(2)),
      keep_(make_next_button(tr("Place them so"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(make_text(
        tr("Proposed from the running order and the time each photo was taken. Correct what is not "
           "right; what is left out stays unplaced.")));
    auto* rows = new QWidget;
    rows->setLayout(list_);
    list_->setContentsMargins(0, 0, space(3), 0);
    column->addWidget(make_scrolling_side(rows), 1);
    QPushButton* leave = make_quiet_button(tr("Not now"));
    connect(keep_, &QPushButton::clicked, this, &DayPhotosPanel::kept);
    connect(leave, &QPushButton::clicked, this, &DayPhotosPanel::left);
    QHBoxLayout* buttons = make_row(2);
    buttons->addWidget(keep_);
    buttons->addWidget(leave);
    buttons->addStretch();
    column->addLayout(buttons);
    connect(&session_.pictures(), &PictureLoader::arrived, this, &DayPhotosPanel::show_pictures);
}

void DayPhotosPanel::show_proposals(const WeddingAsMade& made,
                                    const std::vector<DayProposal>& proposals) {
    proposals_ = proposals;
    rows_.clear();
    empty_layout(list_);
    std::vector<PictureWish> wishes;
    for (const DayProposal& proposal : proposals_) {
        add_row(made, proposal);
        wishes.push_back({proposal.photo, small_long_edge});
    }
    list_->addStretch();
    session_.pictures().want(this, wishes);
    show_pictures();
}

void DayPhotosPanel::add_row(const WeddingAsMade& made, const DayProposal& proposal) {
    auto* card = new QWidget;
    auto* row = new QHBoxLayout(card);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(4));
    const Row parts{new PhotoTile(proposal.photo.id, thumb_size()), look_choice(made, proposal),
                    angle_choice(proposal)};
    parts.tile->setFocusPolicy(Qt::NoFocus);
    QVBoxLayout* choices = make_column(2);
    choices->addStretch();
    choices->addWidget(make_text(time_or_name(proposal.photo)));
    choices->addWidget(parts.look);
    choices->addWidget(parts.angle);
    choices->addStretch();
    row->addWidget(parts.tile);
    row->addLayout(choices, 1);
    list_->addWidget(card);
    rows_.push_back(parts);
}

QComboBox* DayPhotosPanel::look_choice(const WeddingAsMade& made,
                                       const DayProposal& proposal) const {
    auto* choice = new QComboBox;
    choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice->setAccessibleName(tr("Whose is %1").arg(time_or_name(proposal.photo)));
    choice->addItem(tr("Leave it out"), qlonglong{0});
    for (const ClientAsMade& client : made.clients) {
        for (const LookAsMade& look : client.looks) {
            choice->addItem(tr("%1: %2").arg(isolated(from_utf8(client.client.name)),
                                             isolated(from_utf8(look.look.name))),
                            qlonglong{look.look.id.value});
        }
    }
    choice->setCurrentIndex(proposal.look ? choice->findData(qlonglong{proposal.look->value}) : 0);
    return choice;
}

QComboBox* DayPhotosPanel::angle_choice(const DayProposal& proposal) const {
    auto* choice = new QComboBox;
    choice->setAccessibleName(tr("The angle of %1").arg(time_or_name(proposal.photo)));
    for (const Angle angle : all_angles) choice->addItem(capitalised_words(shown(angle)));
    const Angle angle = proposal.angle.value_or(Angle::front);
    choice->setCurrentIndex(
        static_cast<int>(std::ranges::find(all_angles, angle) - all_angles.begin()));
    return choice;
}

std::vector<DayProposal> DayPhotosPanel::confirmed() const {
    std::vector<DayProposal> confirmed = proposals_;
    for (std::size_t i = 0; i < confirmed.size(); ++i) {
        const LookId look{rows_[i].look->currentData().toLongLong()};
        confirmed[i].look = look ? std::optional(look) : std::nullopt;
        confirmed[i].angle = all_angles[static_cast<std::size_t>(rows_[i].angle->currentIndex())];
    }
    return confirmed;
}

void DayPhotosPanel::show_pictures() {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        PhotoLook look = look_of(proposals_[i].photo);
        look.picture = session_.pictures().at_hand(proposals_[i].photo.id, small_long_edge);
        rows_[i].tile->show_look(look);
        rows_[i].tile->setAccessibleName(time_or_name(proposals_[i].photo));
    }
}

}  // namespace quarterturn
