#include "ui/bringing_in/folder_watch.h"

#include "indexer/intake/begun_intake.h"
#include "ui/shell/session.h"
#include "ui/widgets/words.h"

namespace quarterturn {

FolderWatch& FolderWatch::of(Session& session) {
    auto* watch = session.findChild<FolderWatch*>(QString(), Qt::FindDirectChildrenOnly);
    return watch ? *watch : *new FolderWatch(session);
}

FolderWatch::FolderWatch(Session& session) : QObject(&session), session_(session) {
    // Also for a folder that does not tell when something arrives, such as a phone's.
    timer_.setInterval(between_looks);
    connect(&timer_, &QTimer::timeout, this, &FolderWatch::look);
    connect(&watcher_, &QFileSystemWatcher::directoryChanged, this, &FolderWatch::look);
    connect(&session, &Session::opened, this, &FolderWatch::end);
}

FolderWatch::~FolderWatch() = default;

void FolderWatch::start(const Path& folder) {
    folder_ = folder;
    arriving_ = std::make_shared<ArrivingFiles>(std::vector{folder});
    brought_in_ = 0;
    refused_.clear();
    problem_.clear();
    watcher_.addPath(from_utf8(folder.native()));
    timer_.start();
    session_.attempt([this] { BegunIntake::as_they_arrive(session_.library()).keep({folder_}); });
    emit changed();
    look();
}

void FolderWatch::stop() {
    session_.attempt([this] { BegunIntake::as_they_arrive(session_.library()).forget(); });
    end();
}

Path FolderWatch::watched_before() const {
    if (!folder_.empty() || !session_.is_open()) return {};
    std::vector<Path> before;
    session_.attempt([&] { before = BegunIntake::as_they_arrive(session_.library()).sources(); });
    return before.empty() ? Path() : before.front();
}

void FolderWatch::end() {
    timer_.stop();
    if (!watcher_.directories().isEmpty()) watcher_.removePaths(watcher_.directories());
    folder_.clear();
    emit changed();
}

void FolderWatch::look() {
    if (job_ || folder_.empty() || !is_there()) return;
    job_ = std::make_unique<Job>(
        session_.library().folder(), session_.disk(),
        [this, arriving = arriving_, &decoder = session_.decoder()](Library& library, Job& job) {
            ImportWishes wishes;
            wishes.stop = job.stop_token();
            ImportReport report = import_arrived(library, decoder, *arriving, std::move(wishes));
            return std::function<void()>([this, report] { keep(report); });
        });
    connect(job_.get(), &Job::failed, this, [this](const QString& sentence) {
        problem_ = sentence;
        emit changed();
    });
    connect(job_.get(), &Job::ended, this, [this] { job_.release()->deleteLater(); });
}

bool FolderWatch::is_there() {
    try {
        if (session_.disk().exists(folder_)) return true;
        problem_ = tr("%1 is not there now: it is watched again once it is.")
                       .arg(from_utf8(folder_.native()));
    } catch (const DiskError& error) {
        problem_ = from_utf8(error.what());
    }
    emit changed();
    return false;
}

void FolderWatch::keep(const ImportReport& report) {
    const bool was_problem = !std::exchange(problem_, QString()).isEmpty();
    brought_in_ += static_cast<int>(report.imported.size());
    refused_.insert(refused_.end(), report.refused.begin(), report.refused.end());
    if (!report.imported.empty()) session_.touch();
    if (was_problem || !report.imported.empty() || !report.refused.empty()) emit changed();
}

}  // namespace quarterturn
