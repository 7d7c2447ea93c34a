#include "ui/shell/job.h"
#include "ui/widgets/said_here.h"

namespace quarterturn {

Job::Job(Path library_folder, FileSystem& disk, Work work, QObject* parent)
    : Job(
          [folder = std::move(library_folder), &disk, work = std::move(work)](Job& job) {
              Library library = Library::open_again(folder, disk);
              return work(library, job);
          },
          parent) {}

Job::Job(WorkWithoutLibrary work, QObject* parent) : QObject(parent) {
    thread_ = std::jthread([this, work = std::move(work)] { run(work); });
}

Job::~Job() {
    stop();
}

void Job::pause(bool pause) {
    {
        const std::lock_guard lock(mutex_);
        paused_ = pause;
    }
    changed_.notify_all();
}

void Job::stop() {
    stop_.request_stop();
    pause(false);
}

void Job::progress(const JobProgress& progress) {
    mailbox_.post([this, progress] { emit progressed(progress); });
    wait_while_paused();
}

void Job::wait_while_paused() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return !paused_; });
}

void Job::run(const WorkWithoutLibrary& work) {
    std::function<void()> outcome;
    try {
        outcome = work(*this);
    } catch (const std::exception& problem) {
        outcome = [this, sentence = said_here(problem.what())] { emit failed(sentence); };
    }
    mailbox_.post([this, outcome = std::move(outcome)] {
        outcome();
        emit ended();
    });
}

}  // namespace quarterturn
