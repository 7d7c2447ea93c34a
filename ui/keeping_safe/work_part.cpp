#include "ui/keeping_safe/work_part.h"

#include <QFileDialog>

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/progress_panel.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr qsizetype most_sentences = 30;  // more than anybody reads on a page

}  // namespace

WorkPart::WorkPart(Session& session, const QString& heading, const QString& what_for)
    : session_(session),
      standing_(make_column(1)),
      ways_(make_column(2)),
      work_(make_column(2)),
      report_(make_column(1)),
      ways_frame_(new QWidget),
      notice_(new Notice) {
    setProperty("kind", QStringLiteral("card"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(6), space(5), space(6), space(5));
    column->setSpacing(space(3));
    column->addWidget(make_heading(heading));
    column->addWidget(make_quiet(what_for));
    column->addLayout(standing_);
    column->addLayout(report_);
    column->addWidget(notice_);
    ways_frame_->setLayout(ways_);
    column->addWidget(ways_frame_);
    column->addLayout(work_);
}

bool WorkPart::may_begin() {
    notice_->say({});
    if (!session_.work()) return true;
    notice_->say(
        tr("Something else is at work in the library: wait until it has ended, and press again."));
    return false;
}

void WorkPart::show_work(Job* job, const QString& work) {
    empty_layout(report_);
    empty_layout(work_);
    ways_frame_->hide();
    auto* panel = new ProgressPanel(work);
    work_->addWidget(panel);
    connect(job, &Job::progressed, panel, [panel](const JobProgress& progress) {
        panel->show_progress(progress.done, progress.total, progress.file, progress.left);
    });
    connect(panel, &ProgressPanel::pause_asked, job, &Job::pause);
    connect(panel, &ProgressPanel::stop_asked, job, &Job::stop);
    connect(job, &Job::failed, notice_, &Notice::say);
    connect(job, &Job::ended, this, [this] {
        empty_layout(work_);
        ways_frame_->show();
        refresh();
    });
}

void WorkPart::report(const QStringList& sentences) {
    empty_layout(report_);
    for (const QString& sentence : sentences.first(qMin(sentences.size(), most_sentences))) {
        report_->addWidget(make_text(sentence));
    }
    if (sentences.size() > most_sentences) {
        report_->addWidget(
            make_text(tr("And %n more. On the command line, qturn names all of them.", nullptr,
                         static_cast<int>(sentences.size() - most_sentences))));
    }
}

Path WorkPart::choose_folder(const QString& question) {
    return Path(to_utf8(QFileDialog::getExistingDirectory(this, question)));
}

QWidget* make_button_row(const std::vector<QPushButton*>& buttons) {
    auto* row = new QWidget;
    auto* flow = new FlowLayout(space(2));
    row->setLayout(flow);
    for (QPushButton* button : buttons) flow->addWidget(button);
    return row;
}

}  // namespace quarterturn
