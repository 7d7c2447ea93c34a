#include "ui/pairs/shown_pairs.h"

#include <algorithm>
#include <span>

#include "indexer/portfolio/kept_laying.h"
#include "ui/pairs/fact_words.h"
#include "ui/shell/session.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int page_pairs = 32;
constexpr int pages_kept = 64;

}  // namespace

QString angle_and_kind(const PairPlace& place) {
    const QString angle = capitalised_words(shown(place.angle));
    if (place.kind == PairKind::before_and_after) return angle;
    //: an angle and the kind of a pair
    return ShownPairs::tr("%1, %2").arg(angle, shown(place.kind));
}

ShownPairs::ShownPairs(Session& session, QObject* parent)
    : QAbstractListModel(parent), session_(session), pages_(pages_kept) {}

void ShownPairs::show(PairsOnWall shown) {
    beginResetModel();
    pages_.clear();
    names_.clear();
    shown_ = std::move(shown);
    endResetModel();
}

int ShownPairs::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.pairs.size());
}

QVariant ShownPairs::data(const QModelIndex& index, int role) const {
    const bool words = role == Qt::DisplayRole || role == Qt::AccessibleTextRole;
    if (!index.isValid() || !words) return {};
    const Pair& pair = at(index.row());
    QStringList parts{client(pair), look(pair), angle_and_kind(pair.made.place)};
    const QString why = reason(index.row());
    if (!why.isEmpty()) parts << why;
    return parts.join(QStringLiteral(", "));
}

int ShownPairs::position_of(PairId pair) const {
    const auto found = std::ranges::find(shown_.pairs, pair, &Pair::id);
    return found == shown_.pairs.end() ? -1 : static_cast<int>(found - shown_.pairs.begin());
}

QString ShownPairs::reason(int position) const {
    const auto reason = shown_.reasons.find(at(position).id);
    return reason == shown_.reasons.end() ? QString() : reason->second;
}

QString ShownPairs::client(const Pair& pair) const {
    return from_utf8(name_of(pair.made.place.look).client);
}

QString ShownPairs::look(const Pair& pair) const {
    return from_utf8(name_of(pair.made.place.look).name);
}

void ShownPairs::read_names(const std::vector<LookId>& looks) const {
    session_.attempt([&] {
        for (LookName& name : session_.library().looks().names_of(looks)) {
            names_.emplace(name.look, std::move(name));
        }
    });
}

const LookName& ShownPairs::name_of(LookId look) const {
    if (!names_.contains(look)) read_names({look});
    return names_[look];  // empty where it has gone since
}

ShownPairs::Page ShownPairs::read_page(int first) const {
    const auto from = static_cast<std::size_t>(first);
    const std::size_t count = std::min<std::size_t>(page_pairs, shown_.pairs.size() - from);
    std::vector<PhotoId> ids;
    std::vector<PairId> pairs;
    std::vector<LookId> looks;
    for (const Pair& pair : std::span(shown_.pairs).subspan(from, count)) {
        ids.insert(ids.end(), {pair.made.first, pair.made.second});
        pairs.push_back(pair.id);
        looks.push_back(pair.made.place.look);
    }
    read_names(looks);
    std::map<PhotoId, Photo> photos;
    std::map<PairId, LaidPair> layings;
    session_.attempt([&] {
        for (Photo& photo : session_.library().photos().these(ids)) {
            photos.emplace(photo.id, std::move(photo));
        }
        layings = kept_layings(session_.library(), pairs);
    });
    Page page(count);
    for (std::size_t i = 0; i < count; ++i) {
        const auto one = photos.find(ids[2 * i]);
        const auto other = photos.find(ids[2 * i + 1]);
        if (one == photos.end() || other == photos.end()) continue;
        page[i].photos = {one->second, other->second};
        const auto laying = layings.find(pairs[i]);
        if (laying != layings.end()) page[i].laid = laying->second;
    }
    return page;
}

const ShownPairs::Shown& ShownPairs::shown_at(int position) const {
    const int number = position / page_pairs;
    if (!pages_.contains(number)) {
        pages_.insert(number, new Page(read_page(number * page_pairs)));
    }
    return (*pages_.object(number))[static_cast<std::size_t>(position % page_pairs)];
}

const TwoPhotos* ShownPairs::photos(int position) const {
    const auto& photos = shown_at(position).photos;
    return photos ? &*photos : nullptr;
}

const LaidPair* ShownPairs::laid(int position) const {
    const auto& laid = shown_at(position).laid;
    return laid ? &*laid : nullptr;
}

}  // namespace quarterturn
