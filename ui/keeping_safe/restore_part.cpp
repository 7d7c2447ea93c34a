#include "ui/keeping_safe/restore_part.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPointer>

#include "ui/shell/import_progress.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QStringList restored_words(const RestoreReport& report) {
    if (report.stopped) {
        return {
            RestorePart::tr("Stopped: it is no library yet. Choose the same folder again to go "
                            "on.")};
    }
    QStringList words{RestorePart::tr("%n file(s) restored and checked.", nullptr,
                                      static_cast<int>(report.files)) +
                      ' ' +
                      RestorePart::tr("The library lies in %1. Open it in the settings.")
                          .arg(isolated(from_utf8(report.library.native())))};
    for (const std::string& problem : report.problems) words << said_here(problem);
    return words;
}

}  // namespace

RestorePart::RestorePart(Session& session)
    : WorkPart(session, tr("A library again from a backup"),
               tr("In a new place: nothing that is there is ever written over, and this library "
                  "stays as it is.")),
      records_(new QComboBox),
      client_(new QLineEdit),
      choices_(new QWidget) {
    auto* form = new QFormLayout(choices_);
    form->setContentsMargins(0, 0, 0, 0);
    form->setHorizontalSpacing(space(4));
    form->setVerticalSpacing(space(2));
    form->setLabelAlignment(Qt::AlignLeading);
    records_->setAccessibleName(tr("Records of"));
    client_->setAccessibleName(tr("One client alone"));
    client_->setPlaceholderText(tr("her name; else everything"));
    form->addRow(tr("Records of"), records_);
    form->addRow(tr("One client alone"), client_);
    constexpr int below_standing = 3;
    static_cast<QVBoxLayout*>(layout())->insertWidget(below_standing, choices_);
    choices_->hide();
}

void RestorePart::refresh() {
    empty_layout(ways());
    std::vector<QPushButton*> buttons;
    if (!backup_.empty()) {
        buttons.push_back(make_button(tr("Restore to a new folder…")));
        connect(buttons.back(), &QPushButton::clicked, this, &RestorePart::choose_place);
    }
    buttons.push_back(make_button(tr("Choose a backup…")));
    connect(buttons.back(), &QPushButton::clicked, this, [this] {
        const Path chosen = choose_folder(tr("Folder of the backup"));
        if (!chosen.empty()) choose_backup(chosen);
    });
    ways()->addWidget(make_button_row(buttons));
}

void RestorePart::choose_backup(const Path& backup) {
    session().attempt([&] {
        const auto times = times_of_records(session().disk(), backup);
        backup_ = backup;
        records_->clear();
        for (auto time = times.rbegin(); time != times.rend(); ++time) {
            //: a day and a clock time, by UTC
            records_->addItem(tr("%1 (UTC)").arg(from_utf8(*time)), from_utf8(*time));
        }
        show_backup();
    });
}

void RestorePart::show_backup() {
    empty_layout(standing());
    standing()->addWidget(make_text(tr("From %1").arg(isolated(from_utf8(backup_.native())))));
    choices_->show();
    refresh();
}

void RestorePart::choose_place() {
    const Path chosen = choose_folder(tr("New or empty folder for the library"));
    if (!chosen.empty()) restore_to(chosen);
}

void RestorePart::restore_to(const Path& folder) {
    if (!may_begin()) return;
    RestoreWishes wishes;
    wishes.from = backup_;
    wishes.to = folder;
    wishes.client = to_utf8(client_->text().trimmed());
    wishes.records = to_utf8(records_->currentData().toString());
    wishes.now = session().now();
    Job* job = session().start<RestoreReport>(
        [wishes, &disk = session().disk()](Library&, Job& working) {
            RestoreWishes all = wishes;
            all.stop = working.stop_token();
            all.progress = progress_to(working);
            return restore(disk, all);
        },
        [part = QPointer(this)](const RestoreReport& done) {
            if (part) part->report(restored_words(done));
        });
    show_work(job, tr("Restoring"));
}

}  // namespace quarterturn
