#pragma once
// Everything she does that can be undone is one action, kept in the library file, also after a
// restart: changes of tags, clock shifts and the bin for good, edits of other records for a day.
// Whoever did them, they are undone in the order they were done. A new action after an undo drops
// what was undone. What can never be undone stands among them for a day as a stop, so that undoing
// never steps over it to what was done before without a word. What goes after that day is the way
// back alone: consents, sign-offs and the ledger are records of their own, and stay.

#include <chrono>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
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

struct Turned {
    std::string said;               // what was undone or done again, or can never be undone
    bool moves_photos = false;      // by their time, photos may belong into other sittings now
    std::vector<PhotoId> binned{};  // these went into the bin or came out of it
    bool stands = false;            // it can never be undone: nothing was taken back
    int photos_gone = 0;            // of its photos, those that have gone for good since

    bool operator==(std::string_view other) const { return said == other; }
};

class History {
  public:
    explicit History(Database& database) : database_(&database) {}

    // Applies all of it in one transaction. Tags that are as they were are left out; a change with
    // nothing in it makes no action. Throws StoreError for a photo or device that is not there.
    void apply(const Change& change);
    // Runs `act` in one transaction. What it changed in her records (journal_tables.h) is one
    // action together with what it applied itself; when that is nothing, there is none. Throws what
    // `act` throws, and has changed nothing then.
    void record(const std::string& said, const std::function<void()>& act);
    // What was just done, in the same transaction, can never be undone: it becomes a stop. The same
    // said again and again is one.
    void stop_at(const std::string& said);
    // What was undone, or nothing when there is nothing. At a stop nothing is undone, and the stop
    // is let go: the next undo goes on. Only what the action changed goes back: a
    // place by time that a photo got since stays. Throws StoreError, and leaves the records as they
    // are, when they were changed again since, which lets the action go, since it can never be
    // undone, and when other records hang on one that would go.
    std::optional<Turned> undo();
    std::optional<Turned> redo();

    bool can_undo();
    bool can_redo();

    // The number of the newest action that stands; 0 when there is none. It tells whether something
    // that ran in between made an action.
    std::int64_t newest();

    // Lets go of edits from more than a day ago (journal_hours), by the clock and by the day that
    // is sure (days_opened.h). Asked when a library is opened, before that day is noted.
    void let_old_edits_go();

  private:
    Database* database_;
};

}  // namespace quarterturn
