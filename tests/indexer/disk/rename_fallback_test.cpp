// Disks that cannot rename without overwriting: the system call is made to answer as they do.

#include <gtest/gtest.h>
#include <linux/filter.h>
#include <linux/seccomp.h>
#include <sys/prctl.h>
#include <sys/syscall.h>

#include <array>
#include <cstddef>

#include "indexer/disk/file_system.h"
#include "tests/support/child.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

// From here on, this process's renameat2 fails with EINVAL. False where that cannot be had.
bool refuse_renameat2() {
    std::array<sock_filter, 4> rules{{
        BPF_STMT(BPF_LD | BPF_W | BPF_ABS, offsetof(seccomp_data, nr)),
        BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, SYS_renameat2, 0, 1),
        BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_ERRNO | EINVAL),
        BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_ALLOW),
    }};
    const sock_fprog filter{static_cast<unsigned short>(rules.size()), rules.data()};
    return ::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) == 0 &&
           ::prctl(PR_SET_SECCOMP, SECCOMP_MODE_FILTER, &filter) == 0;
}

TEST(RenameWithoutHelp, StillMovesAndStillNeverOverwrites) {
    const TemporaryFolder folder;
    FileSystem& disk = real_file_system();
    disk.write_new(folder / "one", Bytes(1));
    disk.write_new(folder / "two", Bytes(2));
    const std::string answer = in_child([&]() -> std::string {
        if (!refuse_renameat2()) return "no filter";
        disk.rename_new(folder / "one", folder / "three");
        disk.rename_new(folder / "two", folder / "three");
        return "overwritten";
    });
    if (answer == "no filter") GTEST_SKIP() << "This system does not let a test refuse calls.";
    EXPECT_NE(answer.find("is there already"), std::string::npos) << answer;
    EXPECT_FALSE(disk.exists(folder / "one"));
    EXPECT_EQ(disk.state(folder / "two").bytes, 2);
    EXPECT_EQ(disk.state(folder / "three").bytes, 1);
}

}  // namespace
}  // namespace quarterturn
