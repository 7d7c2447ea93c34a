#include "indexer/store/history.h"

#include "indexer/store/apply_changes.h"
#include "indexer/store/days_opened.h"
#include "indexer/store/journal.h"
#include "indexer/store/photo_steps.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

std::int64_t begin_action(Database& database, const std::string& said) {
    refuse_unless_text("what was done", said);
    let_actions_go(database, "undone = 1");
    return insert<std::int64_t>(database, "INSERT INTO action (said) VALUES (?)", said);
}

struct Turning {
    std::string_view choice;  // the order in which the next action comes first
    bool undone;
};

struct Action {
    std::int64_t id = 0;
    std::string said;
    int photos_gone = 0;
};

constexpr Turning undoing{.choice = "DESC", .undone = true};
constexpr Turning redoing{.choice = "ASC", .undone = false};

std::optional<Action> next_action(Database& database, const Turning& turning) {
    return Statement(database,
                     "SELECT id, said, photos_gone FROM action WHERE undone = ? ORDER BY id " +
                         std::string(turning.choice))
        .with(!turning.undone)
        .first([](const Statement& row) {
            Action action;
            row.read(action.id, action.said, action.photos_gone);
            return action;
        });
}

void let_action_go(Database& database, const Action& action) {
    let_actions_go(database, "id = " + std::to_string(action.id));
}

// A sitting that an action added is there while its photos stand in it.
Turned follow(Database& database, const Action& action, const Turning& turning) {
    Transaction transaction(database);
    TurnedSteps steps;
    if (turning.undone) {
        steps = take_steps_back(database, action.id);
        take_back_entry(database, action.id);
    } else {
        do_entry_again(database, action.id);
        steps = take_steps_again(database, action.id);
    }
    if (entry_moves_sittings(database, action.id)) steps.moves_photos = true;
    run(database, "UPDATE action SET undone = ? WHERE id = ?", turning.undone, action.id);
    transaction.commit();
    return {.said = action.said,
            .moves_photos = steps.moves_photos,
            .binned = std::move(steps.binned),
            .photos_gone = action.photos_gone};
}

std::optional<Turned> turn(Database& database, const Turning& turning) {
    Transaction transaction(database);
    const auto action = next_action(database, turning);
    if (!action) return std::nullopt;
    if (is_stop(database, action->id)) {
        let_action_go(database, *action);
        transaction.commit();
        return Turned{.said = action->said, .stands = true};
    }
    std::string refused = (turning.undone ? "Not undone: " : "Not done again: ") + action->said;
    try {
        Turned turned = follow(database, *action, turning);
        transaction.commit();
        return turned;
    } catch (const NotApplied& reason) {
        refused += std::string(". ") + reason.what();
        if (!reason.changed_since) throw StoreError(refused);
    }
    let_action_go(database, *action);
    transaction.commit();
    throw StoreError(refused +
                     (turning.undone ? " What was done before it can still be undone." : ""));
}

bool any_action(Database& database, bool undone) {
    return *Statement(database, "SELECT EXISTS (SELECT 1 FROM action WHERE undone = ?)")
                .with(undone)
                .value<bool>();
}

}  // namespace

void History::apply(const Change& change) {
    Transaction transaction(*database_);
    const PhotoSteps steps = photo_steps(*database_, change);
    if (steps.none()) return;
    keep_steps(*database_, begin_action(*database_, change.said), steps);
    take_steps(*database_, steps);
    transaction.commit();
}

void History::record(const std::string& said, const std::function<void()>& act) {
    Transaction transaction(*database_);
    const std::int64_t before = newest();
    JournalRecorder recorder(*database_);
    act();
    const JournalEntry entry = recorder.taken_down();
    if (!entry.empty()) {
        const bool has_its_own = newest() != before;
        keep_entry(*database_, has_its_own ? newest() : begin_action(*database_, said), entry);
    }
    transaction.commit();
}

void History::stop_at(const std::string& said) {
    Transaction transaction(*database_);
    const auto last = next_action(*database_, undoing);
    if (last && last->said == said && is_stop(*database_, last->id)) {
        let_action_go(*database_, *last);
    }
    keep_entry(*database_, begin_action(*database_, said), {});
    transaction.commit();
}

std::optional<Turned> History::undo() {
    return turn(*database_, undoing);
}

std::optional<Turned> History::redo() {
    return turn(*database_, redoing);
}

bool History::can_undo() {
    return any_action(*database_, false);
}

bool History::can_redo() {
    return any_action(*database_, true);
}

std::int64_t History::newest() {
    return Statement(*database_, "SELECT coalesce(max(id), 0) FROM action WHERE NOT undone")
        .value<std::int64_t>()
        .value_or(0);
}

void History::let_old_edits_go() {
    std::string before = "unixepoch() - " + std::to_string(journal_hours * 3600);
    if (const auto sure = sure_day(*database_)) {
        before = "min(" + before + ", unixepoch('" + iso_text(*sure) + "'))";
    }
    const std::string old =
        "id IN (SELECT action FROM records_change WHERE done_at < " + before + ")";
    const auto any = Statement(*database_, "SELECT EXISTS (SELECT 1 FROM action WHERE " + old + ")")
                         .value<bool>();
    if (any != true) return;
    Transaction transaction(*database_);
    let_actions_go(*database_, old);
    transaction.commit();
}

}  // namespace quarterturn
