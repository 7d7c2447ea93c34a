#pragma once
// All that hangs by the mirror on the wedding morning, gathered from the records: for each client
// of the party, in the order of work, what to beware of, her looks from all angles, and how to make
// them. Screen, paper and phone show the same.

#include "indexer/looks/look_state.h"
#include "indexer/looks/running_order.h"
#include "indexer/record/board.h"
#include "indexer/record/recipe_text.h"

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
    int pins = 0;                        // counted, of all kinds that stay in
    int clips = 0;                       // that come out again
    std::optional<int> waiting_minutes;  // to offer a timer: cooling first, then other waiting
    std::string waits_for;               // "cooling", "waiting"; empty without minutes
    bool done = false;                   // ticked while it said the same
};

struct BoardLook {
    LookState state;
    std::string standing;              // "Signed off on 7 November 2026.", "Not signed off."
    std::vector<std::string> changes;  // since sign-off, and of a recipe not saved yet
    std::vector<BoardShot> shots;      // left, front, right, back; then further ones with a photo
    std::vector<RecipePart> before_build;  // prep to parting, without the cautions
    std::vector<BoardStep> steps;
    // Pieces, accessory, finish, second look, what the client said, minutes.
    std::vector<RecipePart> after_build;
    std::vector<std::string> before_build_cautions;  // heat, spray: beside those parts
    std::vector<std::string> after_build_cautions;

    int pins() const;     // of all steps
    int pins_in() const;  // of the steps done
    // The newest revision; where none is saved yet, what is written of it; nothing without either.
    const Recipe* recipe() const;
};

struct BoardClient {
    Client client;
    std::string role;                   // may be empty
    std::string ready_by;               // "12:30"; empty when not agreed
    std::vector<Seat> seats;            // hers, of the running order; none when there is no plan
    std::vector<std::string> cautions;  // first of all; of every look once
    std::vector<BoardLook> looks;       // ceremony, other, evening
    bool said_done = false;             // by her word

    // Of the look she wears first: the one that is made on the morning.
    std::size_t steps() const { return looks.empty() ? 0 : looks.front().steps.size(); }
    std::size_t steps_done() const;
    // All its steps are ticked; or it was said, where there are none to tick.
    bool is_done() const;
};

struct WeddingBoard {
    Wedding wedding;
    std::vector<BoardClient> clients;  // by their first seat; those without one after them
    std::vector<std::string> remarks;  // why somebody has no place in the running order
};

// Throws StoreError when there is no such wedding. A wedding that cannot be planned has a board all
// the same, in the order of the party.
//
// The photos are those of the trial: what is taken on the wedding day stands in for an angle only
// where there is no other. Looks of this wedding whose client is not of the party come last.
WeddingBoard wedding_board(Library& library, WeddingId wedding);

// The photos of a look as they stand on the board.
std::vector<BoardShot> board_shots(Library& library, const LookState& state);

// One look of it, gathered anew: cheaper after a tick. Throws StoreError when there is no such
// look.
BoardLook board_look(Library& library, WeddingId wedding, LookId look);

// Leaves hers alone on the board.
void keep_only(WeddingBoard& board, ClientId client);

// The wedding of that day; of several the one with the earliest ready-by time.
std::optional<WeddingId> wedding_of(Library& library, Date day);

}  // namespace quarterturn
