#pragma once
// Work in a process of its own that is killed at a moment nobody chose.

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <cstdlib>

namespace quarterturn {

// How often; KILLS asks for more.
inline int kills(int usual) {
    const char* wanted = std::getenv("KILLS");
    return wanted == nullptr ? usual : std::atoi(wanted);
}

template <class Work>
pid_t start_apart(Work work) {
    const pid_t child = ::fork();
    if (child != 0) return child;
    try {
        work();
    } catch (...) {
        ::_exit(1);
    }
    ::_exit(0);
}

// Lets it come to its end; whether it ended well.
inline bool ends_well(pid_t child) {
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

// True when it was killed, false when it was done by then.
inline bool kill_at(pid_t child, std::chrono::microseconds moment) {
    ::usleep(static_cast<useconds_t>(moment.count()));
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    const bool killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    EXPECT_TRUE(killed || (WIFEXITED(status) && WEXITSTATUS(status) == 0)) << status;
    return killed;
}

template <class Work>
bool kill_after(std::chrono::microseconds moment, Work work) {
    const pid_t child = start_apart(std::move(work));
    EXPECT_GT(child, 0);
    return child > 0 && kill_at(child, moment);
}

}  // namespace quarterturn
