#include "indexer/disk/lies_in.h"

#include <gtest/gtest.h>

#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

TEST(LiesIn, KnowsWhatIsBelowAFolderWhateverLeadsThere) {
    const TemporaryFolder folder;
    const Path library = folder / "library";
    std::filesystem::create_directories(library / "photos");
    std::filesystem::create_directory_symlink(library, folder / "link");
    for (const Path& inside : {library, Path(library.string() + "/"), library / "not there.pdf",
                               library / "photos" / "a", folder / "link" / "board.pdf",
                               folder / "other" / ".." / "library" / "a.pdf"}) {
        EXPECT_TRUE(lies_in(inside, library)) << inside;
        EXPECT_TRUE(lies_in(inside, Path(library.string() + "/"))) << inside;
    }
    for (const Path& outside : {folder / "library.pdf", folder / "library 2" / "a.pdf",
                                library / ".." / "a.pdf", Path("/")}) {
        EXPECT_FALSE(lies_in(outside, library)) << outside;
    }
}

}  // namespace
}  // namespace quarterturn
