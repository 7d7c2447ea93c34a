// Cards whose files mean harm: the import ends, each file is accounted for, and the photo beside
// them is taken in.

#include <fcntl.h>
#include <sys/stat.h>
#include <sys/sysmacros.h>
#include <unistd.h>

#include <random>

#include "indexer/intake/preview.h"
#include "tests/indexer/intake/import_fixture.h"
#include "tests/support/child.h"
#include "tests/support/command.h"
#include "tests/support/files.h"
#include "tests/support/hostile_files.h"
#include "tests/support/mutations.h"
#include "tests/support/tiny_raw.h"

namespace quarterturn {
namespace {

struct HostileCard : ImportTest {
    std::size_t accounted_for(const ImportReport& report) {
        return report.imported.size() + report.already_here.size() + report.left_alone.size() +
               report.refused.size();
    }

    void put(const std::string& name, std::span<const std::byte> bytes) {
        std::filesystem::create_directories(card);
        write_bytes(card / name, bytes);
        ++files;
    }

    std::size_t files = 0;
};

// More than the 500 MB of an import would be needed here for any of the larger ones.
TEST_F(HostileCard, WithFilesThatUnfoldOrLeadInCircles) {
    const std::vector<HostileFile> hostile = hostile_files();
    for (const HostileFile& file : hostile) put(file.name, file.bytes);
    write_photo(card / "zinnia.jpg", 1);
    const ImportReport report = bring_in();
    EXPECT_EQ(accounted_for(report), files + 1);
    EXPECT_EQ(photo_named("zinnia.jpg").file.width, 96);
    for (const RefusedFile& refused : report.refused) {
        EXPECT_NE(refused.reason.find("keep the card"), std::string::npos) << refused.reason;
    }
    const auto refused = [&](const std::string& name) {
        return std::ranges::any_of(
            report.refused, [&](const RefusedFile& file) { return file.file.filename() == name; });
    };
    for (const char* name :
         {"claims 2 thousand million pixels.png", "claims no end of pixels.png",
          "claims more than it holds.png", "endless.tif", "huge.heic", "made of itself.heic",
          "nested.heic", "nested.cr3", "next directory is the first.tif"}) {
        EXPECT_TRUE(refused(name)) << name;
    }
    expect_files_match_records(library);
}

TEST_F(HostileCard, WithPreviewsOfThemIsCountedToo) {
    for (const HostileFile& file : hostile_files()) put(file.name, file.bytes);
    const ImportPreview preview = preview_import(library, {.sources = {card}});
    EXPECT_EQ(static_cast<std::size_t>(preview.fresh) + preview.already_here.size() +
                  preview.left_alone.size() + preview.refused.size(),
              files);
}

TEST_F(HostileCard, WithThingsThatAreNoFiles) {
    write_photo(card / "zinnia.jpg", 1);
    ASSERT_EQ(::mkfifo((card / "pipe.jpg").c_str(), 0600), 0);
    std::filesystem::create_symlink("/dev/zero", card / "zero.jpg");
    std::filesystem::create_symlink("circle.jpg", card / "circle.jpg");
    std::filesystem::create_symlink("nowhere.jpg", card / "gone.jpg");
    std::filesystem::create_directory_symlink("..", card / "up");
    std::filesystem::create_directory(card / "folder.jpg");
    write_file(card / "film.jpg",
               "RIFF\x10\xff\xff\xff"
               "AVI LIST");
    std::size_t expected = 7;
    if (::mknod((card / "endless.jpg").c_str(), S_IFCHR | 0600, ::makedev(1, 5)) == 0) ++expected;
    const ImportReport report = bring_in();
    EXPECT_EQ(report.imported.size(), 1U);
    EXPECT_EQ(accounted_for(report), expected);
    EXPECT_EQ(report.refused.size(), expected - 2) << "named like photos, and said by name";
    EXPECT_EQ(bring_in({card / "pipe.jpg"}).imported.size(), 0U);
    EXPECT_EQ(bring_in({card / "circle.jpg"}).refused.size(), 1U);
}

TEST_F(HostileCard, WithAFileThatMayNotBeRead) {
    write_photo(card / "zinnia.jpg", 1);
    write_photo(card / "locked.jpg", 2);
    std::filesystem::permissions(card / "locked.jpg", std::filesystem::perms::none);
    std::filesystem::permissions(folder.path(), std::filesystem::perms::all);
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder.path())) {
        if (entry.path().filename() == "locked.jpg") continue;
        std::filesystem::permissions(entry.path(), std::filesystem::perms::all);
    }
    const std::string told = as_stranger([&] {
        Library own = Library::create(folder / "of a stranger");
        const ImportReport report =
            import_photos(own, *make_confined_decoder(), {.sources = {card}});
        std::string names = std::to_string(report.imported.size()) + " taken;";
        for (const RefusedFile& refused : report.refused) {
            names += ' ' + refused.file.filename().string();
        }
        return names;
    });
    EXPECT_EQ(told, "1 taken; locked.jpg");
}

