#pragma once
// How a photo lies in its table, for PhotoTable and History.

#include <string>

#include "indexer/record/photo.h"
#include "indexer/store/statement.h"

namespace quarterturn {

std::string photos_sql(const std::string& where);
std::vector<Photo> photos_in(Statement& statement);  // of a statement of photos_sql

// The photos that `where` selects, in the order of moments; also those that lie in the bin.
template <class... Values>
std::vector<Photo> select_all_photos(Database& database, const std::string& where,
                                     const Values&... values) {
    Statement statement(database, photos_sql(where));
    return photos_in(statement.with(values...));
}

// The same without the bin.
template <class... Values>
std::vector<Photo> select_photos(Database& database, const std::string& where,
                                 const Values&... values) {
    return select_all_photos(database, "(" + where + ") AND photo.binned IS NULL", values...);
}

// Who is shown twice is shown.
void remove_repeats(std::vector<ClientId>& clients);

// Writes all that belongs to Tags. Throws StoreError when a text in them is no text.
void write_tags(Database& database, PhotoId id, const Tags& tags);

// Works out the moments anew, for the photos that `where` selects by one value.
template <class Value>
void write_moments(Database& database, const std::string& where, const Value& value) {
    run(database,
        "UPDATE photo SET moment = taken + 1000000000 * "
        "coalesce((SELECT clock_shift FROM device WHERE device.id = photo.device), 0) WHERE " +
            where,
        value);
}

}  // namespace quarterturn
