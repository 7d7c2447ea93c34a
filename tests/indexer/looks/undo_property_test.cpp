// Whatever she does, undone all of it is as if she had not, and done again all of it is as it was:
// every table, row by row, across restarts, by a plain read of all tables.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/indexer/looks/hand.h"
#include "tests/support/records_dump.h"

namespace quarterturn {
namespace {

struct UndoneAll : WholeLook {
    RecordsDump now() {
        bring_pairs_up_to_date(library);
        return dump_of(library.database());
    }

    // Does something, and remembers how it was before it when that can be undone.
    void go_on() {
        const RecordsDump before = state;
        const auto newest = library.history().newest();
        try {
            if (number(6) == 0) {
                Hand(library).tag();
            } else {
                library.history().record("did it", [&] { Hand(library).act(); });
            }
        } catch (const StoreError&) {
            RC_ASSERT(difference(now(), before) == "");
        }
        state = now();
        if (library.history().newest() != newest) {
            states.push_back(before);
        } else {
            RC_ASSERT(difference(state, before) == "");
        }
    }

    void be(const RecordsDump& then) {
        const std::string different = difference(now(), then);
        RC_LOG() << different;
        RC_ASSERT(different.empty());
        if (number(8) == 0) reopen();
    }

    std::vector<RecordsDump> states;
    RecordsDump state = now();
};

RC_GTEST_PROP(Undo, LeadsBackAndRedoForthWhateverWasDone, ()) {
    UndoneAll all;
    for (int acts = number(16); acts > 0; --acts) all.go_on();
    RC_CLASSIFY(all.states.size() > 8);
    all.states.push_back(all.state);
    for (std::size_t i = all.states.size() - 1; i > 0; --i) {
        RC_ASSERT(all.library.history().undo().has_value());
        all.be(all.states[i - 1]);
    }
    for (std::size_t i = 1; i < all.states.size(); ++i) {
        RC_ASSERT(all.library.history().redo().has_value());
        all.be(all.states[i]);
    }
    RC_ASSERT(!all.library.history().redo().has_value());
}

}  // namespace
}  // namespace quarterturn
