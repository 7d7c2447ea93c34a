#include "ui/settings/shots_part.h"

#include <QComboBox>
#include <QEvent>
#include <QGridLayout>

#include "ui/settings/settings_edits.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// In the order of the choices; nothing stands for a shot that is not asked for.
constexpr std::array<std::optional<Need>, 3> needs{Need::required, Need::nice_to_have,
                                                   std::nullopt};

QString capitalised(const QString& text) {
    return text.left(1).toUpper() + text.mid(1);
}

int index_of(const ShotList& list, const Shot& shot) {
    const auto line = std::ranges::find(list, shot, &ShotLine::shot);
    const std::optional<Need> need = line == list.end() ? std::nullopt : std::optional(line->need);
    return static_cast<int>(std::ranges::find(needs, need) - needs.begin());
}

}  // namespace

ShotsPart::ShotsPart(Session& session)
    : SettingsPart(tr("Shot list"),
                   tr("What a look needs, unless it has a list of its own. Coverage follows at "
                      "once; what is signed off stays signed off.")),
      session_(session),
      as_it_came_(make_quiet_button(tr("Back to the list that came with the program"))) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space(3));
    grid->setVerticalSpacing(space(2));
    build_grid(*grid);
    column()->addLayout(grid);
    connect(as_it_came_, &QPushButton::clicked, this,
            [this] { session_.change_records(change_usual_shots(default_shot_list())); });
    column()->addWidget(as_it_came_, 0, Qt::AlignLeading);
}

void ShotsPart::build_grid(QGridLayout& grid) {
    int column = 1;
    for (const Stage stage : all_stages) {
        grid.addWidget(make_quiet(capitalised(shown(stage))), 0, column);
        grid.setColumnStretch(column++, 2);
    }
    grid.setColumnStretch(0, 2);
    int row = 1;
    for (const Angle angle : all_angles) {
        grid.addWidget(make_text(capitalised(shown(angle))), row, 0);
        column = 1;
        for (const Stage stage : all_stages) {
            grid.addWidget(make_choice({stage, angle}), row, column++);
        }
        ++row;
    }
}

QComboBox* ShotsPart::make_choice(const Shot& shot) {
    auto* need = new QComboBox;
    for (const auto& choice : needs) need->addItem(choice ? shown(*choice) : tr("not asked for"));
    //: a stage and an angle
    need->setAccessibleName(tr("%1, %2").arg(capitalised(shown(shot.stage)), shown(shot.angle)));
    need->installEventFilter(this);
    choices_.push_back({shot, need});
    connect(need, &QComboBox::activated, this,
            [this, choice = choices_.back()] { choose(choice); });
    return need;
}

void ShotsPart::choose(const Choice& choice) {
    ShotList list = session_.library().looks().own_default_shot_list();
    if (index_of(list, choice.shot) == choice.need->currentIndex()) return;
    if (const auto need = needs[static_cast<std::size_t>(choice.need->currentIndex())]) {
        set_line(list, {choice.shot, *need});
    } else {
        drop_line(list, choice.shot);
    }
    if (!session_.change_records(change_usual_shots(list))) refresh();
}

void ShotsPart::refresh() {
    const ShotList list = session_.library().looks().own_default_shot_list();
    for (const Choice& choice : choices_) {
        choice.need->setCurrentIndex(index_of(list, choice.shot));
    }
    as_it_came_->setEnabled(list != default_shot_list());
}

// A choice would keep the wheel to itself; the page is to get it.
bool ShotsPart::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Wheel) return SettingsPart::eventFilter(watched, event);
    event->ignore();
    return true;
}

}  // namespace quarterturn
