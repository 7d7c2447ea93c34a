#include "tests/support/failing_disk.h"
#include "tests/ui/painter/painted.h"

namespace quarterturn {
namespace {

Document two_pages() {
    TextItem text;
    text.text = "A page";
    text.box = {5, 5, 40, 10};
    Document document = document_of({text});
    document.pages.push_back(document.pages.front());
    return document;
}

std::string content_of(const Path& file) {
    const Bytes bytes = real_file_system().read(file, 1 << 24);
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

TEST(Write, PagesOfPicturesAreNumberedFromTheSecondOn) {
    const TemporaryFolder folder;
    const auto decoder = make_local_decoder();
    const Written written =
        write_pictures(two_pages(), *decoder, real_file_system(), folder / "evening look.JPG");
    EXPECT_EQ(written.files,
              (std::vector<Path>{folder / "evening look.JPG", folder / "evening look-2.JPG"}));
    for (const Path& file : written.files) EXPECT_FALSE(QImage(file.c_str()).isNull());
}

TEST(Write, OtherEndingsAreRefusedBeforeAnythingIsWritten) {
    const TemporaryFolder folder;
    const auto decoder = make_local_decoder();
    EXPECT_THROW(write_pictures(two_pages(), *decoder, real_file_system(), folder / "sheet.gif"),
                 std::invalid_argument);
    EXPECT_TRUE(std::filesystem::is_empty(folder.path()));
}

// Whichever call to the disk fails: a DiskError, and under the name is all of the old or the new.
TEST(Write, APdfIsWholeOrAsItWasWhateverFails) {
    const TemporaryFolder folder;
    const auto decoder = make_local_decoder();
    const Path file = folder / "sheet.pdf";
    const std::string old = "an older sheet";
    FailingDisk disk;
    write_pdf(two_pages(), *decoder, disk, file);
    const int calls = disk.calls();
    ASSERT_GT(calls, 2);
    for (int call = 1; call <= calls; ++call) {
        std::filesystem::remove(file);
        real_file_system().write_new(file, std::as_bytes(std::span(old)));
        disk.fail_from_call(call, ENOSPC);
        EXPECT_THROW(write_pdf(two_pages(), *decoder, disk, file), DiskError) << call;
        const std::string now = content_of(file);
        EXPECT_TRUE(now == old || (now.starts_with("%PDF") && now.ends_with("%%EOF\n"))) << call;
        disk.heal();
    }
}

}  // namespace
}  // namespace quarterturn
