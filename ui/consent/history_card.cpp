#include "ui/consent/history_card.h"

#include <QFileDialog>
#include <QPointer>
#include <QStandardPaths>

#include "indexer/looks/consents.h"
#include "ui/consent/consent_words.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int shown_of_checksum = 12;

QString paper_words(const ConsentPaper& paper) {
    //: an attached file, the day it was attached, and the beginning of its checksum
    return HistoryCard::tr("%1, attached on %2 (SHA-256 %3…)")
        .arg(isolated(from_utf8(paper.name)), shown(date_of(paper.added_at)),
             from_utf8(paper.sha256).left(shown_of_checksum));
}

std::vector<ConsentPaper> papers_of(const std::vector<ConsentEntry>& entries) {
    std::vector<ConsentPaper> papers;
    for (const ConsentEntry& entry : entries) {
        for (const ConsentPaper& paper : entry.papers) {
            if (std::ranges::find(papers, paper) == papers.end()) papers.push_back(paper);
        }
    }
    return papers;
}

}  // namespace

std::optional<Path> ask_for_paper(QWidget& window) {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString file = QFileDialog::getOpenFileName(
        &window, HistoryCard::tr("The scan or the message"), folder,
        HistoryCard::tr("Papers and pictures (*.pdf *.png *.jpg *.jpeg *.heic *.txt *.eml);;All "
                        "files (*)"));
    return file.isEmpty() ? std::nullopt : std::optional<Path>(to_utf8(file));
}

HistoryCard::HistoryCard(Session& session, QWidget* parent)
    : QFrame(parent), session_(session), entries_(make_column(2)), notice_(new Notice) {
    setProperty("kind", QStringLiteral("card"));
    check_ = make_quiet_button(tr("Check the attached files"));
    connect(check_, &QPushButton::clicked, this, &HistoryCard::check_papers);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(6), space(5), space(6), space(5));
    column->setSpacing(space(3));
    QHBoxLayout* head = make_row(3);
    head->addWidget(make_heading(tr("History")), 1);
    head->addWidget(check_);
    column->addLayout(head);
    column->addWidget(notice_);
    column->addLayout(entries_);
}

void HistoryCard::show_entries(const std::vector<ConsentEntry>& entries) {
    if (entries_->count() > 0 && entries == shown_) return;
    shown_ = entries;
    notice_->say({});
    empty_layout(entries_);
    check_->setVisible(!papers_of(entries).empty());
    if (entries.empty()) {
        entries_->addWidget(make_quiet(tr("Nothing is recorded, and that means no.")));
    }
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry) {
        if (entry != entries.rbegin()) entries_->addWidget(make_hairline());
        entries_->addWidget(make_entry(*entry));
    }
}

QWidget* HistoryCard::make_entry(const ConsentEntry& entry) {
    auto* row = new QWidget;
    auto* parts = new QHBoxLayout(row);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(space(3));
    QVBoxLayout* words = make_column(0);
    words->addWidget(make_text(history_words(entry)));
    words->addWidget(make_quiet(told_words(entry)));
    if (!entry.note.empty()) words->addWidget(make_quiet(from_utf8(entry.note)));
    for (const ConsentPaper& paper : entry.papers) {
        words->addWidget(make_quiet(paper_words(paper)));
    }
    parts->addLayout(words, 1);
    QPushButton* add = make_quiet_button(tr("Attach a file…"));
    add->setAccessibleName(tr("Attach a file to: %1").arg(history_words(entry)));
    connect(add, &QPushButton::clicked, this, [this, id = entry.id] { choose_paper(id); });
    parts->addWidget(add, 0, Qt::AlignTop);
    return row;
}

void HistoryCard::choose_paper(ConsentId entry) {
    if (const auto file = ask_for_paper(*this)) attach(entry, *file);
}

void HistoryCard::attach(ConsentId entry, const Path& file) {
    try {
        attach_paper(session_.library(), file, std::array{entry}, session_.now());
    } catch (const std::exception& problem) {
        return notice_->say(said_here(problem.what()));
    }
    session_.touch();
}

void HistoryCard::check_papers() {
    notice_->say(tr("Reading the attached files…"));
    session_.start<QStringList>(
        [papers = papers_of(shown_)](Library& library, Job&) {
            QStringList problems;
            for (const ConsentPaper& paper : papers) {
                const std::string problem = problem_with_paper(library, paper);
                if (!problem.empty()) problems << from_utf8(problem);
            }
            return problems;
        },
        [notice = QPointer(notice_)](const QStringList& problems) {
            if (!notice) return;
            notice->say(problems.isEmpty() ? tr("They are all as they were when attached.")
                                           : problems.join(QLatin1Char('\n')));
        });
}

}  // namespace quarterturn
