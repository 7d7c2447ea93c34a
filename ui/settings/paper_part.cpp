#include "ui/settings/paper_part.h"

#include <QButtonGroup>
#include <QRadioButton>

#include "indexer/store/library_settings.h"
#include "ui/shell/session.h"
#include "ui/shell/setting_edit.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

PaperPart::PaperPart(Session& session)
    : SettingsPart(tr("Paper"), tr("What sheets are laid out for, unless you choose another.")),
      session_(session),
      papers_(new QButtonGroup(this)) {
    auto* row = new FlowLayout(space(6));
    for (const Paper paper : all_papers) {
        auto* choice = new QRadioButton(shown(paper));
        papers_->addButton(choice, static_cast<int>(paper));
        row->addWidget(choice);
    }
    column()->addLayout(row);
    connect(papers_, &QButtonGroup::idClicked, this,
            [this](int id) { choose(static_cast<Paper>(id)); });
}

void PaperPart::choose(Paper paper) {
    if (paper == usual_paper(session_.library().settings())) return;
    const bool kept = session_.change_records(change_setting(
        to_utf8(tr("changed the paper for sheets")), paper_setting, std::string(word(paper))));
    if (!kept) refresh();
}

void PaperPart::refresh() {
    papers_->button(static_cast<int>(usual_paper(session_.library().settings())))->setChecked(true);
}

}  // namespace quarterturn
