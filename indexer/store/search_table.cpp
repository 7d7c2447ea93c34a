#include "indexer/store/search_table.h"

#include "indexer/store/first_found.h"
#include "indexer/store/photos_with_words.h"
#include "indexer/store/search_words.h"

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

FoundPhoto found_photo_in(const Statement& row) {
    FoundPhoto found;
    row.read(found.id, found.sitting, found.moment);
    return found;
}

const std::string newest_first = " ORDER BY moment DESC, id DESC";

// Where words are looked for among the newest, before all that have them are gathered: enough for
// the first page of words that one photo in twelve has. Of rarer ones all are gathered as quickly.
constexpr int most_looked_through = 8000;

std::vector<FoundPhoto> newest_with(Database& database, const PhotoSearch& search,
                                    const std::vector<WordQuery>& queries, int at_most) {
    const std::string from_photos = " FROM photo WHERE " + conditions_of(search);
    const std::string columns = "SELECT id, sitting, moment";
    if (queries.empty()) {
        return Statement(database, columns + from_photos + newest_first + " LIMIT ?")
            .with(at_most)
            .rows(found_photo_in);
    }
    const WordsCondition words = with_all_of(queries);
    const std::string oldest = "ifnull((SELECT moment" + from_photos + newest_first +
                               " LIMIT 1 OFFSET " + std::to_string(most_looked_through) +
                               "), -9e18)";
    return Statement(database, words.hits + columns + from_photos + " AND moment >= " + oldest +
                                   words.true_for + newest_first + " LIMIT ?2")
        .with(words.values, at_most)
        .rows(found_photo_in);
}

}  // namespace

FirstFound first_found(Database& database, const PhotoSearch& search, int at_most) {
    const auto queries = word_queries(search.words);
    if (any_is_rare(database, queries)) return {SearchTable(database).find(search), true};
    FirstFound found{newest_with(database, search, queries, at_most + 1), false};
    if (found.photos.size() <= static_cast<std::size_t>(at_most)) {
        return {queries.empty() ? std::move(found.photos) : SearchTable(database).find(search),
                true};
    }
    found.photos.pop_back();
    return found;
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
    return statement.rows(found_photo_in);
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
