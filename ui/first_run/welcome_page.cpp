#include "ui/first_run/welcome_page.h"

#include <QFileDialog>

#include "indexer/backup/restore.h"
#include "ui/first_run/demo.h"
#include "ui/first_run/unlock_part.h"
#include "ui/shell/import_progress.h"
#include "ui/shell/new_library_part.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/coverage_ring.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/progress_panel.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

Path to_path(const QString& text) {
    return text.toStdString();
}

}  // namespace

WelcomePage::WelcomePage(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), notice_(new Notice), choices_(new QWidget) {
    ScrollingPage page = make_scrolling_page();
    column_ = page.column;
    auto* ring = new CoverageRing(space(28));
    ring->show_ring({Quarter::covered, Quarter::covered, Quarter::missing, Quarter::covered});
    QHBoxLayout* head = make_row(6);
    head->addWidget(ring);
    QVBoxLayout* words = make_column(1);
    words->addStretch();
    words->addWidget(make_title(tr("Quarterturn")));
    words->addWidget(
        make_text(tr("Keeps a bridal hair trial so that it can be made again: photos "
                     "from every side, the recipe beside them.")));
    words->addStretch();
    head->addLayout(words, 1);
    column_->addLayout(head);
    column_->addWidget(notice_);
    auto* choices = new QVBoxLayout(choices_);
    choices->setContentsMargins(0, 0, 0, 0);
    choices->setSpacing(space(4));
    for (QWidget* part : {build_new(), build_open(), build_restore(), build_demo()})
        choices->addWidget(part);
    column_->addWidget(choices_);
    column_->addStretch();
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(page.scroll);
    if (const auto work = session_.take_closed_work()) do_closed_work(*work);
}

WelcomePage::~WelcomePage() = default;

QWidget* WelcomePage::build_new() {
    Card card = make_card();
    card.column->addWidget(make_heading(tr("Start a new library")));
    card.column->addWidget(new NewLibraryPart(session_, make_next_button(tr("Start here"))));
    return card.frame;
}

QWidget* WelcomePage::build_open() {
    Card card = make_card();
    card.column->addWidget(make_heading(tr("Open a library")));
    card.column->addWidget(make_text(tr("One that you started before, here or on another disk.")));
    QPushButton* open = make_button(tr("Choose its folder…"));
    connect(open, &QPushButton::clicked, this, &WelcomePage::open_existing);
    card.column->addWidget(open, 0, Qt::AlignLeading);
    return card.frame;
}

QWidget* WelcomePage::build_restore() {
    Card card = make_card();
    card.column->addWidget(make_heading(tr("A library again from a backup")));
    card.column->addWidget(
        make_text(tr("When the disk or the records are lost or damaged. It is made in a new place; "
                     "nothing that is there is written over.")));
    QPushButton* restore = make_button(tr("Choose the backup…"));
    connect(restore, &QPushButton::clicked, this, &WelcomePage::choose_backup);
    card.column->addWidget(restore, 0, Qt::AlignLeading);
    return card.frame;
}

QWidget* WelcomePage::build_demo() {
    Card card = make_card();
    card.column->addWidget(make_heading(tr("Try the demo")));
    card.column->addWidget(make_text(
        tr("Three invented weddings with photos of a training head. Nothing in it is yours, and "
           "nothing you do there matters.")));
    QPushButton* demo = make_button(tr("Open the demo"));
    demo->setEnabled(find_demo_photos().has_value());
    if (!demo->isEnabled()) {
        card.column->addWidget(make_quiet(tr("The demo photos are not installed.")));
    }
    connect(demo, &QPushButton::clicked, this, &WelcomePage::try_demo);
    card.column->addWidget(demo, 0, Qt::AlignLeading);
    return card.frame;
}

void WelcomePage::open_existing() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder of the library"));
    if (!folder.isEmpty()) open_or_ask(to_path(folder));
}

void WelcomePage::open_or_say(const Path& folder) {
    notice_->say(session_.open(folder));
}

void WelcomePage::open_or_ask(const Path& folder) {
    session_.wants_passphrase(folder) ? ask_passphrase(folder) : open_or_say(folder);
}

void WelcomePage::ask_passphrase(const Path& folder) {
    ask_words_for(folder, [this, folder](const std::string& words) {
        do_closed_work(
            {tr("Opening the library"), folder, unlocking(folder, session_.disk(), words)});
    });
}

void WelcomePage::ask_words_for(const Path& folder,
                                const std::function<void(const std::string&)>& go_on) {
    choices_->hide();
    delete unlock_;
    unlock_ = new UnlockPart(session_.disk(), folder);
    column_->insertWidget(2, unlock_);
    unlock_->show();
    unlock_->setFocus();
    connect(unlock_, &UnlockPart::given_up, this, &WelcomePage::show_choices);
    connect(unlock_, &UnlockPart::words_given, this, go_on);
}

