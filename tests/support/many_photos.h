#pragma once
// A library of many photos, written straight into its records: no files, a sitting for every 40
// photos, a client for every 10 sittings, a look for each sitting, notes here and there.

#include <SQLiteCpp/SQLiteCpp.h>

#include <string>

#include "indexer/store/library.h"

namespace quarterturn {

// `count` photos, a minute apart within a sitting, sittings a day apart. Every 25th photo is in no
// sitting, every 10th has a flaw, and every 50th a note with "comb" in it.
inline void fill_with_photos(Library& library, int count) {
    SQLite::Database& records = library.database().handle();
    const std::string photos = std::to_string(count);
    const std::string sittings = std::to_string((count + 39) / 40);
    const std::string clients = std::to_string((count + 399) / 400);
    const auto numbers = [](const std::string& to) {
        return "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < " + to +
               ") ";
    };
    const std::string first_day = "1577869200000000000";  // 2020-01-01T09:00
    const std::string day = "86400000000000";
    records.exec("BEGIN");
    records.exec("INSERT INTO device (make, model, serial) VALUES ('Larkmoor', 'P3', '')");
    records.exec(numbers(clients) +
                 "INSERT INTO client (name, folded_name, note) "
                 "SELECT 'Client ' || i, 'client ' || i, '' FROM n");
    records.exec(numbers(sittings) +
                 "INSERT INTO sitting (client, kind, starts, ends, note) SELECT 1 + (i - 1) / 10, "
                 "'trial', " +
                 first_day + " + i * " + day + ", " + first_day + " + i * " + day +
                 " + 7200000000000, '' FROM n");
    records.exec(numbers(sittings) +
                 "INSERT INTO look (client, name, folded_name, worn) "
                 "SELECT 1 + (i - 1) / 10, 'Bun ' || i, 'bun ' || i, 'ceremony' FROM n");
    records.exec("INSERT INTO look_sitting (look, place, sitting) SELECT id, 0, id FROM look");
    records.exec(
        numbers(photos) + ", t (i, taken) AS (SELECT i, " + first_day + " + (1 + (i - 1) / 40) * " +
        day +
        " + i % 40 * 60000000000 FROM n) "
        "INSERT INTO photo (name, folded_name, path, folded_path, sha256, bytes, width, height, "
        "orientation, taken, fraction_digits, device, moment, sitting, look, stage, angle, flaws, "
        "note, frontal_face, profile_to_left, profile_to_right) SELECT 'IMG_' || i || '.jpg', "
        "'img_' || i || '.jpg', 'photos/' || i || '.jpg', "
        "'photos/' || i || '.jpg', printf('%064x', i), 1000, 1500, 2000, 1, taken, 0, 1, taken, "
        "iif(i % 25 = 0, NULL, 1 + (i - 1) / 40), iif(i % 3 = 0, 1 + (i - 1) / 40, NULL), "
        "iif(i % 3 = 0, 'after', NULL), iif(i % 3 = 0, 'left', NULL), "
        "iif(i % 10 = 0, 'out of focus', ''), iif(i % 50 = 0, 'the comb sits low', ''), 0, 0, 0 "
        "FROM t");
    records.exec("COMMIT");
    library.search().rebuild();
}

}  // namespace quarterturn
