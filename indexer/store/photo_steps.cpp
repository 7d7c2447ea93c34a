#include "indexer/store/photo_steps.h"

#include "indexer/store/photo_rows.h"
#include "indexer/store/tags_json.h"

namespace quarterturn {
namespace {

using Shift = std::chrono::seconds;
using TagSteps = std::map<PhotoId, FromTo<Tags>>;
using ShiftSteps = std::map<DeviceId, FromTo<Shift>>;
using BinSteps = std::map<PhotoId, FromTo<std::optional<Date>>>;

// Clocks are off by their whole count at most, and the earliest of them counts from 1904.
constexpr Shift longest_shift = std::chrono::years{150};

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

bool is_placed_otherwise(const Tags& before, const Tags& after) {
    return before.sitting != after.sitting || before.placed_by_hand != after.placed_by_hand;
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
std::vector<AnyRow> journal_rows(Database& database, const std::string& sql, std::int64_t action) {
    return Statement(database, sql).with(action).rows([](const Statement& row) {
        AnyRow result;
        row.read(result.changed, result.from, result.to);
        return result;
    });
}

// Which columns a turn goes from and to.
struct Direction {
    std::string from;
    std::string to;
};

TurnedSteps follow(Database& database, std::int64_t action, const Direction& direction) {
    const std::string columns = ", " + direction.from + ", " + direction.to;
    const auto tag_rows = journal_rows<TagRow>(
        database, "SELECT photo" + columns + " FROM tag_change WHERE action = ?", action);
    TurnedSteps turned;
    for (const auto& [photo, from, to] : tag_rows) {
        const Tags before = parse_tags_json(from);
        const Tags after = parse_tags_json(to);
        if (is_placed_otherwise(before, after)) turned.moves_photos = true;
        write_tags(database, photo, carried_over(tags_of(database, photo), before, after));
    }
    const auto shift_rows = journal_rows<ShiftRow>(
        database, "SELECT device" + columns + " FROM shift_change WHERE action = ?", action);
    for (const auto& [device, from, to] : shift_rows) write_shift(database, device, to);
    if (!shift_rows.empty()) turned.moves_photos = true;
    const auto bin_rows = journal_rows<BinRow>(
        database, "SELECT photo" + columns + " FROM bin_change WHERE action = ?", action);
    for (const auto& [photo, from, to] : bin_rows) {
        write_binned(database, photo, to);
        turned.binned.push_back(photo);
    }
    return turned;
}

}  // namespace

PhotoSteps photo_steps(Database& database, const Change& change) {
    return {that_change(tag_steps(database, change.tags)),
            that_change(shift_steps(database, change.shifts)),
            that_change(bin_steps(database, change.binned))};
}

void take_steps(Database& database, const PhotoSteps& steps) {
    for (const auto& [photo, step] : steps.tags) write_tags(database, photo, step.after);
    for (const auto& [device, step] : steps.shifts) write_shift(database, device, step.after);
    for (const auto& [photo, step] : steps.binned) write_binned(database, photo, step.after);
}

void keep_steps(Database& database, std::int64_t action, const PhotoSteps& steps) {
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

TurnedSteps take_steps_back(Database& database, std::int64_t action) {
    return follow(database, action, {.from = "after", .to = "before"});
}

TurnedSteps take_steps_again(Database& database, std::int64_t action) {
    return follow(database, action, {.from = "before", .to = "after"});
}

}  // namespace quarterturn
