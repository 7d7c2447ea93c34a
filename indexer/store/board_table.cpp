#include "indexer/store/board_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {

void BoardTable::tick(WeddingId wedding, LookId look, const StepTick& tick) {
    run(*database_,
        "INSERT INTO step_tick (wedding, look, number, words) VALUES (?, ?, ?, ?) "
        "ON CONFLICT (wedding, look, number) DO UPDATE SET words = excluded.words",
        wedding, look, tick.number, tick.words);
}

void BoardTable::untick(WeddingId wedding, LookId look, int number) {
    run(*database_, "DELETE FROM step_tick WHERE wedding = ? AND look = ? AND number = ?", wedding,
        look, number);
}

std::vector<StepTick> BoardTable::ticks(WeddingId wedding, LookId look) {
    Statement rows(*database_,
                   "SELECT number, words FROM step_tick WHERE wedding = ? AND look = ? "
                   "ORDER BY number");
    return rows.with(wedding, look).rows([](const Statement& row) {
        StepTick tick;
        row.read(tick.number, tick.words);
        return tick;
    });
}

TimerId BoardTable::start(const Timer& timer) {
    return insert<TimerId>(*database_,
                           "INSERT INTO timer (wedding, name, begins, ends) VALUES (?, ?, ?, ?)",
                           timer.wedding, timer.name, timer.begins, timer.ends);
}

void BoardTable::stop(TimerId timer) {
    update_one(*database_, "timer " + std::to_string(timer.value), "DELETE FROM timer WHERE id = ?",
               timer);
}

std::vector<Timer> BoardTable::timers(WeddingId wedding) {
    Statement rows(*database_,
                   "SELECT id, wedding, name, begins, ends FROM timer WHERE wedding = ? "
                   "ORDER BY ends, id");
    return rows.with(wedding).rows([](const Statement& row) {
        Timer timer;
        row.read(timer.id, timer.wedding, timer.name, timer.begins, timer.ends);
        return timer;
    });
}

}  // namespace quarterturn
