#pragma once
// What photos are brought in from, kept in the records while that runs: where the program was ended
// in the middle of it, the next one offers to go on. An erasure forgets it where it says the name.

#include <string_view>
#include <vector>

#include "indexer/store/library.h"
#include "indexer/store/sought_names.h"

namespace quarterturn {

class BegunIntake {
  public:
    static BegunIntake once(Library& library) { return {library, "bringing in from"}; }
    static BegunIntake as_they_arrive(Library& library) { return {library, "watched folder"}; }

    void keep(const std::vector<Path>& sources);
    void forget();
    void forget_if_said(const SoughtNames& names);
    std::vector<Path> sources();

  private:
    BegunIntake(Library& library, std::string_view setting)
        : library_(library), setting_(setting) {}

    Library& library_;
    std::string_view setting_;
};

// What was interrupted; nothing while any program is at work on photos of the library.
std::vector<Path> interrupted_intake(Library& library);

// Kept while this lives. Throws StoreError.
class IntakeUnderWay {
  public:
    IntakeUnderWay(Library& library, const std::vector<Path>& sources);
    ~IntakeUnderWay();
    IntakeUnderWay(const IntakeUnderWay&) = delete;
    IntakeUnderWay& operator=(const IntakeUnderWay&) = delete;

  private:
    BegunIntake begun_;
};

}  // namespace quarterturn
