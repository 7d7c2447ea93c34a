#include "indexer/store/sitting_table.h"

#include <algorithm>

#include "indexer/store/search_words.h"
#include "indexer/store/some_records.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

const std::string select_sittings =
    "SELECT id, client, wedding, kind, starts, ends, note FROM sitting ";
const std::string sittings_in_order = " ORDER BY starts, id";

Sitting sitting_in(const Statement& row) {
    Sitting sitting;
    row.read(sitting.id, sitting.client, sitting.wedding, sitting.kind, sitting.starts,
             sitting.ends, sitting.note);
    return sitting;
}

void check(const Sitting& sitting) {
    refuse_unless_text("the sitting's note", sitting.note);
    if (sitting.ends < sitting.starts) {
        throw StoreError("The sitting ends (" + iso_text(sitting.ends) + ") before it starts (" +
                         iso_text(sitting.starts) + "): correct one of the two.");
    }
}

}  // namespace

SittingId SittingTable::add(const Sitting& sitting) {
    check(sitting);
    Transaction transaction(*database_);
    const auto id = insert<SittingId>(
        *database_,
        "INSERT INTO sitting (client, wedding, kind, starts, ends, note) VALUES (?, ?, ?, ?, ?, ?)",
        sitting.client, sitting.wedding, sitting.kind, sitting.starts, sitting.ends, sitting.note);
    index_words(*database_, WordsOf::sitting, id);
    transaction.commit();
    return id;
}

void SittingTable::change(const Sitting& sitting) {
    check(sitting);
    Transaction transaction(*database_);
    update_one(*database_, "sitting " + std::to_string(sitting.id.value),
               "UPDATE sitting SET client = ?, wedding = ?, kind = ?, starts = ?, ends = ?, "
               "note = ? WHERE id = ?",
               sitting.client, sitting.wedding, sitting.kind, sitting.starts, sitting.ends,
               sitting.note, sitting.id);
    index_words(*database_, WordsOf::sitting, sitting.id);
    transaction.commit();
}

std::optional<Sitting> SittingTable::find(SittingId id) {
    return Statement(*database_, select_sittings + "WHERE id = ?").with(id).first(sitting_in);
}

std::vector<Sitting> SittingTable::all() {
    return Statement(*database_, select_sittings + sittings_in_order).rows(sitting_in);
}

std::vector<Sitting> SittingTable::of_client(ClientId client) {
    return Statement(*database_, select_sittings + "WHERE client = ?" + sittings_in_order)
        .with(client)
        .rows(sitting_in);
}

namespace {

std::optional<LocalTime> begin_of(const std::optional<Date>& day) {
    if (!day) return std::nullopt;
    return LocalTime(std::chrono::local_days(*day));
}

std::chrono::year_month month_of_day(Date day) {
    return day.year() / day.month();
}

// "SELECT a day of the month, how many": of each month.
std::vector<std::pair<std::chrono::year_month, int>> counted(Statement& statement) {
    return statement.rows([](const Statement& row) {
        Date day{};
        int count = 0;
        row.read(day, count);
        return std::pair(month_of_day(day), count);
    });
}

// An index counts those of a month sooner than it tells their days.
std::vector<std::pair<std::chrono::year_month, int>> sittings_of_months(Database& database,
                                                                        Date before) {
    std::vector<std::pair<std::chrono::year_month, int>> counts;
    const auto first = Statement(database, "SELECT starts FROM sitting ORDER BY starts LIMIT 1")
                           .value<LocalTime>();
    if (!first) return counts;
    const LocalTime end{std::chrono::local_days(before)};
    Statement count(database, "SELECT count(*) FROM sitting WHERE starts >= ? AND starts < ?");
    auto month = month_of_day(date_of(*first));
    for (LocalTime from = *first; from < end;) {
        const LocalTime next{
            std::chrono::local_days((month + std::chrono::months(1)) / std::chrono::day(1))};
        const int sittings = count.with(from, std::min(next, end)).value<int>().value_or(0);
        if (sittings > 0) counts.emplace_back(month, sittings);
        from = next;
        month += std::chrono::months(1);
    }
    return counts;
}

// A wedding-day sitting on the day of its wedding belongs to that.
std::vector<std::pair<std::chrono::year_month, int>> sittings_of_wedding_days(Database& database,
                                                                              Date before) {
    Statement statement(database,
                        "SELECT min(date), count(*) FROM wedding CROSS JOIN sitting "
                        "ON sitting.wedding = wedding.id WHERE date < ? AND kind = 'wedding day' "
                        "AND date = strftime('%Y-%m-%d', starts / 1000000000, 'unixepoch') "
                        "GROUP BY substr(date, 1, 7)");
    return counted(statement.with(before));
}

}  // namespace

std::vector<Sitting> SomeRecords::sittings_on(const DaysFrom& days) {
    return Statement(*database_, select_sittings +
                                     "WHERE starts >= coalesce(?, -9223372036854775807) AND starts "
                                     "< coalesce(?, 9223372036854775807)" +
                                     sittings_in_order)
        .with(begin_of(days.first), begin_of(days.end))
        .rows(sitting_in);
}

std::vector<Sitting> SomeRecords::sittings(std::span<const SittingId> ids) {
    const std::string list = json_list(ids);
    return Statement(*database_, select_sittings + "WHERE id IN (SELECT value FROM json_each(?))" +
                                     sittings_in_order)
        .with(list)
        .rows(sitting_in);
}

std::vector<MonthCount> SomeRecords::months_before(Date day) {
    std::map<std::chrono::year_month, MonthCount, std::greater<>> months;
    Statement weddings(*database_,
                       "SELECT min(date), count(*) FROM wedding WHERE date < ? "
                       "GROUP BY substr(date, 1, 7)");
    for (const auto& [month, count] : counted(weddings.with(day))) months[month].weddings = count;
    for (const auto& [month, count] : sittings_of_months(*database_, day)) {
        months[month].sittings += count;
    }
    for (const auto& [month, count] : sittings_of_wedding_days(*database_, day)) {
        months[month].sittings -= count;
    }
    std::vector<MonthCount> counts;
    for (auto& [month, count] : months) {
        count.month = month;
        counts.push_back(count);
    }
    return counts;
}

std::map<SittingId, ClientId> SomeRecords::clients_of(std::span<const SittingId> sittings) {
    const std::string list = json_list(sittings);
    std::map<SittingId, ClientId> clients;
    Statement statement(
        *database_, "SELECT id, client FROM sitting WHERE id IN (SELECT value FROM json_each(?))");
    statement.with(list);
    while (statement.step()) {
        SittingId sitting;
        ClientId client;
        statement.read(sitting, client);
        clients.emplace(sitting, client);
    }
    return clients;
}

}  // namespace quarterturn