// Three folders further down than a path can say, which is gone into step by step.
bool write_out_of_reach(const Path& deep, const std::string& folder,
                        std::span<const std::byte> photo) {
    int at = ::open(deep.c_str(), O_DIRECTORY | O_RDONLY);
    for (int step = 0; step < 3; ++step) {
        ::mkdirat(at, folder.c_str(), 0700);
        const int next = ::openat(at, folder.c_str(), O_DIRECTORY | O_RDONLY);
        ::close(at);
        at = next;
    }
    const int file = ::openat(at, "out-of-reach.jpg", O_CREAT | O_WRONLY, 0600);
    const bool written = ::write(file, photo.data(), photo.size()) == std::ssize(photo);
    ::close(file);
    ::close(at);
    return written;
}

TEST_F(HostileCard, WithFoldersDeeperThanAPathCanBe) {
    write_photo(card / "zinnia.jpg", 1);
    const std::string part(200, 'd');
    Path deep = card;
    while (deep.native().size() < 3700) deep /= part;
    write_photo(deep / "deep.jpg", 2);
    ASSERT_TRUE(
        write_out_of_reach(deep, part, real_file_system().read(card / "zinnia.jpg", any_size)));
    const ImportReport report = bring_in();
    EXPECT_EQ(report.imported.size(), 2U);
    EXPECT_EQ(report.refused.size(), 1U);
    output_of("rm -rf " + shell_word(card));
}

TEST_F(HostileCard, WithNamesOfAnyBytes) {
    const std::vector<std::string> names{
        "\xFF\xFE\x80.jpg", "line\nbreak.jpg", "-rf.jpg",   "$(touch x).jpg",
        "quote'\".jpg",     "\x1b[31mred.jpg", "..jpg.jpg", std::string(251, 'n') + ".jpg"};
    int seed = 0;
    for (const std::string& name : names) {
        write_photo(card / "a.jpg", ++seed);
        std::filesystem::rename(card / "a.jpg", card / name);
    }
    const ImportReport report = bring_in();
    EXPECT_EQ(report.imported.size() + report.left_alone.size(), names.size());
    EXPECT_EQ(report.left_alone.size(), 1U);  // hidden, as its name begins with a point
    expect_files_match_records(library);
}

struct Seedling {
    std::string ending;
    Bytes bytes;
};

std::vector<Seedling> whole_files() {
    const cv::Mat busy = picture(3, {96, 64});
    const Bytes jpeg = encoded(busy, ".jpg");
    std::vector<Seedling> files{{".jpg", jpeg},
                                {".png", encoded(busy, ".png")},
                                {".tif", encoded(busy, ".tif")},
                                {".webp", encoded(busy, ".webp")},
                                {".heic", heic_of(busy, {.orientation = 6})},
                                {".dng", tiny_raw(jpeg)}};
    for (const auto& entry : std::filesystem::recursive_directory_iterator(
             std::filesystem::path(QUARTERTURN_DEMO_PHOTOS) / "photos")) {
        if (entry.is_regular_file() && entry.path().stem().string().ends_with('7')) {
            files.push_back({entry.path().extension(), read_bytes(entry.path())});
        }
    }
    return files;
}

// DAMAGED_FILES says how many; 2,000 of them take some minutes.
TEST_F(HostileCard, WithManyDamagedPhotosIsAccountedForToTheLast) {
    const char* wished = std::getenv("DAMAGED_FILES");
    const std::uint32_t count = wished == nullptr ? 120 : std::stoul(wished);
    const std::vector<Seedling> whole = whole_files();
    for (std::uint32_t seed = 0; seed < count; ++seed) {
        const Seedling& seedling = whole[seed % whole.size()];
        put("IMG_" + std::to_string(seed) + seedling.ending, damaged(seedling.bytes, seed));
    }
    write_photo(card / "zinnia.jpg", 1);
    const ImportReport report = bring_in();
    EXPECT_EQ(accounted_for(report), files + 1);
    EXPECT_FALSE(report.stopped);
    for (const RefusedFile& refused : report.refused) {
        EXPECT_TRUE(refused.reason.ends_with('.')) << refused.reason;
    }
    expect_files_match_records(library);
    EXPECT_EQ(photo_named("zinnia.jpg").file.width, 96);
    if (wished == nullptr) return;
    std::printf(
        "Of %u damaged files: %zu taken in, %zu there already, %zu left alone, %zu refused.\n",
        count, report.imported.size(), report.already_here.size(), report.left_alone.size(),
        report.refused.size());
}

}  // namespace
}  // namespace quarterturn
