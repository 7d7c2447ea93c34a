#include "ui/settings/window_part.h"

#include <QButtonGroup>
#include <QRadioButton>

#include "ui/settings/mood_swatch.h"
#include "ui/shell/session.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

WindowPart::WindowPart(Session& session)
    : SettingsPart(tr("Look of the window"), tr("For this computer, whichever library is open.")),
      session_(session),
      moods_(new QButtonGroup(this)),
      sizes_(new QButtonGroup(this)) {
    add_moods();
    column()->addSpacing(space(2));
    add_text_sizes();
    refresh();
    for (const QButtonGroup* group : {moods_, sizes_}) {
        connect(group, &QButtonGroup::idClicked, this, &WindowPart::choose);
    }
}

void WindowPart::add_moods() {
    auto* row = new FlowLayout(space(6));
    const auto add = [&](Mood mood, const QString& words) {
        auto* choice = new QRadioButton(words);
        moods_->addButton(choice, static_cast<int>(mood));
        auto* one = new QWidget;
        auto* parts = make_row(3);
        one->setLayout(parts);
        parts->addWidget(new MoodSwatch(mood));
        parts->addWidget(choice);
        row->addWidget(one);
    };
    add(Mood::paper, tr("Paper, light for the day"));
    add(Mood::dawn, tr("Dawn, dim for early mornings"));
    column()->addLayout(row);
}

void WindowPart::add_text_sizes() {
    auto* row = new FlowLayout(space(6));
    const auto add = [&](TextSize size, const QString& words) {
        auto* choice = new QRadioButton(words);
        choice->setFont(text_font(TextRole::body, size));
        sizes_->addButton(choice, static_cast<int>(size));
        row->addWidget(choice);
    };
    add(TextSize::normal, tr("Text as usual"));
    add(TextSize::large, tr("Large text"));
    add(TextSize::largest, tr("Largest text"));
    column()->addLayout(row);
}

void WindowPart::choose() {
    const Theme theme{static_cast<Mood>(moods_->checkedId()),
                      static_cast<TextSize>(sizes_->checkedId())};
    if (theme != remembered_theme()) session_.use_theme(theme);
}

void WindowPart::refresh() {
    const Theme theme = remembered_theme();
    moods_->button(static_cast<int>(theme.mood))->setChecked(true);
    sizes_->button(static_cast<int>(theme.text_size))->setChecked(true);
}

}  // namespace quarterturn
