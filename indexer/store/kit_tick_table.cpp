#include "indexer/store/kit_tick_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {

void KitTickTable::set(WeddingId wedding, std::string_view item, std::int64_t count) {
    run(*database_,
        "INSERT INTO kit_tick (wedding, item, count) VALUES (?, ?, ?) "
        "ON CONFLICT (wedding, item) DO UPDATE SET count = excluded.count",
        wedding, item, count);
}

void KitTickTable::clear(WeddingId wedding, std::string_view item) {
    run(*database_, "DELETE FROM kit_tick WHERE wedding = ? AND item = ?", wedding, item);
}

std::map<std::string, std::int64_t> KitTickTable::of_wedding(WeddingId wedding) {
    std::map<std::string, std::int64_t> ticks;
    Statement rows(*database_, "SELECT item, count FROM kit_tick WHERE wedding = ?");
    rows.with(wedding);
    while (rows.step()) {
        std::string item;
        std::int64_t count = 0;
        rows.read(item, count);
        ticks[item] = count;
    }
    return ticks;
}

}  // namespace quarterturn
