#include "ui/portfolio_screen/shown_candidates.h"

#include "ui/widgets/words.h"

namespace quarterturn {

void ShownCandidates::show(std::vector<Candidate> all) {
    beginResetModel();
    all_ = std::move(all);
    ready_ = static_cast<int>(std::ranges::count_if(
        all_, [](const Candidate& candidate) { return candidate.lacks.empty(); }));
    endResetModel();
}

void ShownCandidates::mark(const std::vector<PhotoId>& selected) {
    selected_ = {selected.begin(), selected.end()};
    if (!all_.empty()) emit dataChanged(index(0), index(rowCount() - 1));
}

int ShownCandidates::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(all_.size());
}

QVariant ShownCandidates::data(const QModelIndex& index, int role) const {
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
    QStringList words{caption(index.row())};
    words << state(index.row());
    if (is_selected(index.row())) words << tr("in the selection");
    return words.join(QStringLiteral(", "));
}

int ShownCandidates::position_of(PhotoId photo) const {
    const auto found = std::ranges::find(
        all_, photo, [](const Candidate& candidate) { return candidate.photo.id; });
    return found == all_.end() ? -1 : static_cast<int>(found - all_.begin());
}

QString ShownCandidates::caption(int position) const {
    const Candidate& candidate = at(position);
    QStringList words{isolated(from_utf8(candidate.look.name))};
    if (candidate.photo.tags.angle) words << shown(*candidate.photo.tags.angle);
    return words.join(QStringLiteral(", "));
}

QStringList ShownCandidates::state(int position) const {
    const Candidate& candidate = at(position);
    QStringList lines;
    if (!candidate.lacks.empty()) lines << from_utf8(candidate.next);
    return lines << (candidate.signed_off ? tr("Signed off") : tr("Not signed off yet"));
}

}  // namespace quarterturn
