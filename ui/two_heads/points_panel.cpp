#include "ui/two_heads/points_panel.h"

#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

// Behind her there is no chin to be seen.
QString lower_point(Angle angle) {
    return angle == Angle::back || angle == Angle::crown ? PointsPanel::tr("nape")
                                                         : PointsPanel::tr("chin");
}

}  // namespace

PointsPanel::PointsPanel(QWidget* parent) : QWidget(parent), notice_(new Notice) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(make_text(
        tr("Put one ring on the top of the hair and the other on the chin, or on the nape where no "
           "face shows, in both photos. Both heads then stand equally large.")));
    QHBoxLayout* row = make_row(4);
    for (std::size_t side = 0; side < views_.size(); ++side) add_side(*row, side);
    column->addLayout(row, 1);
    column->addWidget(notice_);
    auto* buttons = new FlowLayout(space(2));
    QPushButton* keep = make_next_button(tr("Keep these points"));
    QPushButton* anew = make_button(tr("Find the heads for me"));
    QPushButton* leave = make_quiet_button(tr("Leave as it was"));
    connect(keep, &QPushButton::clicked, this, &PointsPanel::kept);
    connect(anew, &QPushButton::clicked, this, &PointsPanel::found_anew);
    connect(leave, &QPushButton::clicked, this, &PointsPanel::left);
    for (QPushButton* button : {keep, anew, leave}) buttons->addWidget(button);
    column->addLayout(buttons);
}

void PointsPanel::add_side(QBoxLayout& row, std::size_t side) {
    QVBoxLayout* column = make_column(1);
    views_[side] = new PointView;
    captions_[side] = make_quiet({});
    captions_[side]->setAlignment(Qt::AlignHCenter);
    column->addWidget(views_[side], 1);
    column->addWidget(captions_[side]);
    row.addLayout(column, 1);
}

void PointsPanel::show_pair(const PairSide& first, const PairSide& second, Angle angle) {
    const std::array sides{&first, &second};
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const PairSide& side = *sides[i];
        views_[i]->show_picture(side.picture, side.mirrored);
        views_[i]->set_names(side.which, lower_point(angle));
        captions_[i]->setText(tr("%1  ·  %2").arg(side.which, side.when));
    }
}

void PointsPanel::show_points(const HeadPoints& first, const HeadPoints& second) {
    notice_->say({});
    views_[0]->show_points(first);
    views_[1]->show_points(second);
}

void PointsPanel::say(const QString& problem) {
    notice_->say(problem);
}

HeadPoints PointsPanel::points(int side) const {
    return views_[static_cast<std::size_t>(side)]->points();
}

}  // namespace quarterturn
