#pragma once

#include <QObject>
#include <QPointer>
#include <map>
#include <optional>
#include <utility>

#include "indexer/sheet/laid_pair.h"

namespace quarterturn {

class Job;
class Session;

// Pairs laid upon each other away from the window's thread, and kept while nothing changes them.
class LaidPairs : public QObject {
    Q_OBJECT
  public:
    explicit LaidPairs(Session& session, QObject* parent = nullptr);

    // What is at hand; where it is nothing it is being laid, and laid() tells when it is there.
    std::optional<LaidPair> of(const Photo& first, const Photo& second);

  signals:
    void laid();

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
        LaidPair pair;
    };

    Key key_of(const Photo& first, const Photo& second) const;
    void keep(const Key& key, LaidPair pair);

    Session& session_;
    std::map<std::pair<std::int64_t, std::int64_t>, Kept> kept_;
    QPointer<Job> laying_;
};

}  // namespace quarterturn
