// What a worker can do when a hostile file has taken it over: nothing, and the next photo is opened
// as if nothing had been.

#include <signal.h>
#include <sys/wait.h>

#include <atomic>
#include <thread>

#include "indexer/worker/confined.h"
#include "indexer/worker/workers.h"
#include "tests/support/child.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

#ifdef QUARTERTURN_SANITIZED
constexpr bool limits_memory = false;  // the sanitizer takes terabytes of address space
#else
constexpr bool limits_memory = true;
#endif

std::span<const std::byte> bytes_of(std::string_view text) {
    return std::as_bytes(std::span(text));
}

struct UnrulyWorkers : testing::Test {
    std::string said_to(std::string_view deed) {
        try {
            return workers.decode({.bytes = bytes_of(deed)}).refused;
        } catch (const GivenUp& reason) {
            return std::string("given up: ") + reason.what();
        }
    }
    bool lets_happen(std::string_view deed) { return said_to(deed) == "done"; }

    Workers workers{UNRULY_WORKER, {.processor_time = std::chrono::seconds{1}}, 2};
};

TEST_F(UnrulyWorkers, ReachNoFileAndGoOnWithoutIt) {
    for (const char* deed : {"read a file", "write a file", "list a folder", "make a folder",
                             "remove a file", "run code from memory", "raise a limit"}) {
        EXPECT_EQ(said_to(deed), "Operation not permitted") << deed;
    }
    EXPECT_TRUE(lets_happen("nothing"));
    EXPECT_TRUE(lets_happen("use a thread"));
    EXPECT_EQ(workers.idle().size(), 1U);
}

TEST_F(UnrulyWorkers, AreEndedWhenTheyReachForANetworkAProgramOrAProcess) {
    for (const char* deed : {"open a socket", "open a local socket", "run a program",
                             "start a process", "end its parent"}) {
        EXPECT_NE(said_to(deed).find("attempt what no photo needs"), std::string::npos)
            << deed << ": " << said_to(deed);
        EXPECT_TRUE(workers.idle().empty());
        EXPECT_TRUE(lets_happen("nothing"));
    }
}

TEST_F(UnrulyWorkers, ThatDieAreReplaced) {
    for (const char* deed : {"crash", "leave"}) {
        EXPECT_NE(said_to(deed).find("is damaged"), std::string::npos) << deed;
        EXPECT_TRUE(lets_happen("nothing"));
    }
}

TEST_F(UnrulyWorkers, ThatWorkForEverAreEnded) {
    EXPECT_NE(said_to("work").find("more than 1 second,"), std::string::npos);
    EXPECT_TRUE(lets_happen("nothing"));
}

TEST(UnrulyWorker, ThatWaitsForEverIsEnded) {
    Workers workers{UNRULY_WORKER, {.time = std::chrono::milliseconds{300}}, 1};
    EXPECT_THROW(workers.decode({.bytes = bytes_of("wait")}), GivenUp);
    EXPECT_TRUE(workers.idle().empty());
}

TEST(UnrulyWorker, HasNoMoreMemoryThanItIsAllowed) {
    if (!limits_memory) GTEST_SKIP() << "The address sanitizer needs the memory for itself.";
    const WorkerLimits limits{.memory = std::int64_t{1} << 30};
    Workers workers{UNRULY_WORKER, limits, 1};
    const std::string said = workers.decode({.bytes = bytes_of("take memory")}).refused;
    ASSERT_TRUE(said.starts_with("no more than ")) << said;
    const long long taken = std::stoll(said.substr(std::string("no more than ").size()));
    EXPECT_GT(taken, 0);
    EXPECT_LT(taken, limits.memory);
}

TEST_F(UnrulyWorkers, AreNotBelievedWhatNoHonestOneSays) {
    EXPECT_THROW(workers.metadata(bytes_of("answer rubbish")), GivenUp);
    EXPECT_THROW(workers.metadata(bytes_of("nothing")), GivenUp);
    const std::vector<std::span<const std::byte>> two{bytes_of("nothing"), bytes_of("nothing")};
    EXPECT_THROW(workers.all_metadata(two), GivenUp);
    EXPECT_THROW(workers.decode({.bytes = bytes_of("answer rubbish")}), GivenUp);
    EXPECT_THROW(workers.decode({.bytes = bytes_of("say nothing")}), GivenUp);
    EXPECT_THROW(workers.decode({.bytes = bytes_of("say rubbish")}), GivenUp);
    EXPECT_TRUE(workers.idle().empty());
}

