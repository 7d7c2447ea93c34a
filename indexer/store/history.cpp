#include "indexer/store/history.h"

#include <map>

#include "indexer/store/apply_changes.h"
#include "indexer/store/journal.h"
#include "indexer/store/photo_rows.h"
#include "indexer/store/tags_json.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

using ActionId = Id<struct ActionRow>;
using Shift = std::chrono::seconds;

// Clocks are off by their whole count at most, and the earliest of them counts from 1904.
constexpr Shift longest_shift = std::chrono::years{150};

template <class Value>
struct FromTo {
    Value before;
    Value after;
};

using TagSteps = std::map<PhotoId, FromTo<Tags>>;
using ShiftSteps = std::map<DeviceId, FromTo<Shift>>;
using BinSteps = std::map<PhotoId, FromTo<std::optional<Date>>>;

struct Steps {
    TagSteps tags;
    ShiftSteps shifts;
    BinSteps binned;

    bool none() const { return tags.empty() && shifts.empty() && binned.empty(); }
};

[[noreturn]] void refuse_photo(PhotoId id) {
    throw StoreError("There is no photo " + std::to_string(id.value) + " in the library.");
}

Tags tags_of(Database& database, PhotoId id) {
    auto photos = select_all_photos(database, "photo.id = ?", id);
    if (photos.empty()) refuse_photo(id);
    return std::move(photos.front().tags);
}

std::optional<Date> binned_of(Database& database, PhotoId id) {
    const auto binned = Statement(database, "SELECT binned FROM photo WHERE id = ?")
                            .with(id)
                            .first([](const Statement& row) {
                                std::optional<Date> day;
                                row.read(day);
                                return day;
                            });
    if (!binned) refuse_photo(id);
    return *binned;
}

void write_binned(Database& database, PhotoId id, std::optional<Date> day) {
    run(database, "UPDATE photo SET binned = ? WHERE id = ?", day, id);
}

Shift shift_of(Database& database, DeviceId id) {
    const auto shift =
        Statement(database, "SELECT clock_shift FROM device WHERE id = ?").with(id).value<Shift>();
    if (!shift) {
        throw StoreError("There is no device " + std::to_string(id.value) + " in the library.");
    }
    return *shift;
}

void write_shift(Database& database, DeviceId id, Shift shift) {
    if (shift > longest_shift || shift < -longest_shift) {
        throw StoreError("A clock cannot be off by more than 150 years: correct the shift.");
    }
    run(database, "UPDATE device SET clock_shift = ? WHERE id = ?", shift, id);
    write_moments(database, "device = ?", id);
}

// What the change would alter; the last word on a photo or device counts.
TagSteps tag_steps(Database& database, const std::vector<TagChange>& changes) {
    TagSteps steps;
    for (const auto& [photo, tags] : changes) {
        const auto [step, is_new] = steps.try_emplace(photo);
        if (is_new) step->second.before = tags_of(database, photo);
        step->second.after = tags;
        remove_repeats(step->second.after.shown);
    }
    return steps;
}

ShiftSteps shift_steps(Database& database, const std::vector<ShiftChange>& changes) {
    ShiftSteps steps;
    for (const auto& [device, shift] : changes) {
        const auto [step, is_new] = steps.try_emplace(device);
        if (is_new) step->second.before = shift_of(database, device);
        step->second.after = shift;
    }
    return steps;
}

BinSteps bin_steps(Database& database, const std::vector<BinChange>& changes) {
    BinSteps steps;
    for (const auto& [photo, binned] : changes) {
        const auto [step, is_new] = steps.try_emplace(photo);
        if (is_new) step->second.before = binned_of(database, photo);
        step->second.after = binned;
    }
    return steps;
}

template <class AnySteps>
AnySteps that_change(AnySteps steps) {
    std::erase_if(steps, [](const auto& step) { return step.second.before == step.second.after; });
    return steps;
}

Steps steps_of(Database& database, const Change& change) {
    return {that_change(tag_steps(database, change.tags)),
            that_change(shift_steps(database, change.shifts)),
            that_change(bin_steps(database, change.binned))};
}

ActionId begin_action(Database& database, const std::string& said) {
    refuse_unless_text("what was done", said);
    let_actions_go(database, "undone = 1");
    return insert<ActionId>(database, "INSERT INTO action (said) VALUES (?)", said);
}

void write_down(Database& database, const std::string& said, const Steps& steps) {
    const ActionId action = begin_action(database, said);
    Statement add_tags(database,
                       "INSERT INTO tag_change (action, photo, before, after) VALUES (?, ?, ?, ?)");
    for (const auto& [photo, step] : steps.tags) {
        add_tags.with(action, photo, tags_json(step.before), tags_json(step.after)).run();
    }
    Statement add_shift(
        database, "INSERT INTO shift_change (action, device, before, after) VALUES (?, ?, ?, ?)");
    for (const auto& [device, step] : steps.shifts) {
        add_shift.with(action, device, step.before, step.after).run();
    }
    Statement add_bin(database,
                      "INSERT INTO bin_change (action, photo, before, after) VALUES (?, ?, ?, ?)");
    for (const auto& [photo, step] : steps.binned) {
        add_bin.with(action, photo, step.before, step.after).run();
    }
}

