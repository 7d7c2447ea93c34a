// What LookTable keeps of a look's shot list: its lines and what is waived of them.

#include "indexer/store/look_table.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

// No look stands for her own default.
using ListOwner = std::optional<LookId>;

std::optional<std::int64_t> find_list(Database& database, ListOwner owner) {
    return Statement(database, "SELECT id FROM shot_list WHERE look IS ?")
        .with(owner)
        .value<std::int64_t>();
}

std::optional<ShotList> read_list(Database& database, ListOwner owner) {
    const auto list = find_list(database, owner);
    if (!list) return std::nullopt;
    return Statement(database,
                     "SELECT stage, angle, need FROM shot_line WHERE list = ? "
                     "ORDER BY place")
        .with(*list)
        .rows([](const Statement& row) {
            ShotLine line;
            row.read(line.shot.stage, line.shot.angle, line.need);
            return line;
        });
}

bool has_line(const ShotList& list, const Shot& shot) {
    return std::ranges::any_of(list, [&](const ShotLine& line) { return line.shot == shot; });
}

void refuse_repeated_lines(const ShotList& list) {
    for (auto line = list.begin(); line != list.end(); ++line) {
        if (has_line({list.begin(), line}, line->shot)) {
            throw StoreError("The shot list asks for \"" + shot_text(line->shot) +
                             "\" twice: leave one of the two out.");
        }
    }
}

void write_list(Database& database, ListOwner owner, const ShotList& lines) {
    refuse_repeated_lines(lines);
    Transaction transaction(database);
    run(database, "DELETE FROM shot_list WHERE look IS ?", owner);
    const auto list =
        insert<std::int64_t>(database, "INSERT INTO shot_list (look) VALUES (?)", owner);
    Statement add(database,
                  "INSERT INTO shot_line (list, place, stage, angle, need) VALUES (?, ?, ?, ?, ?)");
    int place = 0;
    for (const ShotLine& line : lines) {
        add.with(list, place++, line.shot.stage, line.shot.angle, line.need).run();
    }
    transaction.commit();
}

}  // namespace

ShotList LookTable::shot_list(LookId look) {
    const auto own = read_list(*database_, look);
    return own ? *own : own_default_shot_list();
}

void LookTable::set_shot_list(LookId look, const ShotList& list) {
    write_list(*database_, look, list);
}

ShotList LookTable::own_default_shot_list() {
    const auto own = read_list(*database_, std::nullopt);
    return own ? *own : default_shot_list();
}

void LookTable::set_own_default_shot_list(const ShotList& list) {
    write_list(*database_, std::nullopt, list);
}

std::vector<Waiver> LookTable::waivers(LookId look) {
    auto waivers = Statement(*database_, "SELECT stage, angle, reason FROM waiver WHERE look = ?")
                       .with(look)
                       .rows([](const Statement& row) {
                           Waiver waiver;
                           row.read(waiver.shot.stage, waiver.shot.angle, waiver.reason);
                           return waiver;
                       });
    std::ranges::sort(waivers, {}, &Waiver::shot);
    return waivers;
}

void LookTable::waive(LookId look, const Waiver& waiver) {
    refuse_unless_name("the reason why \"" + shot_text(waiver.shot) + "\" is waived",
                       waiver.reason);
    if (!has_line(shot_list(look), waiver.shot)) {
        throw StoreError("The shot list of this look has no line \"" + shot_text(waiver.shot) +
                         "\": only what it asks for can be waived.");
    }
    run(*database_,
        "INSERT INTO waiver (look, stage, angle, reason) VALUES (?, ?, ?, ?) "
        "ON CONFLICT DO UPDATE SET reason = excluded.reason",
        look, waiver.shot.stage, waiver.shot.angle, waiver.reason);
}

void LookTable::take_back_waiver(LookId look, const Shot& shot) {
    update_one(*database_, "waiver of \"" + shot_text(shot) + "\" for this look",
               "DELETE FROM waiver WHERE look = ? AND stage = ? AND angle = ?", look, shot.stage,
               shot.angle);
}

}  // namespace quarterturn
