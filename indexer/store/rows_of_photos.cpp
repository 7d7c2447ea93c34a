#include "indexer/store/rows_of_photos.h"

#include <algorithm>

#include "indexer/store/search_words.h"
#include "indexer/store/statement.h"

namespace quarterturn {

RowsOfPhotos rows_of(Database& database, std::span<const PhotoId> photos) {
    Statement statement(
        database,
        "SELECT photo.id, look.id, sitting.id, sitting.client, look.client, sitting.wedding, "
        "look.wedding, photo_shown.client FROM photo LEFT JOIN sitting ON sitting.id = "
        "photo.sitting LEFT JOIN look ON look.id = photo.look LEFT JOIN photo_shown ON "
        "photo_shown.photo = photo.id WHERE photo.id IN (SELECT value FROM json_each(?))");
    statement.with(json_list(photos));
    RowsOfPhotos rows;
    while (statement.step()) {
        PhotoId photo;
        std::optional<LookId> look;
        std::optional<SittingId> sitting;
        std::optional<ClientId> client, looks_client, shown;
        std::optional<WeddingId> wedding, looks_wedding;
        statement.read(photo, look, sitting, client, looks_client, wedding, looks_wedding, shown);
        auto& own = rows[photo];
        const auto add = [&](WordsOf kind, const auto& record) {
            if (!record) return;
            const std::int64_t row = words_row(kind, record->value);
            if (std::ranges::find(own, row) == own.end()) own.push_back(row);
        };
        add(WordsOf::photo, std::optional(photo));
        add(WordsOf::recipe, look);
        add(WordsOf::look, look);
        add(WordsOf::sitting, sitting);
        add(WordsOf::client, client);
        add(WordsOf::client, looks_client);
        add(WordsOf::client, shown);
        add(WordsOf::wedding, wedding);
        add(WordsOf::wedding, looks_wedding);
    }
    return rows;
}

std::vector<std::int64_t> all_of(const RowsOfPhotos& rows) {
    std::vector<std::int64_t> all;
    for (const auto& [photo, own] : rows) all.insert(all.end(), own.begin(), own.end());
    std::ranges::sort(all);
    const auto repeated = std::ranges::unique(all);
    all.erase(repeated.begin(), repeated.end());
    return all;
}

}  // namespace quarterturn
