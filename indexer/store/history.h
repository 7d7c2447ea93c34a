#pragma once
// Every change of tags, clock shifts or the bin is one action, kept in the library file, that can
// be undone and done again, also after a restart. A new action after an undo drops what was undone.

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "indexer/record/photo.h"
#include "indexer/store/database.h"

namespace quarterturn {

struct TagChange {
    PhotoId photo;
    Tags tags;  // as they are to be
};

struct ShiftChange {
    DeviceId device;
    std::chrono::seconds shift{0};  // as it is to be; the device's photos' moments follow
};

struct BinChange {
    PhotoId photo;
    std::optional<Date> binned;  // since when it is to lie in the bin; nothing: not in it
};

struct Change {
    std::string said;  // "tagged 12 photos left"
    std::vector<TagChange> tags{};
    std::vector<ShiftChange> shifts{};
    std::vector<BinChange> binned{};
};

class History {
  public:
    explicit History(Database& database) : database_(&database) {}

    // Applies all of it in one transaction. Tags that are as they were are left out; a change with
    // nothing in it makes no action. Throws StoreError for a photo or device that is not there.
    void apply(const Change& change);
    // What was undone, or nothing when there is nothing. Only what the action changed goes back: a
    // place by time that a photo got since stays.
    std::optional<std::string> undo();
    std::optional<std::string> redo();

    bool can_undo();
    bool can_redo();

    // The number of the newest action that stands; 0 when there is none. It tells whether something
    // that ran in between made an action.
    std::int64_t newest();

  private:
    Database* database_;
};

}  // namespace quarterturn
