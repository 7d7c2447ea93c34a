// Bringing photos in, through the whole program.

#include <array>
#include <csignal>
#include <thread>

#include "tests/app/card_test.h"

namespace quarterturn {
namespace {

using nlohmann::json;
using ImportCommand = CardTest;

TEST_F(ImportCommand, CountsAndNamesWhatItDid) {
    make_photo(card / "DCIM" / "IMG_1.jpg", 1, "-DateTimeOriginal='2026:11:07 10:12:03'");
    std::filesystem::copy(card / "DCIM" / "IMG_1.jpg", card / "copy of the first.jpg");
    std::ofstream(card / "notes.txt") << "buy pins";
    std::ofstream(card / "broken.jpg") << "\xFF\xD8\xFF\xE0 and then nothing";
    const json report = answer({"import", card}, 3);
    EXPECT_EQ(report["imported"], 1);
    EXPECT_EQ(report["to_place"], 1);
    EXPECT_EQ(report["already_here"], 1);
    EXPECT_EQ(report["left_alone"], 1);
    EXPECT_EQ(report["left_alone_files"], json{(card / "notes.txt").string()});
    ASSERT_EQ(report["refused"].size(), 1U);
    EXPECT_EQ(report["refused"][0]["file"], (card / "broken.jpg").string());
    EXPECT_FALSE(report["refused"][0]["reason"].get<std::string>().empty());
    const json again = answer({"import", card}, 3);
    EXPECT_EQ(again["imported"], 0);
    EXPECT_EQ(again["already_here"], 2);
}

TEST_F(ImportCommand, PreviewOfOnePhotoNamesOneMoment) {
    make_photo(card / "in.jpg", 1, "-DateTimeOriginal='2026:11:07 10:12:03'");
    EXPECT_NE(run({"import", "--preview", card}).out.find("Taken 2026-11-07 10:12."),
              std::string::npos);
}

TEST_F(ImportCommand, PreviewTellsWhatWouldComeInAndCopiesNothing) {
    make_photo(card / "in.jpg", 1,
               "-DateTimeOriginal='2026:11:07 10:12:03' -Make=Larkwing -Model='Pocket 4'");
    make_photo(card / "out.jpg", 2, "-DateTimeOriginal='2026:11:08 09:00:00'");
    make_photo(card / "undated.jpg", 3, "");
    std::ofstream(card / "notes.txt") << "buy pins";
    said({"client", "add", "Ada Lindqvist"});
    said({"sitting", "add", "1", "--starts", "2026-11-07T10:00", "--ends", "2026-11-07T13:00"});
    EXPECT_NE(run({"import", "--preview", card}).out.find("Whether a photo opens is seen when"),
              std::string::npos);
    const json told = answer({"import", "--preview", card});
    EXPECT_EQ(told["would_import"], 3);
    EXPECT_EQ(told["first"], "2026-11-07T10:12:03");
    EXPECT_EQ(told["last"], "2026-11-08T09:00:00");
    EXPECT_EQ(told["devices"][0]["photos"], 2);  // of no known device
    EXPECT_EQ(told["devices"][1]["device"], "Larkwing Pocket 4");
    EXPECT_EQ(told["sittings"], (json{{{"sitting", 1}, {"photos", 1}}}));
    EXPECT_EQ(told["in_no_sitting"], 1);
    EXPECT_EQ(told["undated"], 1);
    EXPECT_EQ(told["left_alone"], 1);
    EXPECT_TRUE(photos().empty());
    EXPECT_FALSE(std::filesystem::exists(library + "/photos/2026"));

    EXPECT_EQ(answer({"import", card})["imported"], 3);
    EXPECT_EQ(answer({"import", "--preview", card})["already_here"], 3);
}

// A qturn that goes on until it is told to stop.
class Watching {
  public:
    explicit Watching(const std::string& arguments)
        : pipe_(::popen(("echo $$; exec " + shell_word(QTURN_PROGRAM) + arguments).c_str(), "r")) {
        std::array<char, 32> line{};
        pid_ = std::atoi(std::fgets(line.data(), line.size(), pipe_));
    }
    Watching(const Watching&) = delete;
    Watching& operator=(const Watching&) = delete;

    // What Ctrl-C does. Answers the exit code, and in `out` what was printed.
    int stop(std::string& out) {
        ::kill(pid_, SIGINT);
        std::array<char, 4096> part{};
        while (const auto length = std::fread(part.data(), 1, part.size(), pipe_)) {
            out.append(part.data(), length);
        }
        return WEXITSTATUS(::pclose(pipe_));
    }

  private:
    FILE* pipe_;
    pid_t pid_ = 0;
};

TEST_F(ImportCommand, WatchTakesInWhatArrivesAndCtrlCEndsItWell) {
    make_photo(card / "there.jpg", 1, "");
    make_photo(folder / "arrives.jpg", 2, "");
    Watching watching(" import --watch --json " + shell_word(card) + " --library " +
                      shell_word(library));
    const auto wait_for = [&](std::size_t count) {
        constexpr int most_looks = 300;  // of a tenth of a second each, and the time of a look
        for (int look = 0; look < most_looks && photos().size() < count; ++look) {
            std::this_thread::sleep_for(std::chrono::milliseconds(100));
        }
        return photos().size();
    };
    EXPECT_EQ(wait_for(1), 1U);
    std::filesystem::copy(folder / "arrives.jpg", card / "arrives.jpg");
    EXPECT_EQ(wait_for(2), 2U);
    std::string out;
    EXPECT_EQ(watching.stop(out), 0);
    const json report = json::parse(out);
    EXPECT_EQ(report["imported"], 2);
    EXPECT_EQ(report["stopped"], false);
}

// Stopped at its first word of progress, an import keeps what is whole; run again, it goes on.
TEST_F(ImportCommand, InterruptedItKeepsWhatIsDoneAndGoesOn) {
    make_photo(card / "DCIM" / "first.jpg", 1, "-DateTimeOriginal='2026:11:07 10:12:03'");
    const std::string first = text_of(card / "DCIM" / "first.jpg");
    constexpr std::size_t count = 400;
    for (std::size_t i = 1; i < count; ++i) {
        // Bytes after the end of a JPEG make it another file and the same picture.
        std::ofstream(card / "DCIM" / ("more" + std::to_string(i) + ".jpg")) << first << i;
    }
    const std::string command = shell_word(QTURN_PROGRAM) + " import " + shell_word(card) +
                                " --progress --json --library " + shell_word(library);
    const std::string script = "exec 3< <(exec " + command + " 2>&1 >" +
                               shell_word(folder / "out") +
                               "); read -r line <&3; kill -INT $!; cat <&3 >/dev/null; wait $!; "
                               "echo $?";
    EXPECT_EQ(output_of("bash -c " + shell_word(script)), "3\n");
    const json report = json::parse(text_of(folder / "out"));
    EXPECT_EQ(report["stopped"], true);
    const std::size_t kept = report["imported"];
    EXPECT_LT(kept, count);
    EXPECT_EQ(photos().size(), kept);
    EXPECT_EQ(answer({"import", card})["imported"], count - kept);
    for (const json& photo : photos()) {
        EXPECT_TRUE(std::filesystem::exists(library + '/' + photo["path"].get<std::string>()));
    }
}

}  // namespace
}  // namespace quarterturn
