#include "ui/settings/help_part.h"

#include <QApplication>

#include "indexer/help_report/help_report.h"
#include "ui/shell/session.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::vector<HelpFact> facts_of_window() {
    return {{"program", "quarterturn " + to_utf8(QApplication::applicationVersion())},
            {"Qt", qVersion()},
            {"windows are shown by", to_utf8(QGuiApplication::platformName())}};
}

Written write_help_report(Library& library, LocalTime now, std::vector<HelpFact> facts,
                          const Path& file) {
    const auto of_library = help_facts(library, now);
    facts.insert(facts.end(), of_library.begin(), of_library.end());
    const std::string text = help_text(facts);
    replace_file(library.disk(), file, std::as_bytes(std::span(text)));
    return {{file}, {}};
}

}  // namespace

HelpPart::HelpPart(Session& session)
    : SettingsPart(
          tr("When you ask for help"),
          tr("Whoever helps you with the program needs to know versions, sizes and counts. "
             "The report has these and no name, word or photo of anybody. It stays on this "
             "laptop until you send it yourself; read it before.")),
      session_(session),
      notice_(new Notice),
      ways_out_(session, *notice_, *this) {
    QPushButton* save = make_button(tr("Save a report…"));
    connect(save, &QPushButton::clicked, this, &HelpPart::save_report);
    QHBoxLayout* row = make_row(2);
    row->addWidget(save);
    row->addStretch();
    column()->addLayout(row);
    column()->addWidget(notice_);
}

void HelpPart::save_report() {
    const auto file = ways_out_.ask_file(tr("Save a report for help"), to_utf8(tr("for help")),
                                         QStringLiteral(".txt"), tr("Text (*.txt)"));
    if (!file) return;
    ways_out_.save_as(
        [now = session_.now(), facts = facts_of_window(), file = *file](Library& library) {
            return write_help_report(library, now, facts, file);
        });
}

}  // namespace quarterturn
