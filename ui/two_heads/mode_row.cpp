#include "ui/two_heads/mode_row.h"

#include <QButtonGroup>
#include <QDoubleSpinBox>

#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

constexpr double milliseconds = 1000;

QString name_of(PairMode mode) {
    switch (mode) {
        case PairMode::side_by_side:
            return ModeRow::tr("Side by side");
        case PairMode::divide:
            return ModeRow::tr("Sliding divide");
        case PairMode::fade:
            return ModeRow::tr("Cross-fade");
        case PairMode::blink:
            return ModeRow::tr("Blink");
    }
    return {};
}

}  // namespace

ModeRow::ModeRow(PairView& view, const std::vector<PairMode>& modes, QWidget* parent)
    : QWidget(parent),
      view_(view),
      blinking_(new QWidget),
      seconds_(new QDoubleSpinBox),
      stop_(make_button({})) {
    auto* row = new FlowLayout(space(2), this);
    auto* group = new QButtonGroup(this);
    for (const PairMode mode : modes) add_mode(*row, mode);
    for (const auto& [mode, button] : modes_) group->addButton(button);
    add_blinking(*row);
    connect(&view_, &PairView::blinking_changed, this, &ModeRow::show_blinking);
    choose(modes.front());
}

void ModeRow::add_mode(QLayout& row, PairMode mode) {
    QPushButton* button = make_button(name_of(mode));
    button->setCheckable(true);
    connect(button, &QPushButton::clicked, this, [this, mode] { choose(mode); });
    row.addWidget(button);
    modes_[mode] = button;
}

void ModeRow::add_blinking(QLayout& row) {
    seconds_->setRange(PairView::least_milliseconds / milliseconds,
                       PairView::most_milliseconds / milliseconds);
    seconds_->setSingleStep(0.1);
    seconds_->setDecimals(1);
    seconds_->setValue(PairView::usual_milliseconds / milliseconds);
    seconds_->setSuffix(tr(" s each"));
    seconds_->setAccessibleName(tr("How long each photo stands, in seconds"));
    seconds_->setMinimumHeight(stop_->sizeHint().height());
    connect(seconds_, &QDoubleSpinBox::valueChanged, this,
            [this](double seconds) { view_.stand_for(qRound(seconds * milliseconds)); });
    connect(stop_, &QPushButton::clicked, this, [this] { view_.blink(!view_.blinks()); });
    auto* parts = new QHBoxLayout(blinking_);
    parts->setContentsMargins(space(2), 0, 0, 0);
    parts->setSpacing(space(2));
    parts->addWidget(seconds_);
    parts->addWidget(stop_);
    row.addWidget(blinking_);
}

void ModeRow::choose(PairMode mode) {
    view_.show_mode(mode);
    modes_.at(mode)->setChecked(true);
    blinking_->setVisible(mode == PairMode::blink);
    show_blinking(view_.blinks());
}

void ModeRow::show_blinking(bool blinks) {
    stop_->setText(blinks ? tr("Stop") : tr("Go on"));
    stop_->setAccessibleName(blinks ? tr("Stop blinking") : tr("Go on blinking"));
}

}  // namespace quarterturn
