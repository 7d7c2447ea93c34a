#include "indexer/store/morning_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

std::vector<Break> breaks_of(Database& database, WeddingId wedding, int stylist) {
    Statement statement(database,
                        "SELECT begins, ends FROM morning_break WHERE wedding = ? AND stylist = ? "
                        "ORDER BY place");
    return statement.with(wedding, stylist).rows([](const Statement& row) {
        Break pause;
        row.read(pause.begins, pause.ends);
        return pause;
    });
}

std::vector<StylistHours> stylists_of(Database& database, WeddingId wedding) {
    Statement statement(database,
                        "SELECT arrives FROM morning_stylist WHERE wedding = ? ORDER BY stylist");
    std::vector<StylistHours> stylists;
    for (statement.with(wedding); statement.step();) {
        StylistHours hours;
        statement.read(hours.arrives);
        hours.breaks = breaks_of(database, wedding, static_cast<int>(stylists.size()));
        stylists.push_back(std::move(hours));
    }
    return stylists;
}

MorningWish wish_in(const Statement& row) {
    MorningWish wish;
    std::optional<int> before;
    std::optional<int> cooling;
    std::optional<int> may_be_left;
    std::optional<int> after;
    row.read(wish.client, wish.ready_by, wish.arrives, wish.first, wish.last, before, cooling,
             may_be_left, after);
    if (before) {
        wish.work =
            ChairWork{*before, cooling.value_or(0), may_be_left.value_or(0), after.value_or(0)};
    }
    return wish;
}

KeptSeat seat_in(const Statement& row) {
    KeptSeat seat;
    int part = 0;
    row.read(seat.client, part, seat.stylist, seat.begins);
    seat.part = part == 0 ? SeatPart::set : SeatPart::finish;
    return seat;
}

void write_stylists(Database& database, WeddingId wedding,
                    const std::vector<StylistHours>& stylists) {
    int number = 0;
    for (const StylistHours& hours : stylists) {
        run(database, "INSERT INTO morning_stylist (wedding, stylist, arrives) VALUES (?, ?, ?)",
            wedding, number, hours.arrives);
        int place = 0;
        for (const Break& pause : hours.breaks) {
            run(database,
                "INSERT INTO morning_break (wedding, stylist, place, begins, ends) "
                "VALUES (?, ?, ?, ?, ?)",
                wedding, number, place++, pause.begins, pause.ends);
        }
        ++number;
    }
}

void write_wish(Database& database, WeddingId wedding, const MorningWish& wish) {
    MorningWish nothing;
    nothing.client = wish.client;
    if (wish == nothing) return;
    const auto minutes = [&](int ChairWork::*part) {
        return wish.work ? std::optional{*wish.work.*part} : std::nullopt;
    };
    run(database,
        "INSERT INTO morning_wish (wedding, client, ready_by, arrives, first, last, before, "
        "cooling, may_be_left, after) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        wedding, wish.client, wish.ready_by, wish.arrives, wish.first, wish.last,
        minutes(&ChairWork::before), minutes(&ChairWork::cooling), minutes(&ChairWork::may_be_left),
        minutes(&ChairWork::after));
}

}  // namespace

Morning MorningTable::of(WeddingId wedding) {
    Morning morning;
    auto stylists = stylists_of(*database_, wedding);
    if (!stylists.empty()) morning.stylists = std::move(stylists);
    morning.wishes =
        Statement(*database_,
                  "SELECT client, ready_by, arrives, first, last, before, cooling, may_be_left, "
                  "after FROM morning_wish WHERE wedding = ? ORDER BY client")
            .with(wedding)
            .rows(wish_in);
    morning.kept = Statement(*database_,
                             "SELECT client, part, stylist, begins FROM morning_seat "
                             "WHERE wedding = ? ORDER BY begins, stylist, client, part")
                       .with(wedding)
                       .rows(seat_in);
    return morning;
}

void MorningTable::save(WeddingId wedding, const Morning& morning) {
    if (morning.stylists.empty() || morning.stylists.size() > std::size_t{most_stylists}) {
        throw StoreError("A morning has one to " + std::to_string(most_stylists) +
                         " stylists: name a number between.");
    }
    Transaction transaction(*database_);
    for (const char* table : {"morning_stylist", "morning_wish", "morning_seat"}) {
        run(*database_, std::string("DELETE FROM ") + table + " WHERE wedding = ?", wedding);
    }
    write_stylists(*database_, wedding, morning.stylists);
    for (const MorningWish& wish : morning.wishes) write_wish(*database_, wedding, wish);
    for (const KeptSeat& seat : morning.kept) {
        run(*database_,
            "INSERT INTO morning_seat (wedding, client, part, stylist, begins) "
            "VALUES (?, ?, ?, ?, ?)",
            wedding, seat.client, seat.part == SeatPart::set ? 0 : 1, seat.stylist, seat.begins);
    }
    transaction.commit();
}

}  // namespace quarterturn
