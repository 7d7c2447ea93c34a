#pragma once
// Giving a batch of whole copies their place and their records.

#include <vector>

#include "indexer/intake/incoming.h"
#include "indexer/intake/places.h"
#include "indexer/intake/take.h"
#include "indexer/intake/unfinished.h"

namespace quarterturn {

struct NewPhoto {
    FoundFile source;
    Examined examined;
};

struct SeenFile {
    FoundFile source;
    std::string sha256;
};

struct Recorded {
    Photo photo;
    bool put_back = false;  // recorded before; its file was gone from the library, or had changed
    Path set_aside{};       // where the changed one lies now
    std::string not_put_back{};  // why it could not be
    std::string refused{};       // why it has no record: the disk does not take this one
    bool placed = false;         // its file may lie in its place
};

class BatchRecorder {
  public:
    BatchRecorder(Library& library, Incoming& incoming, Unfinished& unfinished)
        : library_(library), incoming_(incoming), unfinished_(unfinished), places_(library) {}

    // Renames the copies and writes their records, and what was seen, in one transaction. Answers
    // the photos as recorded or refused, in the same order. Throws StoreError, and DiskError where
    // the library's disk is full or gone; nothing is recorded then.
    std::vector<Recorded> record(const std::vector<NewPhoto>& batch,
                                 const std::vector<SeenFile>& seen);

  private:
    bool record_all(const std::vector<NewPhoto>& batch, const std::vector<SeenFile>& seen,
                    std::vector<Recorded>& photos);
    template <class Work>
    void or_refuse(Recorded& recorded, Work work);
    Recorded write(const NewPhoto& fresh);
    Photo complete(const NewPhoto& fresh);
    void remember_copy(const Photo& photo);
    void note_places(const std::vector<Recorded>& photos);
    void move_in(std::vector<Recorded>& photos);
    void sync_folders(std::vector<Recorded>& photos);
    void move_in(Recorded& recorded);
    void put_back(Recorded& recorded);

    Library& library_;
    Incoming& incoming_;
    Unfinished& unfinished_;
    Places places_;
};

}  // namespace quarterturn
