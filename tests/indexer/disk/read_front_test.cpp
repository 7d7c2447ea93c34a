#include <sys/stat.h>

#include <fstream>

#include "indexer/disk/file_system.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

std::string front(const Path& file, std::int64_t most) {
    const Bytes bytes = real_file_system().read_front(file, most);
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

TEST(ReadFront, ReadsNoMoreThanAskedAndNoMoreThanThereIs) {
    TemporaryFolder folder;
    std::ofstream{folder / "a"} << "veil and pins";
    EXPECT_EQ(front(folder / "a", 4), "veil");
    EXPECT_EQ(front(folder / "a", 400), "veil and pins");
    EXPECT_EQ(front(folder / "a", 0), "");
}

TEST(ReadFront, RefusesWhatIsNoOrdinaryFile) {
    TemporaryFolder folder;
    ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
    EXPECT_THROW(front(folder / "pipe", 4), DiskError);
    EXPECT_THROW(front(folder.path(), 4), DiskError);
    EXPECT_THROW(front(folder / "nothing", 4), DiskError);
}

}  // namespace
}  // namespace quarterturn
