#include "ui/two_heads/laid_pairs.h"

#include <QMetaObject>
#include <algorithm>

#include "indexer/portfolio/kept_laying.h"
#include "ui/shell/session.h"

namespace quarterturn {
namespace {

constexpr int most_kept = 4000;  // of about two kilobytes each

// What the thread lays with, made when it is first needed.
struct Bench {
    explicit Bench(const Path& folder, FileSystem& disk)
        : library(Library::open_again(folder, disk)) {}

    LaidAndMeasured lay(Decoder& decoder, const TwoPhotos& two, const LaidFrom& from) {
        LaidAndMeasured laid{lay_pair(library, decoder, finder, two.first, two.second), {}};
        if (!laid.pair.refused.empty()) return laid;
        keep(from, laid.pair);
        laid.figures = measure_laid(library, decoder, laid.pair.alignment, two.first, two.second);
        return laid;
    }

    void keep(const LaidFrom& from, const LaidPair& pair) {
        try {
            keep_laying(library, from, pair);
        } catch (const StoreError&) {
            // It is laid anew the next time.
        }
    }

    Library library;
    HeadFinder finder;
};

}  // namespace

LaidPairs::LaidPairs(Session& session, QObject* parent)
    : QObject(parent), session_(session), kept_(most_kept), thread_([this] { work(); }) {
    connect(&session_, &Session::opened, this, [this] {
        kept_.clear();
        const std::lock_guard lock(mutex_);
        waiting_.clear();
    });
}

LaidPairs::~LaidPairs() {
    {
        const std::lock_guard lock(mutex_);
        closed_ = true;
    }
    changed_.notify_all();
    thread_.join();
}

LaidPairs::Task LaidPairs::task_of(const Photo& first, const Photo& second) const {
    HeadPointsTable points = session_.library().head_points();
    const Key key{first.id,
                  second.id,
                  points.of(first.id),
                  points.of(second.id),
                  first.tags.mirrored,
                  second.tags.mirrored};
    return {session_.library().folder(), key, {first, second}};
}

bool LaidPairs::is_kept(const Key& key) const {
    const Kept* kept = kept_.object({key.first.value, key.second.value});
    return kept && kept->key == key;
}

const LaidAndMeasured* LaidPairs::at_hand(PhotoId first, PhotoId second) const {
    const Kept* kept = kept_.object({first.value, second.value});
    return kept ? &kept->laid : nullptr;
}

const LaidAndMeasured* LaidPairs::of(const Photo& first, const Photo& second) {
    Task task = task_of(first, second);
    if (is_kept(task.key)) return at_hand(first.id, second.id);
    {
        const std::lock_guard lock(mutex_);
        if (at_work_ == task.key) return nullptr;
        std::erase_if(waiting_, [&](const Task& other) { return other.key == task.key; });
        waiting_.push_front(std::move(task));
    }
    changed_.notify_all();
    return nullptr;
}

void LaidPairs::want(const std::vector<TwoPhotos>& pairs) {
    std::deque<Task> tasks;
    for (const TwoPhotos& two : pairs) {
        Task task = task_of(two.first, two.second);
        if (!is_kept(task.key)) tasks.push_back(std::move(task));
    }
    {
        const std::lock_guard lock(mutex_);
        std::erase_if(tasks, [&](const Task& task) { return at_work_ == task.key; });
        waiting_ = std::move(tasks);
    }
    changed_.notify_all();
}

std::optional<LaidPairs::Task> LaidPairs::next() {
    std::unique_lock lock(mutex_);
    at_work_.reset();
    changed_.wait(lock, [this] { return closed_ || !waiting_.empty(); });
    if (closed_) return std::nullopt;
    Task task = std::move(waiting_.front());
    waiting_.pop_front();
    at_work_ = task.key;
    return task;
}

void LaidPairs::work() {
    std::optional<Bench> bench;
    while (const auto task = next()) {
        LaidAndMeasured laid;
        try {
            if (!bench || bench->library.folder() != task->library) {
                bench.emplace(task->library, session_.disk());
            }
            const auto& [first, second] = task->photos;
            laid = bench->lay(session_.decoder(), task->photos,
                              {first, second, task->key.first_points, task->key.second_points});
        } catch (const std::exception& problem) {
            laid.pair.refused = problem.what();
        }
        mailbox_.post([this, task = *task, laid = std::move(laid)] { keep(task, laid); });
    }
}

void LaidPairs::keep(const Task& task, LaidAndMeasured laid) {
    if (!session_.is_open() || session_.library().folder() != task.library) return;
    const Ids ids{task.key.first.value, task.key.second.value};
    kept_.insert(ids, new Kept{task.key, std::move(laid)});
    emit this->laid(task.key.first, task.key.second);
}

}  // namespace quarterturn
