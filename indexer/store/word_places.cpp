#include "indexer/store/word_places.h"

#include <algorithm>
#include <array>

#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

using Numbers = std::vector<std::int64_t>;

// The records with the word, by their kind.
class Hits {
  public:
    Hits(Database& database, const WordQuery& query) {
        Statement statement(database, "SELECT rowid FROM words WHERE " + query.condition);
        statement.with(query.value);
        while (statement.step()) {
            std::int64_t row = 0;
            statement.read(row);
            of(kind_of_row(row)).push_back(record_of_row(row));
        }
    }
    Numbers& of(WordsOf kind) { return records_.at(static_cast<std::size_t>(kind)); }

  private:
    std::array<Numbers, 6> records_;
};

void add(Numbers& numbers, const Numbers& more) {
    numbers.insert(numbers.end(), more.begin(), more.end());
}

// `query` asks for numbers; ?1 are those of `records`.
void add_those_of(Database& database, Numbers& numbers, const std::string& query,
                  const Numbers& records) {
    if (records.empty()) return;
    const std::string list = json_list(records);
    Statement statement(database, query + " IN (SELECT value FROM json_each(?))");
    statement.with(list);
    while (statement.step()) statement.read(numbers.emplace_back());
}

bool is_among(const Numbers& numbers, std::int64_t number) {
    return std::ranges::binary_search(numbers, number);
}

template <class Keep>
void add_photos(Database& database, std::vector<PlacedPhoto>& photos, const std::string& column,
                const Numbers& records, Keep keep) {
    if (records.empty()) return;
    const std::string list = json_list(records);
    Statement statement(database, "SELECT id, sitting, look FROM photo WHERE " + column +
                                      " IN (SELECT value FROM json_each(?))");
    statement.with(list);
    while (statement.step()) {
        PlacedPhoto photo;
        statement.read(photo.id, photo.sitting, photo.look);
        if (keep(photo)) photos.push_back(photo);
    }
}

}  // namespace

WordPlaces::WordPlaces(Database& database, const WordQuery& query) {
    Hits hits(database, query);
    const Numbers& clients = hits.of(WordsOf::client);
    const Numbers& weddings = hits.of(WordsOf::wedding);
    sittings_ = std::move(hits.of(WordsOf::sitting));
    add_those_of(database, sittings_, "SELECT id FROM sitting WHERE client", clients);
    add_those_of(database, sittings_, "SELECT id FROM sitting WHERE wedding", weddings);
    looks_ = std::move(hits.of(WordsOf::look));
    add(looks_, hits.of(WordsOf::recipe));
    add_those_of(database, looks_, "SELECT id FROM look WHERE client", clients);
    add_those_of(database, looks_, "SELECT id FROM look WHERE wedding", weddings);
    photos_ = std::move(hits.of(WordsOf::photo));
    add_those_of(database, photos_, "SELECT photo FROM photo_shown WHERE client", clients);
    for (Numbers* numbers : {&sittings_, &looks_, &photos_}) std::ranges::sort(*numbers);
}

bool WordPlaces::finds_by_sitting(const PlacedPhoto& photo) const {
    return photo.sitting && is_among(sittings_, photo.sitting->value);
}

bool WordPlaces::finds_by_look(const PlacedPhoto& photo) const {
    return photo.look && is_among(looks_, photo.look->value);
}

bool WordPlaces::find(const PlacedPhoto& photo) const {
    return finds_by_sitting(photo) || finds_by_look(photo) || is_among(photos_, photo.id.value);
}

std::vector<PlacedPhoto> WordPlaces::all(Database& database) const {
    std::vector<PlacedPhoto> photos;
    add_photos(database, photos, "sitting", sittings_, [](const PlacedPhoto&) { return true; });
    add_photos(database, photos, "look", looks_,
               [&](const PlacedPhoto& photo) { return !finds_by_sitting(photo); });
    add_photos(database, photos, "id", photos_, [&](const PlacedPhoto& photo) {
        return !finds_by_sitting(photo) && !finds_by_look(photo);
    });
    return photos;
}

}  // namespace quarterturn
