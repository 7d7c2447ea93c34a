#include "indexer/store/history.h"

#include <map>

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
struct Step {
    Value before;
    Value after;
};

using TagSteps = std::map<PhotoId, Step<Tags>>;
using ShiftSteps = std::map<DeviceId, Step<Shift>>;

Tags tags_of(Database& database, PhotoId id) {
    auto photos = select_photos(database, "photo.id = ?", id);
    if (photos.empty()) {
        throw StoreError("There is no photo " + std::to_string(id.value) + " in the library.");
    }
    return std::move(photos.front().tags);
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
    std::erase_if(steps, [](const auto& step) { return step.second.before == step.second.after; });
    return steps;
}

ShiftSteps shift_steps(Database& database, const std::vector<ShiftChange>& changes) {
    ShiftSteps steps;
    for (const auto& [device, shift] : changes) {
        const auto [step, is_new] = steps.try_emplace(device);
        if (is_new) step->second.before = shift_of(database, device);
        step->second.after = shift;
    }
    std::erase_if(steps, [](const auto& step) { return step.second.before == step.second.after; });
    return steps;
}

void write_down(Database& database, const std::string& said, const TagSteps& tags,
                const ShiftSteps& shifts) {
    refuse_unless_text("what was done", said);
    run(database, "DELETE FROM action WHERE undone");
    const auto action = insert<ActionId>(database, "INSERT INTO action (said) VALUES (?)", said);
    Statement add_tags(database,
                       "INSERT INTO tag_change (action, photo, before, after) VALUES (?, ?, ?, ?)");
    for (const auto& [photo, step] : tags) {
        add_tags.with(action, photo, tags_json(step.before), tags_json(step.after)).run();
    }
    Statement add_shift(
        database, "INSERT INTO shift_change (action, device, before, after) VALUES (?, ?, ?, ?)");
    for (const auto& [device, step] : shifts) {
        add_shift.with(action, device, step.before, step.after).run();
    }
}

// Brings everything that the action changed to what `side`, before or after, says.
void restore(Database& database, ActionId action, const std::string& side) {
    const auto tags =
        Statement(database, "SELECT photo, " + side + " FROM tag_change WHERE action = ?")
            .with(action)
            .rows([](const Statement& row) {
                std::pair<PhotoId, std::string> change;
                row.read(change.first, change.second);
                return change;
            });
    for (const auto& [photo, json] : tags) write_tags(database, photo, parse_tags_json(json));
    const auto shifts =
        Statement(database, "SELECT device, " + side + " FROM shift_change WHERE action = ?")
            .with(action)
            .rows([](const Statement& row) {
                std::pair<DeviceId, Shift> change;
                row.read(change.first, change.second);
                return change;
            });
    for (const auto& [device, shift] : shifts) write_shift(database, device, shift);
}

// Undoes or does again the action that `choice` (SQL) picks.
std::optional<std::string> turn(Database& database, const std::string& choice,
                                const std::string& side, bool undone) {
    Transaction transaction(database);
    const auto action = Statement(database, "SELECT " + choice + " FROM action WHERE undone = ?")
                            .with(!undone)
                            .first([](const Statement& row) {
                                std::optional<ActionId> id;
                                row.read(id);
                                return id;
                            })
                            .value();
    if (!action) return std::nullopt;
    restore(database, *action, side);
    run(database, "UPDATE action SET undone = ? WHERE id = ?", undone, *action);
    auto said = Statement(database, "SELECT said FROM action WHERE id = ?")
                    .with(*action)
                    .value<std::string>();
    transaction.commit();
    return said;
}

}  // namespace

void History::apply(const Change& change) {
    Transaction transaction(*database_);
    const TagSteps tags = tag_steps(*database_, change.tags);
    const ShiftSteps shifts = shift_steps(*database_, change.shifts);
    if (tags.empty() && shifts.empty()) return;
    write_down(*database_, change.said, tags, shifts);
    for (const auto& [photo, step] : tags) write_tags(*database_, photo, step.after);
    for (const auto& [device, step] : shifts) write_shift(*database_, device, step.after);
    transaction.commit();
}

std::optional<std::string> History::undo() {
    return turn(*database_, "max(id)", "before", true);
}

std::optional<std::string> History::redo() {
    return turn(*database_, "min(id)", "after", false);
}

}  // namespace quarterturn
