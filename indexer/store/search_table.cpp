#include "indexer/store/search_table.h"

#include <algorithm>
#include <utility>

#include "indexer/store/first_found.h"
#include "indexer/store/photos_with_words.h"
#include "indexer/store/search_words.h"
#include "indexer/store/word_places.h"

namespace quarterturn {
namespace {

// Numbers and fixed words stand in the statement itself, so that SQLite chooses its indexes by
// them; nothing that she typed does.
class Conditions {
  public:
    void add(const std::string& condition) { sql_ += " AND " + condition; }
    template <class Row>
    void equal(const std::string& column, const std::optional<Id<Row>>& id) {
        if (id) add(column + " = " + std::to_string(id->value));
    }
    template <class Word>
    requires std::is_enum_v<Word>
    void equal(const std::string& column, const std::optional<Word>& value) {
        if (value) add(column + " = '" + std::string(word(*value)) + "'");
    }
    const std::string& sql() const { return sql_; }

  private:
    std::string sql_ = "TRUE";
};

std::string nanoseconds(std::chrono::local_days day) {
    return std::to_string(LocalTime(day).time_since_epoch().count());
}

std::string concerns(ClientId client) {
    const std::string number = std::to_string(client.value);
    return "(sitting IN (SELECT id FROM sitting WHERE client = " + number +
           ") OR look IN (SELECT id FROM look WHERE client = " + number +
           ") OR id IN (SELECT photo FROM photo_shown WHERE client = " + number + "))";
}

std::string conditions_of(const PhotoSearch& search) {
    Conditions conditions;
    conditions.add(search.binned ? "binned IS NOT NULL" : "binned IS NULL");
    conditions.equal("look", search.look);
    conditions.equal("sitting", search.sitting);
    conditions.equal("stage", search.stage);
    conditions.equal("angle", search.angle);
    conditions.equal("device", search.device);
    if (search.client) conditions.add(concerns(*search.client));
    if (search.from)
        conditions.add("moment >= " + nanoseconds(std::chrono::local_days(*search.from)));
    if (search.to) {
        conditions.add("moment < " +
                       nanoseconds(std::chrono::local_days(*search.to) + std::chrono::days(1)));
    }
    if (search.unplaced) conditions.add("sitting IS NULL");
    if (search.untagged) conditions.add("(angle IS NULL OR stage IS NULL)");
    if (search.flawed) conditions.add("flaws <> ''");
    return conditions.sql();
}

const std::string newest_first = " ORDER BY moment DESC, id DESC";

// Where words are looked for among the newest, before all that have them are gathered: enough for
// the first page of words that one photo in twelve has. Of rarer ones all are gathered as quickly.
constexpr int most_looked_through = 8000;

class NewestFirst {
  public:
    NewestFirst(Database& database, const PhotoSearch& search)
        : statement_(database, "SELECT id, sitting, moment, look FROM photo WHERE " +
                                   conditions_of(search) + newest_first) {}
    bool step() {
        if (!statement_.step()) return false;
        statement_.read(photo_.id, photo_.sitting, photo_.moment, look_);
        return true;
    }
    const FoundPhoto& photo() const { return photo_; }
    bool has_all(const std::vector<WordPlaces>& words) const {
        const PlacedPhoto placed{photo_.id, photo_.sitting, look_};
        return std::ranges::all_of(words,
                                   [&](const WordPlaces& word) { return word.find(placed); });
    }

  private:
    Statement statement_;
    FoundPhoto photo_;
    std::optional<LookId> look_;
};

}  // namespace

FirstFound first_found(Database& database, const PhotoSearch& search, int at_most) {
    const auto queries = word_queries(search.words);
    const auto all = [&] { return FirstFound{SearchTable(database).find(search), true}; };
    if (any_is_rare(database, queries)) return all();
    std::vector<WordPlaces> words;
    for (const WordQuery& query : queries) words.emplace_back(database, query);
    FirstFound first;
    NewestFirst newest(database, search);
    for (int looked_through = 0; newest.step(); ++looked_through) {
        if (looked_through == most_looked_through && !words.empty()) return all();
        if (!newest.has_all(words)) continue;
        first.all = std::cmp_less(first.photos.size(), at_most);
        if (!first.all) return first;
        first.photos.push_back(newest.photo());
    }
    return first;
}

std::vector<FoundPhoto> SearchTable::find(const PhotoSearch& search) {
    const auto queries = word_queries(search.words);
    std::string conditions = conditions_of(search);
    std::string with_words;
    if (!queries.empty()) {
        with_words = json_list(std::span<const PhotoId>(photos_with_all(*database_, queries)));
        conditions += " AND id IN (SELECT value FROM json_each(?))";
    }
    Statement statement(*database_,
                        "SELECT id, sitting, moment FROM photo WHERE " + conditions + newest_first);
    if (!queries.empty()) statement.with(with_words);
    return statement.rows([](const Statement& row) {
        FoundPhoto found;
        row.read(found.id, found.sitting, found.moment);
        return found;
    });
}

void SearchTable::rebuild() {
    Transaction transaction(*database_);
    run(*database_, "DELETE FROM words");
    run(*database_, "INSERT INTO words (words) VALUES ('rebuild')");
    run(*database_,
        "INSERT INTO words (rowid, text) SELECT record * 8 + kind, text FROM record_words "
        "WHERE text IS NOT NULL");
    transaction.commit();
}

}  // namespace quarterturn
