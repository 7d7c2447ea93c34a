// No socket is opened: the whole job of app/demo.sh, in a process that the kernel ends at the first
// one. tests/ui/main_job watches the window in the same way.

#include <netinet/in.h>
#include <sys/wait.h>

#include "tests/app/program.h"
#include "tests/support/no_network.h"

namespace quarterturn {
namespace {

// The wait status of a child that does this under watch.
template <class Work>
int watched(const Work& work) {
    const pid_t child = ::fork();
    if (child == 0) {
        end_at_the_first_network_socket();
        ::_exit(work());
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return status;
}

TEST(NoNetwork, IsReachedByTheWholeJob) {
    const TemporaryFolder folder;
    // Leaks are looked for where commands run in this process: the search in a program of its own
    // now and then crashes itself when threads end with it.
    const std::string job = "ASAN_OPTIONS=$ASAN_OPTIONS:detect_leaks=0 bash " QUARTERTURN_SOURCE
                            "/app/demo.sh " QTURN_PROGRAM " " +
                            shell_word(folder.path()) + " > " + shell_word(folder / "said");
    const int status = watched([&] { return std::system(job.c_str()) == 0 ? 0 : 1; });
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << text_of(folder / "said");
    EXPECT_NE(text_of(folder / "said").find("sheet"), std::string::npos);
}

TEST(NoNetwork, WouldBeNoticed) {
    for (const int family : {AF_INET, AF_INET6}) {
        const int status = watched([&] { return ::socket(family, SOCK_DGRAM, 0) < 0 ? 1 : 0; });
        EXPECT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == SIGSYS);
    }
}

}  // namespace
}  // namespace quarterturn
