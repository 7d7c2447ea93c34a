#pragma once
// All that hangs by the mirror on the wedding morning, gathered from the records: for each client
// of the party, in the order of work, what to beware of, her looks from all angles, and how to make
// them. Screen, paper and phone show the same.

#include "indexer/looks/look_state.h"
#include "indexer/looks/running_order.h"
#include "indexer/record/board.h"

namespace quarterturn {

struct BoardShot {
    Angle angle = Angle::front;
    std::optional<Photo> photo;  // the best usable after photo; nothing: an empty frame
    std::string empty;           // what the empty frame says
};

struct BoardStep {
    std::string words;                   // as in step_text()
    std::vector<std::string> cautions;   // heat, spray: beside the step that uses them
    std::vector<Photo> photos;           // of the step, where it names some that are in the library
    int pins = 0;                        // counted, of all kinds
    std::optional<int> waiting_minutes;  // to offer a timer: cooling first, then other waiting
    bool done = false;                   // ticked while it said the same
};

struct BoardLook {
    LookState state;
    std::string standing;              // "Signed off on …", "Not signed off."
    std::vector<std::string> changes;  // since sign-off, a sentence each
    std::vector<BoardShot> shots;      // left, front, right, back; then further ones with a photo
    std::vector<RecipePart> before_build;  // prep to parting, without the cautions
    std::vector<BoardStep> steps;
    std::vector<RecipePart>
        after_build;      // pieces, accessory, finish, what the client said, minutes
    int pins() const;     // of all steps
    int pins_in() const;  // of the steps done
};

struct BoardClient {
    Client client;
    std::string role;                   // may be empty
    std::string ready_by;               // "12:30"; empty when not agreed
    std::vector<Seat> seats;            // hers, of the running order; none when there is no plan
    std::vector<std::string> cautions;  // first of all; of every look once
    std::vector<BoardLook> looks;       // ceremony, other, evening
};

struct WeddingBoard {
    Wedding wedding;
    std::vector<BoardClient> clients;  // by their first seat; those without one after them
    std::vector<std::string> remarks;  // why somebody has no place in the running order
};

// Throws StoreError when there is no such wedding. A wedding that cannot be planned has a board all
// the same, in the order of the party.
WeddingBoard wedding_board(Library& library, WeddingId wedding);

// The wedding of that day; of several the one with the earliest ready-by time.
std::optional<WeddingId> wedding_of(Library& library, Date day);

}  // namespace quarterturn
