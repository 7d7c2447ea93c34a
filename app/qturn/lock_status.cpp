#include "app/qturn/lock_status.h"

#include "app/qturn/say.h"
#include "indexer/store/left_lock.h"
#include "indexer/store/lock_fits.h"
#include "indexer/store/lock_leftovers.h"
#include "indexer/store/past_lock.h"

namespace quarterturn {
namespace {

Reply status_reply(bool locked, bool unfinished, const std::vector<std::string>& left,
                   const std::string& words) {
    Reply reply{{words},
                {{"locked", locked},
                 {"unfinished", unfinished},
                 {"left", left},
                 {"moved", nlohmann::json::array()}}};
    append(reply.lines, left);
    if (unfinished || !left.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

std::string left_text(const std::vector<std::string>& left) {
    return count_text(left.size(), "file or folder", "files or folders");
}

// Of a library without a lock, in which nothing is locked.
Reply status_of_left_key(Session& session, const LockFile& left) {
    return status_reply(false, true, {},
                        "The library is not locked. " +
                            why_left_lock_is_there(real_file_system(), session.folder(), left));
}

Reply status_without_lock(Session& session) {
    (void)session.library();  // where lock.json is lost, this says so
    FileSystem& disk = real_file_system();
    const auto left_lock = read_left_lock(disk, session.folder());
    if (!left_lock) return status_reply(false, false, {}, "The library is not locked.");
    const auto left = locked_without_lock(disk, session.folder());
    if (left.empty()) return status_of_left_key(session, *left_lock);
    return status_reply(
        false, false, left,
        "The library is not locked. Still locked, since it could not be read, or was not there, "
        "when the lock was taken off: " +
            left_text(left) +
            ". The key is kept in lock.left.json: leave that there. See to the disk and to "
            "permissions, and go on with qturn lock remove.");
}

// Told by the keys alone.
std::vector<std::string> moved_in_locked(Session& session) {
    const KeysInHand keys = session.keys_without_asking();
    if (keys == nullptr) return {};
    FileSystem& disk = real_file_system();
    const Path folder = std::filesystem::absolute(session.folder()).lexically_normal();
    refuse_lock_that_does_not_fit(disk, folder, keys);
    LockedFileSystem locked(disk, folder, keys);
    std::vector<std::string> moved;
    for (const Path& file : sealed_past_lock(locked, folder)) {
        moved.push_back(file.lexically_relative(folder).generic_string());
    }
    return moved;
}

void tell_moved(Reply& reply, const std::vector<std::string>& moved) {
    reply.data["moved"] = moved;
    if (moved.empty()) return;
    reply.lines.push_back(
        "Locked, and moved by hand to where nothing looks for it: " + left_text(moved) +
        ". Leave it there; qturn verify gives it its place again where a record "
        "knows it.");
    append(reply.lines, moved);
    reply.outcome = Outcome::needs_attention;
}

Reply status_of_locked(Session& session) {
    const auto moved = moved_in_locked(session);
    const auto left = readable_despite_lock(real_file_system(), session.folder());
    Reply reply =
        status_reply(true, false, left,
                     left.empty() ? "The library is locked."
                                  : "The library is locked. Not locked, for anybody to read who "
                                    "can read the disk: " +
                                        left_text(left) +
                                        ". qturn verify locks what it can, and says what stands "
                                        "in the way of the rest.");
    tell_moved(reply, moved);
    return reply;
}

Reply status_of_half(Session& session, const LockFile& lock) {
    FileSystem& disk = real_file_system();
    refuse_lock_on_plain_library(disk, session.folder(), lock);
    if (const KeysInHand keys = session.keys_without_asking()) {
        refuse_records_of_other_keys(disk, session.folder(), keys);
    }
    return status_reply(
        true, true, {},
        "The library was being locked or unlocked for good, which was interrupted: run another "
        "command, such as qturn photos, and give its passphrase or recovery key, to go on. Where "
        "neither is taken, lock.json may be another library's, put there by hand: move it to where "
        "it belongs, and copy this library's own into the folder from its newest backup, where it "
        "lies beside READ ME.txt.");
}

}  // namespace

Reply lock_status(Session& session) {
    const auto lock = read_lock(real_file_system(), session.folder());
    if (!lock) return status_without_lock(session);
    if (lock->state == LockState::locked) return status_of_locked(session);
    return status_of_half(session, *lock);
}

}  // namespace quarterturn
