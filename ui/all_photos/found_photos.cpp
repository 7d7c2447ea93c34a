#include "ui/all_photos/found_photos.h"

#include <QLocale>
#include <algorithm>

#include "ui/shell/session.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int page_photos = 64;
constexpr int pages_kept = 64;

std::optional<Date> month_of(const FoundPhoto& photo) {
    if (photo.sitting || !photo.moment) return std::nullopt;
    const Date day = date_of(*photo.moment);
    return day.year() / day.month() / 1;
}

bool is_of_the_photo(const FoundText& text) {
    return text.where == WordsOf::photo || text.where == WordsOf::look ||
           text.where == WordsOf::recipe;
}

}  // namespace

FoundPhotos::FoundPhotos(Session& session, QObject* parent)
    : QAbstractListModel(parent), session_(session), pages_(pages_kept) {}

void FoundPhotos::show(const std::vector<FoundPhoto>& found, const std::string& words) {
    beginResetModel();
    pages_.clear();
    sittings_.clear();
    clients_.clear();
    words_ = words;
    shelves_.clear();
    using Key = std::pair<std::optional<SittingId>, std::optional<Date>>;
    std::map<Key, std::size_t> known;
    std::vector<std::size_t> shelf_of(found.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        const Key key{found[i].sitting, month_of(found[i])};
        const auto [place, is_new] = known.try_emplace(key, shelves_.size());
        if (is_new) shelves_.push_back({key.first, key.second, 0, 0});
        shelf_of[i] = place->second;
        ++shelves_[place->second].photos;
    }
    std::vector<int> next;
    int first = 0;
    for (Shelf& shelf : shelves_) {
        shelf.first = first;
        next.push_back(first);
        first += shelf.photos;
    }
    ids_.resize(found.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        ids_[static_cast<std::size_t>(next[shelf_of[i]]++)] = found[i].id;
    }
    endResetModel();
}

int FoundPhotos::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ids_.size());
}

QVariant FoundPhotos::data(const QModelIndex& index, int role) const {
    const bool words = role == Qt::DisplayRole || role == Qt::AccessibleTextRole;
    if (!index.isValid() || !words) return {};
    const Photo* photo = this->photo(index.row());
    return photo ? in_words(*photo) : QString();
}

int FoundPhotos::position_of(PhotoId photo) const {
    const auto found = std::ranges::find(ids_, photo);
    return found == ids_.end() ? -1 : static_cast<int>(found - ids_.begin());
}

FoundPhotos::Page FoundPhotos::read_page(int first) const {
    const auto count =
        std::min<std::size_t>(page_photos, ids_.size() - static_cast<std::size_t>(first));
    const std::span<const PhotoId> ids =
        std::span(ids_).subspan(static_cast<std::size_t>(first), count);
    Page page(count);
    session_.attempt([&] {
        for (Photo& photo : session_.library().photos().these_also_in_bin(ids)) {
            const auto place = std::ranges::find(ids, photo.id) - ids.begin();
            page[static_cast<std::size_t>(place)].photo = std::move(photo);
        }
        if (words_.empty()) return;
        auto texts = session_.library().search().found_texts(ids, words_);
        for (std::size_t i = 0; i < count; ++i) page[i].texts = std::move(texts[i]);
    });
    return page;
}

const FoundPhotos::Entry* FoundPhotos::entry(int position) const {
    const int number = position / page_photos;
    if (!pages_.contains(number)) {
        pages_.insert(number, new Page(read_page(number * page_photos)));
    }
    return &(*pages_.object(number))[static_cast<std::size_t>(position % page_photos)];
}

const Photo* FoundPhotos::photo(int position) const {
    const auto& photo = entry(position)->photo;
    return photo ? &*photo : nullptr;
}

const FoundText* FoundPhotos::found_text(int position) const {
    const auto& texts = entry(position)->texts;
    const auto text = std::ranges::find_if(texts, is_of_the_photo);
    return text == texts.end() ? nullptr : &*text;
}

std::vector<FoundText> FoundPhotos::found_round(const Shelf& shelf) const {
    std::vector<FoundText> round;
    std::ranges::copy_if(entry(shelf.first)->texts, std::back_inserter(round),
                         [](const FoundText& text) { return !is_of_the_photo(text); });
    return round;
}

const Sitting* FoundPhotos::sitting(SittingId id) const {
    if (!sittings_.contains(id)) {
        session_.attempt([&] {
            if (const auto found = session_.library().sittings().find(id)) sittings_[id] = *found;
        });
    }
    const auto known = sittings_.find(id);
    return known == sittings_.end() ? nullptr : &known->second;
}

QString FoundPhotos::client(ClientId id) const {
    if (!clients_.contains(id)) {
        session_.attempt([&] {
            const auto found = session_.library().clients().find(id);
            clients_[id] = found ? from_utf8(found->name) : QString();
        });
    }
    return clients_[id];
}

QString FoundPhotos::client_of(const Photo& photo) const {
    const Sitting* of = photo.tags.sitting ? sitting(*photo.tags.sitting) : nullptr;
    if (of) return client(of->client);
    QString name;
    if (photo.tags.look) {
        session_.attempt([&] {
            const auto look = session_.library().looks().find(*photo.tags.look);
            if (look) name = client(look->client);
        });
    }
    return name;
}

QString FoundPhotos::heading(const Shelf& shelf) const {
    if (!shelf.sitting) return tr("Not placed yet");
    const Sitting* of = sitting(*shelf.sitting);
    if (!of) return {};
    //: a client and the kind of her sitting
    return tr("%1, %2").arg(isolated(client(of->client)), shown(of->kind));
}

QString FoundPhotos::day(const Shelf& shelf) const {
    if (shelf.sitting) {
        const Sitting* of = sitting(*shelf.sitting);
        return of ? shown(date_of(of->starts)) : QString();
    }
    if (!shelf.month) return tr("time unknown");
    return QLocale().toString(to_qdate(*shelf.month), QStringLiteral("MMMM yyyy"));
}

QString FoundPhotos::in_words(const Photo& photo) const {
    QStringList words;
    const QString name = client_of(photo);
    if (!name.isEmpty()) words << name;
    if (photo.tags.stage) words << shown(*photo.tags.stage);
    if (photo.tags.angle) words << shown(*photo.tags.angle);
    if (!photo.tags.sitting) words << tr("not placed yet");
    //: a day and the time on it
    words << (photo.moment
                  ? tr("%1, %2").arg(shown(date_of(*photo.moment)), clock_shown(*photo.moment))
                  : from_utf8(photo.file.name));
    const QString described_flaws = described(look_of(photo));
    if (!described_flaws.isEmpty()) words << described_flaws;
    return words.join(QStringLiteral(", "));
}

}  // namespace quarterturn