// `now` with what differs between `from` and `to` as it is in `to`. The rest stays: a photo may
// have been placed by its time since, which is no action of hers.
Tags carried_over(Tags now, const Tags& from, const Tags& to) {
    const auto carry = [&](auto field) {
        if (from.*field != to.*field) now.*field = to.*field;
    };
    carry(&Tags::sitting);
    carry(&Tags::placed_by_hand);
    carry(&Tags::look);
    carry(&Tags::stage);
    carry(&Tags::angle);
    carry(&Tags::mirrored);
    carry(&Tags::shown);
    carry(&Tags::note);
    carry(&Tags::accepted_because);
    return now;
}

template <class Row, class Value>
struct JournalRow {
    Row changed;
    Value from;
    Value to;
};

using TagRow = JournalRow<PhotoId, std::string>;
using ShiftRow = JournalRow<DeviceId, Shift>;
using BinRow = JournalRow<PhotoId, std::optional<Date>>;

template <class AnyRow>
std::vector<AnyRow> journal_rows(Database& database, const std::string& sql, ActionId action) {
    return Statement(database, sql).with(action).rows([](const Statement& row) {
        AnyRow result;
        row.read(result.changed, result.from, result.to);
        return result;
    });
}

// Which columns of the journal a turn goes from and to.
struct Direction {
    std::string choice;  // the order in which the next action comes first
    std::string from;
    std::string to;
    bool undone;
};

// Whether there was anything of photos to follow.
bool follow_photos(Database& database, ActionId action, const Direction& direction) {
    const std::string columns = ", " + direction.from + ", " + direction.to;
    const auto tag_rows = journal_rows<TagRow>(
        database, "SELECT photo" + columns + " FROM tag_change WHERE action = ?", action);
    for (const auto& [photo, from, to] : tag_rows) {
        write_tags(
            database, photo,
            carried_over(tags_of(database, photo), parse_tags_json(from), parse_tags_json(to)));
    }
    const auto shift_rows = journal_rows<ShiftRow>(
        database, "SELECT device" + columns + " FROM shift_change WHERE action = ?", action);
    for (const auto& [device, from, to] : shift_rows) write_shift(database, device, to);
    const auto bin_rows = journal_rows<BinRow>(
        database, "SELECT photo" + columns + " FROM bin_change WHERE action = ?", action);
    for (const auto& [photo, from, to] : bin_rows) write_binned(database, photo, to);
    return !tag_rows.empty() || !shift_rows.empty() || !bin_rows.empty();
}

struct Action {
    ActionId id;
    std::string said;
};

std::optional<Action> next_action(Database& database, const Direction& direction) {
    return Statement(database,
                     "SELECT id, said FROM action WHERE undone = ? ORDER BY id " + direction.choice)
        .with(!direction.undone)
        .first([](const Statement& row) {
            Action action;
            row.read(action.id, action.said);
            return action;
        });
}

// A sitting that an action added is there while its photos stand in it.
Turned follow(Database& database, const Action& action, const Direction& direction) {
    Transaction transaction(database);
    Turned turned{action.said};
    if (direction.undone) turned.moves_photos = follow_photos(database, action.id, direction);
    direction.undone ? take_back_entry(database, action.id.value)
                     : do_entry_again(database, action.id.value);
    if (!direction.undone) turned.moves_photos = follow_photos(database, action.id, direction);
    if (entry_moves_sittings(database, action.id.value)) turned.moves_photos = true;
    run(database, "UPDATE action SET undone = ? WHERE id = ?", direction.undone, action.id);
    transaction.commit();
    return turned;
}

std::optional<Turned> turn(Database& database, const Direction& direction) {
    Transaction transaction(database);
    const auto action = next_action(database, direction);
    if (!action) return std::nullopt;
    std::string refused = (direction.undone ? "Not undone: " : "Not done again: ") + action->said;
    try {
        Turned turned = follow(database, *action, direction);
        transaction.commit();
        return turned;
    } catch (const NotApplied& reason) {
        refused += std::string(". ") + reason.what();
        if (!reason.changed_since) throw StoreError(refused);
    }
    let_actions_go(database, "id = " + std::to_string(action->id.value));
    transaction.commit();
    throw StoreError(refused +
                     (direction.undone ? " What was done before it can still be undone." : ""));
}

bool any_action(Database& database, bool undone) {
    return *Statement(database, "SELECT EXISTS (SELECT 1 FROM action WHERE undone = ?)")
                .with(undone)
                .value<bool>();
}

}  // namespace

void History::apply(const Change& change) {
    Transaction transaction(*database_);
    const Steps steps = steps_of(*database_, change);
    if (steps.none()) return;
    write_down(*database_, change.said, steps);
    for (const auto& [photo, step] : steps.tags) write_tags(*database_, photo, step.after);
    for (const auto& [device, step] : steps.shifts) write_shift(*database_, device, step.after);
    for (const auto& [photo, step] : steps.binned) write_binned(*database_, photo, step.after);
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
        keep_entry(*database_, has_its_own ? newest() : begin_action(*database_, said).value,
                   entry);
    }
    transaction.commit();
}

std::optional<Turned> History::undo() {
    return turn(*database_, {.choice = "DESC", .from = "after", .to = "before", .undone = true});
}

std::optional<Turned> History::redo() {
    return turn(*database_, {.choice = "ASC", .from = "before", .to = "after", .undone = false});
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
    const std::string old =
        "id IN (SELECT action FROM records_change WHERE done_at < unixepoch() - " +
        std::to_string(journal_hours * 3600) + ")";
    const auto any = Statement(*database_, "SELECT EXISTS (SELECT 1 FROM action WHERE " + old + ")")
                         .value<bool>();
    if (any != true) return;
    Transaction transaction(*database_);
    let_actions_go(*database_, old);
    transaction.commit();
}

}  // namespace quarterturn
