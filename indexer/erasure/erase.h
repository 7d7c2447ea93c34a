#pragma once
// Erasure at a client's request, of all of her or of one look: her records, photos and papers,
// their small pictures, the words they were found by, what the history and the free pages of the
// records still held. What stays is that something was erased, and the day. The records go first,
// in one step that also lists the files to remove, so that an interrupted erasure is taken up
// again. What the disk itself keeps of removed files, and copies that lie elsewhere, are out of
// reach.

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "indexer/record/erasure.h"
#include "indexer/store/erasure_sought.h"
#include "indexer/store/library.h"

namespace quarterturn {

inline constexpr const char* erasure_caution =
    "Other copies, such as on other disks, folders you exported and what a disk keeps of removed "
    "files, may still hold what is erased: erase there as well. Whether the law asks you to keep "
    "something, such as invoices, is not for the program to say.";

enum class SharedPhotos { stay, go };

struct ErasurePlan {
    Client client;
    std::optional<Look> only;         // this look alone, with its photos and recipe
    std::vector<Photo> photos;        // that go: of her looks, and of her sittings
    std::vector<Photo> others_shown;  // of these, those that show other clients too
    // Of other clients' looks or sittings, but they show her: they stay unless asked.
    std::vector<Photo> shared;
    std::vector<Look> looks;
    std::vector<Sitting> sittings;
    std::vector<Wedding> weddings;    // of which nobody else is: they go with her
    std::vector<Exported> out_there;  // of her photos, and not taken down
    std::vector<Backup> backups;      // that may hold her
    bool name_is_hers_alone = true;   // else it stays in the texts of others, which are named
};

// Throws StoreError when there is no such client.
ErasurePlan plan_erasure(Library& library, ClientId client, SharedPhotos shared);

// Throws StoreError when there is no such look.
ErasurePlan plan_look_erasure(Library& library, LookId look);

// The client's, or that of the one look: to be typed again before it goes.
const std::string& name_of_what_goes(const ErasurePlan& plan);

// Where her photos went and were not taken down: a sheet of many photos stands once.
std::set<std::string> files_out_there(const ErasurePlan& plan);

// A sentence after another one, that the backup may not be gone on with; empty where neither the
// library nor the backup, as far as it is at hand, ever had a lock. Throws StoreError.
std::string unless_locked_since(Library& library, const Backup& backup);

// What will go, and what stays and why, in sentences. Throws StoreError.
std::vector<std::string> erasure_words(Library& library, const ErasurePlan& plan);

// What is of others and names her, as it will be found when she is gone.
struct NamedByOthers {
    std::vector<NamedPlace> places;
    std::vector<std::string> alike;  // sentences: named with a part of her name, which stays
};

// Nothing where one look alone goes. Throws StoreError.
NamedByOthers named_by_others(Library& library, const ErasurePlan& plan);

// From where her name will go, and where it stays to be looked at, in sentences.
std::vector<std::string> naming_words(const NamedByOthers& named);

struct Erased {
    Erasure erasure;
    std::vector<std::string> left;   // sentences: what the library holds of her still, or may hold
    std::vector<std::string> alike;  // as of NamedByOthers
};

// What the library's files may hold of it still when it is gone, in sentences. Reads those that no
// record names. Throws StoreError and DiskError.
std::vector<std::string> left_beforehand(Library& library, const ErasurePlan& plan);

// Where a file cannot be removed, or another program has the library open, that is said in `left`
// and the erasure is not finished; finish_erasures takes it up. Throws StoreError while another
// program moves photos, and erases nothing, while a file lies there that a lock left as it was and
// that may be one of those to go (left_locked.h).
Erased erase(Library& library, const ErasurePlan& plan, Date today);

// Goes on with erasures that were interrupted, and with files of the bin; does nothing when there
// are none. Sentences: what one before left and she was not told yet; which are finished now, and
// what is left of them or may be; which are not, and why. Throws StoreError while another program
// moves photos.
std::vector<std::string> finish_erasures(Library& library);

// What finished erasures left to be looked at: of files, until those are gone. Throws StoreError.
std::vector<ErasureLeft> left_by_erasures(Library& library);
// She has looked at all of it. Throws StoreError.
void forget_left_by_erasures(Library& library);
// She was told of all that: finish_erasures does not say it again. Throws StoreError.
void note_told_of_erasures(Library& library);

}  // namespace quarterturn
