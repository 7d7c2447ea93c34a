#include "ui/pictures/picture_queue.h"

namespace quarterturn {

void PictureQueue::replace(Viewer viewer, std::deque<PictureJob> jobs) {
    {
        const std::lock_guard lock(mutex_);
        std::erase_if(wishes_, [&](const Wishes& wishes) { return wishes.viewer == viewer; });
        wishes_.insert(wishes_.begin(), Wishes{viewer, std::move(jobs)});
    }
    changed_.notify_all();
}

void PictureQueue::drop(Viewer viewer) {
    const std::lock_guard lock(mutex_);
    std::erase_if(wishes_, [&](const Wishes& wishes) { return wishes.viewer == viewer; });
}

std::optional<PictureJob> PictureQueue::next() {
    std::unique_lock lock(mutex_);
    while (!closed_) {
        if (auto job = take_first(true)) return job;
        if (auto job = take_first(false)) return job;
        changed_.wait(lock);
    }
    return std::nullopt;
}

std::optional<PictureJob> PictureQueue::take_first(bool small) {
    for (Wishes& wishes : wishes_) {
        const auto found =
            std::find_if(wishes.jobs.begin(), wishes.jobs.end(), [&](const PictureJob& job) {
                return job.small == small && !at_work_.contains(job.key());
            });
        if (found == wishes.jobs.end()) continue;
        PictureJob job = std::move(*found);
        wishes.jobs.erase(found);
        at_work_.insert(job.key());
        return job;
    }
    return std::nullopt;
}

void PictureQueue::done(const PictureJob& job) {
    const std::lock_guard lock(mutex_);
    at_work_.erase(job.key());
    for (Wishes& wishes : wishes_) {
        std::erase_if(wishes.jobs,
                      [&](const PictureJob& other) { return other.key() == job.key(); });
    }
}

void PictureQueue::close() {
    {
        const std::lock_guard lock(mutex_);
        closed_ = true;
    }
    changed_.notify_all();
}

}  // namespace quarterturn
