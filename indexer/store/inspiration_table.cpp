#include "indexer/store/inspiration_table.h"

#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

const std::string select_inspirations =
    "SELECT id, client, name, path, sha256, kept_at FROM inspiration ";

Inspiration inspiration_in(const Statement& row) {
    Inspiration kept;
    std::string path;
    row.read(kept.id, kept.client, kept.name, path, kept.sha256, kept.kept_at);
    kept.path = path;
    return kept;
}

}  // namespace

InspirationId InspirationTable::add(const Inspiration& inspiration) {
    refuse_unless_name("the picture's name", inspiration.name);
    // It may have been about to go, as a picture that nobody kept any more.
    run(*database_, "DELETE FROM erasure_file WHERE path = ?", inspiration.path.string());
    return insert<InspirationId>(
        *database_,
        "INSERT INTO inspiration (client, name, path, sha256, kept_at) VALUES (?, ?, ?, ?, ?)",
        inspiration.client, inspiration.name, inspiration.path.string(), inspiration.sha256,
        inspiration.kept_at);
}

void InspirationTable::remove(InspirationId id) {
    update_one(*database_, "inspiration " + std::to_string(id.value),
               "DELETE FROM inspiration WHERE id = ?", id);
}

std::optional<Inspiration> InspirationTable::find(InspirationId id) {
    return Statement(*database_, select_inspirations + "WHERE id = ?")
        .with(id)
        .first(inspiration_in);
}

std::optional<Inspiration> InspirationTable::of_client(ClientId client, std::string_view sha256) {
    return Statement(*database_, select_inspirations + "WHERE client = ? AND sha256 = ?")
        .with(client, sha256)
        .first(inspiration_in);
}

std::vector<std::string> InspirationTable::names_among(std::span<const PhotoId> photos) {
    Statement rows(*database_,
                   "SELECT name FROM photo WHERE id IN (SELECT value FROM json_each(?)) "
                   "AND sha256 IN (SELECT sha256 FROM inspiration) ORDER BY id");
    const std::string ids = json_list(photos);
    return rows.with(ids).rows([](const Statement& row) {
        std::string name;
        row.read(name);
        return name;
    });
}

std::vector<Inspiration> InspirationTable::all() {
    return Statement(*database_, select_inspirations + "ORDER BY id").rows(inspiration_in);
}

std::vector<Inspiration> InspirationTable::of_client(ClientId client) {
    return Statement(*database_, select_inspirations + "WHERE client = ? ORDER BY id")
        .with(client)
        .rows(inspiration_in);
}

}  // namespace quarterturn