TEST_F(UnrulyWorkers, StartedAheadAreTheOnesThatWorkAndNoOthersAreStarted) {
    workers.start_ahead(1);
    EXPECT_TRUE(lets_happen("nothing"));
    EXPECT_TRUE(lets_happen("nothing"));
    EXPECT_EQ(workers.idle().size(), 1U);
}

TEST(UnrulyWorker, StartedAheadAndNeverAskedEndsWithTheOthers) {
    Workers workers{UNRULY_WORKER, {}, 2};
    workers.start_ahead(2);
}

TEST(UnrulyWorker, StartedAheadThatCannotBeStartedIsToldOfWhenItIsAsked) {
    Workers workers{"/no/such/program", {}, 1};
    workers.start_ahead(1);
    EXPECT_THROW(workers.decode({.bytes = bytes_of("nothing")}), NoWorker);
}

// The one before may be to blame that a worker dies over a photo.
TEST_F(UnrulyWorkers, KilledBetweenTwoPhotosAreReplacedWithoutAWord) {
    EXPECT_TRUE(lets_happen("nothing"));
    ASSERT_EQ(workers.idle().size(), 1U);
    ::kill(workers.idle()[0], SIGKILL);
    EXPECT_TRUE(lets_happen("nothing"));
}

TEST_F(UnrulyWorkers, ServeSeveralThreadsWithAsManyProcessesAsAreAllowed) {
    std::atomic<int> done = 0;
    std::vector<std::jthread> threads;
    for (int i = 0; i < 6; ++i) {
        threads.emplace_back([&] {
            for (int j = 0; j < 20; ++j) done += lets_happen("nothing") ? 1 : 0;
        });
    }
    threads.clear();
    EXPECT_EQ(done, 6 * 20);
    EXPECT_LE(workers.idle().size(), 2U);
}

bool runs(pid_t process) {
    return ::kill(process, 0) == 0;
}

TEST_F(UnrulyWorkers, EndWithTheProgramEvenWhenItIsKilled) {
    const std::string told = in_child([] {
        Workers own{UNRULY_WORKER, {}, 1};
        own.decode({.bytes = bytes_of("nothing")});
        const pid_t worker = own.idle().at(0);
        // What reads the answer of this child waits until it is gone.
        std::array<int, 2> ends{};
        if (::pipe(ends.data()) != 0) return std::string("no pipe");
        const pid_t killed = ::fork();
        if (killed == 0) {
            Workers others{UNRULY_WORKER, {}, 1};
            others.decode({.bytes = bytes_of("nothing")});
            const pid_t id = others.idle().at(0);
            if (::write(ends[1], &id, sizeof id) != sizeof id) ::_exit(1);
            ::kill(::getpid(), SIGKILL);
        }
        pid_t left_behind = 0;
        if (::read(ends[0], &left_behind, sizeof left_behind) != sizeof left_behind) {
            return std::string("no answer");
        }
        ::waitpid(killed, nullptr, 0);
        while (runs(left_behind)) ::usleep(1000);  // a test that hangs here has found one
        return std::string(runs(worker) ? "only those of the killed one" : "too many");
    });
    EXPECT_EQ(told, "only those of the killed one");
}

// What is beside the program may have been replaced by something else.
TEST(NoWorkers, OneThatNeverAnswersIsWaitedForOnce) {
    Workers silent{"/bin/sleep", {.time_to_start = std::chrono::seconds{3}}, 1};
    const auto time_taken = [&] {
        const auto begun = std::chrono::steady_clock::now();
        try {
            silent.metadata(bytes_of("nothing"));
            ADD_FAILURE() << "metadata was read without a worker";
        } catch (const NoWorker& problem) {
            const std::string said = problem.what();
            EXPECT_NE(said.find("/bin/sleep, starts and never answers. Install Quarterturn again"),
                      std::string::npos)
                << said;
        }
        return std::chrono::steady_clock::now() - begun;
    };
    EXPECT_GE(time_taken(), std::chrono::seconds{3});
    EXPECT_LT(time_taken() + time_taken(), std::chrono::seconds{2});
}

TEST(NoWorkers, IsSaidAndNothingIsOpenedHere) {
    Workers none{"/no/such/program", {}, 1};
    try {
        none.metadata(bytes_of("nothing"));
        FAIL() << "metadata was read without a worker";
    } catch (const NoWorker& problem) {
        EXPECT_NE(std::string(problem.what()).find("Install Quarterturn again"), std::string::npos);
    }
    Workers another_program{"/bin/true", {}, 1};
    EXPECT_THROW(another_program.metadata(bytes_of("nothing")), NoWorker);
}

}  // namespace
}  // namespace quarterturn
