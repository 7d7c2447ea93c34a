#include <gtest/gtest.h>

#include "indexer/disk/file_system.h"
#include "tests/support/command.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

// Other programs use the disk meanwhile, so that some difference is none.
TEST(FreeSpace, IsWhatDfSays) {
    const TemporaryFolder folder;
    const std::string said =
        output_of("df --output=avail -B1 " + shell_word(folder.path()) + " | tail -n 1");
    const auto available = std::stod(said);
    EXPECT_NEAR(static_cast<double>(real_file_system().free_bytes(folder.path())), available,
                available / 10);
}

}  // namespace
}  // namespace quarterturn
