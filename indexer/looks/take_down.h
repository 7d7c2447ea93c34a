#pragma once
// How the hair comes down for a second look, gathered for somebody who does no hair: from the
// recipe that says so, with photos of the look before and after.

#include "indexer/looks/wedding_board.h"

namespace quarterturn {

struct TakeDown {
    Client client;
    std::string wedding;  // its name; may be empty
    std::string from;     // names of the two looks; `to` may be empty
    std::string to;
    std::string at;  // "18:30"; may be empty
    std::string done_by;
    std::string taken_out;
    std::string stays;
    HeadDrawing places;  // with a mark for each place that is numbered; may be without
    std::vector<std::string> steps;
    std::vector<std::string> cautions;  // hers first, then what holds for every head
    std::vector<BoardShot> before;      // with a photo only
    std::vector<Photo> during;          // of the steps of the build
    std::vector<BoardShot> after;       // with a photo only
    std::vector<std::string> lacks;     // a sentence each: what to write or bring in, and where
};

// Of the look that the hair is let down into or, where her other look's recipe says so, from.
// Throws StoreError when there is no such look.
TakeDown take_down(Library& library, LookId look);

}  // namespace quarterturn
