#pragma once
// The pairs on the wall. Only their numbers and names are held; photos are read a page at a time
// when they are asked for.

#include <QAbstractListModel>
#include <QCache>
#include <map>
#include <vector>

#include "indexer/record/pair.h"
#include "indexer/store/library.h"
#include "ui/two_heads/laid_pairs.h"

namespace quarterturn {

class Session;

struct PairsOnWall {
    std::vector<Pair> pairs;
    std::map<PairId, QString> reasons{};  // why each is like what she asked for
};

class ShownPairs : public QAbstractListModel {
    Q_OBJECT
  public:
    explicit ShownPairs(Session& session, QObject* parent = nullptr);

    void show(PairsOnWall shown);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;  // a pair in words

    const Pair& at(int position) const { return shown_.pairs[static_cast<std::size_t>(position)]; }
    QString reason(int position) const;  // mostly empty
    int position_of(PairId pair) const;  // -1: not among them
    QString client(const Pair& pair) const;
    QString look(const Pair& pair) const;

    // Null when one of them has gone since, or cannot be read.
    const TwoPhotos* photos(int position) const;
    // How they were laid when they were laid last; null when that is not known or not as now.
    const LaidPair* laid(int position) const;

  private:
    struct Shown {
        std::optional<TwoPhotos> photos;
        std::optional<LaidPair> laid;
    };
    using Page = std::vector<Shown>;
    Page read_page(int first) const;
    const Shown& shown_at(int position) const;

    void read_names(const std::vector<LookId>& looks) const;
    const LookName& name_of(LookId look) const;

    Session& session_;
    PairsOnWall shown_;
    mutable std::map<LookId, LookName> names_;  // of those that were asked for
    mutable QCache<int, Page> pages_;
};

// "Back, trial and wedding day": the angle, and the kind unless it is before and after.
QString angle_and_kind(const PairPlace& place);

}  // namespace quarterturn