void WelcomePage::show_choices() {
    if (unlock_ != nullptr) unlock_->deleteLater();
    unlock_ = nullptr;
    choices_->show();
}

// Once it is done, or went wrong, the library is opened, or its passphrase asked for again.
void WelcomePage::do_closed_work(const ClosedWork& work) {
    const auto done = std::make_shared<std::optional<QString>>();
    job_ = std::make_unique<Job>(
        [work, done](Job& job) { return [done, said = work.work(job)] { *done = said; }; });
    show_progress_of(*job_, work.title);
    if (unlock_ != nullptr) unlock_->hide();
    connect(job_.get(), &Job::ended, this, [this, work, done] {
        const QString said = done->value_or(notice_->said());
        if (!*done && unlock_ != nullptr) {
            choices_->hide();
            unlock_->show();
            return;
        }
        open_or_ask(work.library);
        if (said.isEmpty()) return;
        const bool beside_lock = work.of_lock && session_.is_open();
        beside_lock ? session_.go_to({.moment = Moment::settings, .of_lock = said})
                    : session_.say(said);
    });
}

void WelcomePage::try_demo() {
    const auto demo_photos = find_demo_photos();
    if (!demo_photos) return;
    const Path folder = demo_library_folder();
    if (session_.open(folder).isEmpty()) return;
    try {
        session_.disk().make_folders(folder);
        Library::create(folder, session_.disk());
        fill_demo(folder, *demo_photos);
    } catch (const std::exception& problem) {
        notice_->say(said_here(problem.what()));
    }
}

void WelcomePage::choose_backup() {
    const QString backup = QFileDialog::getExistingDirectory(this, tr("Folder of the backup"));
    if (backup.isEmpty()) return;
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("New or empty folder for the library"));
    if (!folder.isEmpty()) restore_or_ask(to_path(backup), to_path(folder));
}

void WelcomePage::restore_or_ask(const Path& backup, const Path& folder) {
    if (!session_.wants_passphrase(backup)) return restore_from(backup, folder, {});
    ask_words_for(backup, [this, backup, folder](const std::string& words) {
        show_choices();
        restore_from(backup, folder, words);
    });
}

void WelcomePage::restore_from(const Path& backup, const Path& folder, const std::string& words) {
    RestoreWishes wishes;
    wishes.from = backup;
    wishes.to = folder;
    wishes.now = session_.now();
    job_ = std::make_unique<Job>([this, wishes, words, &disk = session_.disk()](Job& job) {
        if (!words.empty()) (void)unlocking(wishes.from, disk, words)(job);
        RestoreWishes all = wishes;
        all.stop = job.stop_token();
        all.progress = progress_to(job);
        const RestoreReport report = restore(disk, all);
        return std::function<void()>([this, report] { show_restored(report); });
    });
    show_progress_of(*job_, tr("Restoring"));
}

void WelcomePage::show_restored(const RestoreReport& report) {
    if (report.stopped) {
        return notice_->say(
            tr("Stopped: it is no library yet. Choose the same folders again to go on."));
    }
    open_or_say(report.library);
    if (report.problems.empty()) return;
    session_.say_with(said_here(report.problems.front()),
                      {report.problems.begin() + 1, report.problems.end()});
}

void WelcomePage::fill_demo(const Path& folder, const Path& demo_photos) {
    Decoder& decoder = session_.decoder();
    const LocalTime now = session_.now();
    job_ = std::make_unique<Job>(
        folder, session_.disk(),
        [this, folder, demo_photos, &decoder, now](Library& library, Job& job) {
            fill_with_demo(library, decoder, demo_photos, now, progress_to(job), job.stop_token());
            return std::function<void()>([this, folder] { open_or_say(folder); });
        });
    show_progress_of(*job_, tr("Bringing the demo photos in"));
}

void WelcomePage::show_progress_of(Job& job, const QString& title) {
    notice_->say({});
    choices_->hide();
    delete progress_;
    progress_ = new ProgressPanel(title);
    column_->insertWidget(1, progress_);
    connect(&job, &Job::progressed, progress_, [this](const JobProgress& progress) {
        progress_->show_progress(progress.done, progress.total, progress.file, progress.left);
    });
    connect(progress_, &ProgressPanel::pause_asked, &job, &Job::pause);
    connect(progress_, &ProgressPanel::stop_asked, &job, &Job::stop);
    connect(&job, &Job::failed, notice_, &Notice::say);
    connect(&job, &Job::ended, this, [this] {
        progress_->hide();
        choices_->show();
    });
}

}  // namespace quarterturn
