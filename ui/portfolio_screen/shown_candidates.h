#pragma once

#include <QAbstractListModel>
#include <set>

#include "indexer/portfolio/candidates.h"

namespace quarterturn {

// The candidates for a use on two shelves: those that may go, and those that something stands
// against.
class ShownCandidates : public QAbstractListModel {
    Q_OBJECT
  public:
    using QAbstractListModel::QAbstractListModel;

    // In the order of candidates(): those that may go first.
    void show(std::vector<Candidate> all);
    void mark(const std::vector<PhotoId>& selected);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;  // all of it in words

    const Candidate& at(int position) const { return all_[static_cast<std::size_t>(position)]; }
    const std::vector<Candidate>& all() const { return all_; }
    int position_of(PhotoId photo) const;  // -1: not among them
    int ready() const { return ready_; }   // how many may go
    bool is_selected(int position) const { return selected_.contains(at(position).photo.id); }

    QString caption(int position) const;  // "low bun, back"
    // What stands against it, and whether its look is signed off: a line each.
    QStringList state(int position) const;

  private:
    std::vector<Candidate> all_;
    std::set<PhotoId> selected_;
    int ready_ = 0;
};

}  // namespace quarterturn
