// The power fails while she undoes.

#include <gtest/gtest.h>
#include <signal.h>

#include <random>
#include <set>
#include <thread>

#include "tests/support/child.h"
#include "tests/support/example_library.h"
#include "tests/support/killed.h"
#include "tests/support/records_dump.h"

namespace quarterturn {
namespace {

class JournalKilled : public testing::Test, public ExampleLibrary {};

// Undoes and redoes without an end; says after each that it is done.
[[noreturn]] void turn_for_ever(const Path& folder, int report_to) {
    Library library = Library::open(folder);
    for (;;) {
        if (!library.history().undo()) {
            while (library.history().redo()) {
            }
        }
        if (::write(report_to, "x", 1) != 1) ::_exit(1);
    }
}

TEST_F(JournalKilled, AProcessKilledInTheMiddleHasUndoneAnActionOrNot) {
    std::set<std::string> states;
    const auto state = [&] {
        std::string text;
        for (const auto& [table, rows] : dump_of(library.database())) text += table + rows;
        return text;
    };
    states.insert(state());
    for (int i = 0; i < 6; ++i) {
        library.history().record("added a wedding", [&] {
            Wedding day = *library.weddings().find(wedding);
            day.venue = std::to_string(i);
            day.party.insert(day.party.begin(), {library.clients().add(client_called("Ada")), ""});
            library.weddings().change(day);
            day.party.resize(1);
            library.weddings().add(day);
        });
        states.insert(state());
    }
    std::mt19937 random(20261107);
    for (int round = 0; round < kills(12); ++round) {
        std::array<int, 2> ends{};
        ASSERT_EQ(::pipe(ends.data()), 0);
        const pid_t child = ::fork();
        if (child == 0) turn_for_ever(folder / "library", ends[1]);
        ::close(ends[1]);
        char done = 0;
        ASSERT_EQ(::read(ends[0], &done, 1), 1);
        std::this_thread::sleep_for(std::chrono::microseconds{random() % 60'000});
        ::kill(child, SIGKILL);
        ::waitpid(child, nullptr, 0);
        ::close(ends[0]);
        reopen();
        EXPECT_TRUE(states.contains(state())) << "half an action in round " << round;
    }
    while (library.history().redo()) {
    }
    int undone = 0;
    for (; library.history().undo(); ++undone) EXPECT_TRUE(states.contains(state()));
    EXPECT_EQ(undone, 6);
}

}  // namespace
}  // namespace quarterturn
