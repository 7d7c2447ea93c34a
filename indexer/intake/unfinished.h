#pragma once
// A list of the places in photos/ where a file may stand without a record while files are renamed:
// written before the first of them, in incoming/, and read after a crash.

#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

class Unfinished {
  public:
    // Takes up what a run that did not end has left. Throws DiskError.
    explicit Unfinished(Library& library);

    // Before files are renamed. Paths are relative to the library's folder.
    void note(std::vector<std::string> paths);
    // After their records are written.
    void forget();
    // Of one that has no record yet and may stand in its place: for the next run to settle.
    void leave(std::string path) { later_.push_back(std::move(path)); }

    // Removes files that are a second copy, read and found equal, of a photo that is recorded.
    // Answers the files that no record speaks of: photos whose record was not written in time. What
    // cannot be read stays on the list.
    std::vector<Path> settle();

  private:
    enum class Left { nothing, unrecorded, unreadable };

    void write();
    void drop_list();
    Left look_at(const std::string& path, const Path& file);
    bool twin_of_recorded(const Path& file);

    Library& library_;
    std::vector<std::string> left_;   // by the run that did not end
    std::vector<std::string> noted_;  // by this one
    std::vector<std::string> later_;
};

}  // namespace quarterturn
