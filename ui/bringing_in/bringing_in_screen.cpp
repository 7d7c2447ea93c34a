#include "ui/bringing_in/bringing_in_screen.h"

#include <QDragEnterEvent>
#include <QMimeData>
#include <QPointer>

#include "indexer/intake/begun_intake.h"
#include "ui/bringing_in/card_finder.h"
#include "ui/bringing_in/import_words.h"
#include "ui/bringing_in/settle_part.h"
#include "ui/bringing_in/source_choice.h"
#include "ui/bringing_in/watch_part.h"
#include "ui/shell/import_progress.h"
#include "ui/shell/session.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/progress_panel.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

ImportWishes wishes_of(const std::vector<Path>& sources, Job& job) {
    ImportWishes wishes;
    wishes.sources = sources;
    wishes.remember = true;
    wishes.stop = job.stop_token();
    wishes.progress = progress_to(job);
    return wishes;
}

std::vector<Path> paths_in(const QMimeData& data) {
    std::vector<Path> paths;
    for (const QUrl& url : data.urls()) {
        if (url.isLocalFile()) paths.emplace_back(to_utf8(url.toLocalFile()));
    }
    return paths;
}

// A card with a heading, facts and a row of buttons, the first of them the next thing to do.
QWidget* make_step(const QString& heading, const std::vector<ImportFact>& facts,
                   const std::vector<QPushButton*>& buttons) {
    Card card = make_card();
    card.column->setSpacing(card.column->spacing() * 2);
    card.column->addWidget(make_heading(heading));
    card.column->addWidget(new FactList(facts));
    QHBoxLayout* row = make_row(2);
    for (QPushButton* button : buttons) row->addWidget(button);
    row->addStretch();
    card.column->addLayout(row);
    return card.frame;
}

}  // namespace

BringingInScreen::BringingInScreen(Session& session)
    : session_(session),
      finder_(new CardFinder(session.disk(), this)),
      step_(make_column(0)),
      notice_(new Notice),
      settle_(new SettlePart(session)) {
    setAcceptDrops(true);
    ScrollingPage page = make_scrolling_page();
    page.column->addWidget(make_title(tr("Bringing photos in")));
    page.column->addWidget(notice_);
    page.column->addLayout(step_);
    page.column->addWidget(settle_);
    page.column->addWidget(new WatchPart(session));
    page.column->addStretch();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(page.scroll);
    show_choice();
}

QString BringingInScreen::help() const {
    return tr(
        "Choose a folder, a card or photos, or drop them anywhere on this page. You see what is "
        "there before anything is copied; originals are only read. Photos whose time fits no "
        "sitting, and clocks that seem off, are settled here by looking at pictures.");
}

void BringingInScreen::refresh() {
    settle_->look_again();
    offer_to_go_on();
}

void BringingInScreen::arrive(const Place& place) {
    place_ = place;
}

void BringingInScreen::show_step(QWidget* step) {
    empty_layout(step_);
    step_->addWidget(step);
}

void BringingInScreen::show_choice() {
    choice_ = new SourceChoice(*finder_);
    connect(choice_, &SourceChoice::chosen, this, &BringingInScreen::look_at);
    connect(choice_, &SourceChoice::left_alone, this, &BringingInScreen::leave_unfinished);
    show_step(choice_);
    offer_to_go_on();
}

void BringingInScreen::offer_to_go_on() {
    if (!choice_ || !session_.is_open() || at_work_) return;
    session_.attempt([this] { choice_->offer_to_go_on(unfinished_intake(session_.library())); });
}

void BringingInScreen::leave_unfinished() {
    session_.attempt([this] {
        leave_unfinished_intake(session_.library());
        session_.say(tr("Left at that. What came in is kept."));
    });
    offer_to_go_on();
}

void BringingInScreen::look_at(const std::vector<Path>& sources) {
    if (at_work_ || sources.empty()) return;
    sources_ = sources;
    notice_->say({});
    Job* job = session_.start<ImportPreview>(
        [sources](Library& library, Job& working) {
            return preview_import(library, wishes_of(sources, working));
        },
        [screen = QPointer(this)](const ImportPreview& preview) {
            if (screen) screen->show_preview(preview);
        });
    show_progress_of(job, tr("Looking at what is there"));
}

