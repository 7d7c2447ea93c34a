#pragma once

#include <QCache>
#include <QObject>
#include <condition_variable>
#include <deque>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>
#include <vector>

#include "indexer/portfolio/pair_figures.h"
#include "indexer/sheet/laid_pair.h"
#include "ui/threads/mailbox.h"

namespace quarterturn {

class Session;

struct TwoPhotos {
    Photo first;
    Photo second;
};

struct LaidAndMeasured {
    LaidPair pair;
    PairFigures figures;  // says nothing where the pair was refused
};

// Pairs laid upon each other on a thread of their own, and kept while nothing changes them.
class LaidPairs : public QObject {
    Q_OBJECT
  public:
    explicit LaidPairs(Session& session, QObject* parent = nullptr);
    ~LaidPairs() override;

    // What is at hand; where it is null it is laid before all that is wanted, and laid() tells when
    // it is there. Holds until the next call.
    const LaidAndMeasured* of(const Photo& first, const Photo& second);

    // Says what is shown now, the most important first, in place of what was said before.
    void want(const std::vector<TwoPhotos>& pairs);
    // As it was when it was last wanted; asks nothing and nobody.
    const LaidAndMeasured* at_hand(PhotoId first, PhotoId second) const;

  signals:
    void laid(quarterturn::PhotoId first, quarterturn::PhotoId second);

  private:
    struct Key {
        PhotoId first;
        PhotoId second;
        std::optional<HeadPoints> first_points;
        std::optional<HeadPoints> second_points;
        bool first_mirrored = false;
        bool second_mirrored = false;

        bool operator==(const Key&) const = default;
    };
    struct Kept {
        Key key;
        LaidAndMeasured laid;
    };
    struct Task {
        Path library;
        Key key;
        TwoPhotos photos;
    };
    using Ids = std::pair<qint64, qint64>;

    Task task_of(const Photo& first, const Photo& second) const;
    bool is_kept(const Key& key) const;
    void work();
    std::optional<Task> next();
    void keep(const Task& task, LaidAndMeasured laid);

    Session& session_;
    mutable QCache<Ids, Kept> kept_;
    std::mutex mutex_;
    std::condition_variable changed_;
    std::deque<Task> waiting_;
    std::optional<Key> at_work_;
    bool closed_ = false;
    Mailbox mailbox_;
    std::jthread thread_;
};

}  // namespace quarterturn
