#pragma once
// What photos are brought in from, kept in the records until all of it has come in: where that was
// stopped, or the program was ended in the middle of it, it can be gone on with.

#include <string>
#include <string_view>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

class BegunIntake {
  public:
    static BegunIntake once(Library& library) { return {library, "bringing in from"}; }
    static BegunIntake as_they_arrive(Library& library) { return {library, "watched folder"}; }

    void keep(const std::vector<Path>& sources);  // and none that were kept before
    void add(const std::vector<Path>& sources);
    void finish(const std::vector<Path>& sources);
    void forget();
    std::vector<Path> sources();

  private:
    BegunIntake(Library& library, std::string_view setting)
        : library_(library), setting_(setting) {}

    Library& library_;
    std::string_view setting_;
};

// What was not finished; nothing while any program is at work on photos of the library.
std::vector<Path> unfinished_intake(Library& library);
// Clears away what an import that was interrupted had on its way. The move lock must be held.
void clear_incoming(Library& library);
// Whether there may be any such thing.
bool any_left_incoming(Library& library);
// Clears it away where nobody is at work; what cannot be cleared away is left for the next time.
void clear_left_incoming(Library& library);
// It is not gone on with: forgets it, and clears away what was on its way.
void leave_unfinished_intake(Library& library);

// For a library that is another one now.
void forget_intake(Library& library);
// Where any path of it says the name, in whatever way.
void forget_intake_saying(Library& library, const std::string& name);

}  // namespace quarterturn