void BringingInScreen::show_progress_of(Job* job, const QString& work) {
    at_work_ = true;
    auto* panel = new ProgressPanel(work);
    connect(job, &Job::progressed, panel, [panel](const JobProgress& progress) {
        panel->show_progress(progress.done, progress.total, progress.file, progress.left);
    });
    connect(panel, &ProgressPanel::pause_asked, job, &Job::pause);
    connect(panel, &ProgressPanel::stop_asked, job, &Job::stop);
    connect(job, &Job::failed, this, [this](const QString& sentence) {
        show_choice();
        notice_->say(sentence);
    });
    connect(job, &Job::ended, this, [this] { at_work_ = false; });
    show_step(panel);
}

void BringingInScreen::show_preview(const ImportPreview& preview) {
    if (preview.stopped) return show_choice();
    session_.attempt([&] {
        const bool all_is_here = preview.fresh == 0 && preview.refused.empty();
        if (all_is_here) BegunIntake::once(session_.library()).finish(sources_);
    });
    std::vector<QPushButton*> buttons;
    if (preview.fresh > 0) {
        buttons.push_back(make_next_button(tr("Bring them in")));
        connect(buttons.back(), &QPushButton::clicked, this, &BringingInScreen::bring_in);
    }
    buttons.push_back(make_button(tr("Choose others")));
    connect(buttons.back(), &QPushButton::clicked, this, &BringingInScreen::show_choice);
    show_step(
        make_step(preview_heading(preview), preview_facts(session_.library(), preview), buttons));
    buttons.front()->setFocus();
}

void BringingInScreen::bring_in() {
    if (at_work_) return;
    Job* job = session_.start<ImportOutcome>(
        [sources = sources_, &decoder = session_.decoder()](Library& library, Job& working) {
            ImportReport report = import_photos(library, decoder, wishes_of(sources, working));
            auto sittings = count_by_sitting(library, report.imported);
            return ImportOutcome{std::move(report), std::move(sittings)};
        },
        [screen = QPointer(this)](const ImportOutcome& outcome) {
            if (screen) screen->show_report(outcome);
        });
    show_progress_of(job, tr("Bringing photos in"));
}

void BringingInScreen::show_report(const ImportOutcome& outcome) {
    QPushButton* round = make_next_button(tr("Go round the head"));
    connect(round, &QPushButton::clicked, this, [this, outcome] { go_round_the_head(outcome); });
    QPushButton* more = make_button(tr("Bring more in"));
    connect(more, &QPushButton::clicked, this, &BringingInScreen::show_choice);
    QPushButton* card = make_quiet_button(tr("What may be deleted there"));
    connect(card, &QPushButton::clicked, this,
            [this] { session_.go_to({.moment = Moment::keeping_safe, .sources = sources_}); });
    show_step(make_step(report_heading(outcome.report), report_facts(session_.library(), outcome),
                        {round, more, card}));
    round->setFocus();
}

// To the sitting that most of them belong to, else to where she came from.
void BringingInScreen::go_round_the_head(const ImportOutcome& outcome) {
    Place place = place_;
    place.moment = Moment::round_the_head;
    const auto most = std::ranges::max_element(outcome.sittings, {}, &PhotosOfSitting::photos);
    if (most != outcome.sittings.end() && most->sitting.id != place.sitting) {
        place = {.moment = Moment::round_the_head};
        place.sitting = most->sitting.id;
        place.client = most->sitting.client;
        place.wedding = most->sitting.wedding;
    }
    session_.go_to(place);
}

void BringingInScreen::showEvent(QShowEvent* event) {
    finder_->look_while(true);
    offer_to_go_on();
    Screen::showEvent(event);
}

void BringingInScreen::hideEvent(QHideEvent* event) {
    finder_->look_while(false);
    Screen::hideEvent(event);
}

void BringingInScreen::dragEnterEvent(QDragEnterEvent* event) {
    if (!paths_in(*event->mimeData()).empty()) event->acceptProposedAction();
}

void BringingInScreen::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    look_at(paths_in(*event->mimeData()));
}

}  // namespace quarterturn
