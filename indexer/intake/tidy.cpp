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

    void run(std::vector<Photo> photos) {
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

  private:
    // Folders that differ in case alone are one folder on some disks. A file that is gone from its
    // place is not for us to mend.
    bool to_move(const Photo& photo) {
        return folded(folder_of(photo.file.path)) != folded(places_.folder(photo)) &&
               disk_.exists(library_.photo_file(photo));
    }

    void move(const std::vector<Photo>& photos) {
        Transaction transaction{library_.database()};
        const std::vector<Move> moves = plan(photos);
        note(moves);
        for (const Move& move : moves) stand_under_new_name(move);
        sync_new_folders(moves);
        transaction.commit();
        for (const Move& move : moves) disk_.remove(library_.photo_file(move.photo));
        unfinished_.forget();
        for (const Move& move : moves) drop_if_empty(library_.photo_file(move.photo).parent_path());
    }

    std::vector<Move> plan(const std::vector<Photo>& photos) {
        std::vector<Move> moves;
        for (const Photo& photo : photos) {
            std::string to = places_.free_path(places_.folder(photo), photo.file);
            library_.photos().set_path(photo.id, to);
            moves.push_back({photo, std::move(to)});
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
};

}  // namespace

void move_to_folders(Library& library) {
    move_to_folders(library, library.photos().all());
}

void move_to_folders(Library& library, std::vector<Photo> photos) {
    Mover{library}.run(std::move(photos));
}

}  // namespace quarterturn
