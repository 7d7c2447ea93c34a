#include <cerrno>
#include <set>
#include <span>
#include <utility>

#include "indexer/disk/checksum.h"
#include "indexer/intake/incoming.h"
#include "indexer/intake/places.h"
#include "indexer/intake/sort_steps.h"
#include "indexer/intake/unfinished.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

constexpr std::size_t batch_moves = 64;

struct Move {
    Photo photo;  // as it is, in its old folder
    std::string to;
};

std::string folder_of(std::string_view path) {
    return std::string{path.substr(0, path.rfind('/'))};
}

bool no_links_here(const DiskError& error) {
    return error.error_number() == EPERM || error.error_number() == ENOTSUP ||
           error.error_number() == EMLINK;
}

class Mover {
  public:
    explicit Mover(Library& library)
        : library_(library), disk_(library.disk()), places_(library), unfinished_(library) {}

    std::vector<DiskError> run(std::vector<Photo> photos) {
        attempt([&] { move_all(std::move(photos)); });
        return std::move(undone_);
    }

  private:
    // What of it the disk does not do is told of; what comes after it goes on.
    template <class Act>
    bool attempt(const Act& act) try {
        act();
        return true;
    } catch (const DiskError& error) {
        undone_.push_back(error);
        return false;
    }

    void move_all(std::vector<Photo> photos) {
        unfinished_.settle();
        std::vector<Photo> batch;
        for (Photo& photo : photos) {
            if (!to_move(photo)) continue;
            batch.push_back(std::move(photo));
            if (batch.size() == batch_moves) move(std::exchange(batch, {}));
        }
        if (!batch.empty()) move(batch);
        unfinished_.settle();
    }

    // Folders that differ in case alone are one folder on some disks. A file that is gone from its
    // place is not for us to mend.
    bool to_move(const Photo& photo) {
        return folded(folder_of(photo.file.path)) != folded(places_.folder(photo)) &&
               disk_.exists(library_.photo_file(photo));
    }

    void move(const std::vector<Photo>& photos) {
        Transaction transaction{library_.database()};
        std::vector<Move> moves = plan(photos);
        note(moves);
        std::erase_if(moves, [&](const Move& move) {
            const bool stands = attempt([&] { stand_under_new_name(move); });
            if (!stands) library_.photos().set_path(move.photo.id, move.photo.file.path);
            return !stands;
        });
        sync_new_folders(moves);
        transaction.commit();
        for (const Move& move : moves) leave_old_name(move.photo);
        unfinished_.forget();
        for (const Move& move : moves) drop_if_empty(library_.photo_file(move.photo).parent_path());
    }

    std::vector<Move> plan(const std::vector<Photo>& photos) {
        std::vector<Move> moves;
        for (const Photo& photo : photos) {
            attempt([&] {
                std::string to = places_.free_path(places_.folder(photo), photo.file);
                library_.photos().set_path(photo.id, to);
                moves.push_back({photo, std::move(to)});
            });
        }
        return moves;
    }

    void note(const std::vector<Move>& moves) {
        std::vector<std::string> paths;
        for (const Move& move : moves) {
            paths.push_back(move.photo.file.path);
            paths.push_back(move.to);
        }
        unfinished_.note(std::move(paths));
    }

    void stand_under_new_name(const Move& move) {
        const Path from = library_.photo_file(move.photo);
        const Path to = library_.folder() / move.to;
        disk_.make_folders(to.parent_path());
        if (disk_.exists(to)) return;  // this photo, whole: free_path() has looked
        try {
            disk_.link_new(from, to);
        } catch (const DiskError& error) {
            if (!no_links_here(error)) throw;
            copy(move.photo, from, to);
        }
    }

    // Where it may not be removed, it is a second copy, which a later run takes away.
    void leave_old_name(const Photo& photo) {
        const bool gone = attempt([&] { disk_.remove(library_.photo_file(photo)); });
        if (!gone) unfinished_.leave(photo.file.path);
    }

    void copy(const Photo& photo, const Path& from, const Path& to) {
        const Bytes bytes = disk_.read(from, photo.file.bytes);
        if (sha256(bytes) != photo.file.sha256) {
            throw DiskError(from.string() +
                                " is no longer the photo that was taken in: put back a good copy "
                                "from a backup or the card.",
                            from, EIO);
        }
        Incoming incoming{library_};
        incoming.put(photo.file.sha256, bytes);
        disk_.rename_new(incoming.part(photo.file.sha256), to);
    }

    void sync_new_folders(const std::vector<Move>& moves) {
        std::set<std::string> folders;
        for (const Move& move : moves) folders.insert(folder_of(move.to));
        for (const std::string& folder : folders) disk_.sync_folder(library_.folder() / folder);
    }

    void drop_if_empty(const Path& folder) try {
        if (disk_.exists(folder) && disk_.list(folder).empty()) disk_.remove_empty_folder(folder);
    } catch (const DiskError&) {
        return;  // an empty folder that stays does no harm
    }

    Library& library_;
    FileSystem& disk_;
    Places places_;
    Unfinished unfinished_;
    std::vector<DiskError> undone_;
};

}  // namespace

std::vector<DiskError> move_to_folders(Library& library) {
    return move_to_folders(library, library.photos().all());
}

std::vector<DiskError> move_to_folders(Library& library, std::vector<Photo> photos) try {
    return Mover{library}.run(std::move(photos));
} catch (const DiskError& error) {
    return {error};
}

std::vector<RefusedFile> refused_files(const std::vector<DiskError>& errors) {
    std::vector<RefusedFile> files;
    for (const DiskError& error : errors) files.push_back({error.file(), error.what()});
    return files;
}

}  // namespace quarterturn
