#include <opencv2/core.hpp>

#include "tests/app/boathouse.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class BoardCommand : public BoathouseTest {
  protected:
    bool is_there(const char* name) { return std::filesystem::exists(folder / name); }
};

TEST_F(BoardCommand, TicksStepsAndKeepsThem) {
    const std::string before = said({"board", "Boathouse"}, 3);
    for (const char* words :
         {"Ada Lindqvist, bride, ready by 12:30", "! tender left ear", "[ ]  1. curl on the tongs",
          "15 min waiting", "! Heat burns and dries hair", "Berit Lindqvist has no look"}) {
        EXPECT_TRUE(says(before, words)) << words << " is not in\n" << before;
    }
    const json ticked =
        answer({"board", "Boathouse", "--client", "Ada Lindqvist", "--tick", "Low bun=2"});
    const json steps = ticked["clients"][0]["looks"][0]["steps"];
    EXPECT_EQ(steps[0]["done"], false);
    EXPECT_EQ(steps[1]["done"], true);
    EXPECT_TRUE(says(said({"board", "Boathouse"}, 3), "[x]  2. pin"));
    said({"board", "Boathouse", "--untick", "Low bun=2", "--tick", "Low bun=1"}, 3);
    EXPECT_TRUE(says(said({"board", "Boathouse"}, 3), "[ ]  2. pin"));
}

TEST_F(BoardCommand, SaysWhatItCannotTickAndTicksNothingThen) {
    EXPECT_TRUE(
        says(complained({"board", "Boathouse", "--tick", "Low bun=1", "--tick", "Low bun=3"}, 2),
             "has no step 3: it has 2 steps"));
    complained({"board", "Boathouse", "--tick", "3"}, 2);
    complained({"board", "Boathouse", "--tick", "Low bun=two"}, 2);
    EXPECT_TRUE(says(said({"board", "Boathouse"}, 3), "[ ]  1. curl"));
}

TEST_F(BoardCommand, AClientWithoutStepsIsSaidToBeDoneAndOthersAreNot) {
    const auto done = [&] {
        const json board = answer({"board", "Boathouse", "--client", "Berit Lindqvist"});
        return board["clients"][0]["done"].get<bool>();
    };
    EXPECT_FALSE(done());
    EXPECT_TRUE(says(said({"board", "Boathouse", "--done", "Berit Lindqvist"}, 3), "She is done."));
    EXPECT_TRUE(done());
    EXPECT_TRUE(says(complained({"board", "Boathouse", "--done", "Ada Lindqvist"}, 2),
                     "has a recipe with steps: tick them"));
    said({"board", "Boathouse", "--not-done", "Berit Lindqvist"}, 3);
    EXPECT_FALSE(done());
}

TEST_F(BoardCommand, NothingIsWrittenIntoTheLibrarysOwnFolder) {
    for (const Arguments& command :
         {Arguments{"board", "Boathouse", "--out", library + "/board.html"},
          Arguments{"board", "Boathouse", "--out", library + "/photos/../records.pdf", "--replace"},
          Arguments{"take-down", "Low bun", "--out", library + "/card.pdf"},
          Arguments{"running-order", "Boathouse", "--out", library + "/morning.pdf"},
          Arguments{"as-made", "Boathouse", "--out", library + "/as-made.pdf"},
          Arguments{"kit", "Boathouse", "--out", library + "/kit.pdf"},
          Arguments{"sheet", "Low bun", "--out", library + "/sheet.pdf"},
          Arguments{"client", "export", "1", "--to", library + "/ada"},
          Arguments{"export-record", "Low bun", "--to", library + "/bun"}}) {
        EXPECT_TRUE(says(complained(command, 2), "lies in the library's own folder")) << command[0];
    }
    std::filesystem::create_directory_symlink(library, folder / "link");
    complained({"board", "Boathouse", "--out", (folder / "link" / "board.pdf").string()}, 2);
    EXPECT_FALSE(is_there("library/board.html"));
}

TEST_F(BoardCommand, AnEmptyWeddingIsToldAlikeByAllCommands) {
    said({"wedding", "add", "Alone", "--date", "2027-06-01"});
    for (const Arguments& command :
         {Arguments{"board", "Alone"}, Arguments{"running-order", "Alone"},
          Arguments{"running-order", "Alone", "--check"}, Arguments{"kit", "Alone"},
          Arguments{"as-made", "Alone"}, Arguments{"day-photos", "Alone"}}) {
        const std::string told = said(command, 3);
        EXPECT_TRUE(says(told,
                         "Nobody is in the party of Alone yet. Add its clients with: "
                         "qturn wedding change 2 --party CLIENT=ROLE"))
            << command[0] << ": " << told;
        EXPECT_FALSE(says(told, "No photo of the wedding's day"));
        EXPECT_FALSE(says(told, "All are ready"));
    }
}

TEST_F(BoardCommand, SaysThatItShowsAPersonOnlyWhereAPhotoIsOnIt) {
    const auto without = [&](Arguments command, int code) {
        command.insert(command.end(), {"--out", folder / "page.pdf", "--replace"});
        EXPECT_FALSE(says(said(command, code), "It shows a person")) << command[0];
        EXPECT_EQ(answer(command, code)["caution"], "") << command[0];
    };
    without({"board", "Boathouse"}, 3);
    without({"take-down", "Low bun"}, 3);
    without({"sheet", "Low bun"}, 0);
    const auto bun = folder / "card/bun.jpg";
    std::filesystem::create_directory(bun.parent_path());
    write_bytes(bun, encoded(cv::Mat(96, 64, CV_8UC3, cv::Scalar::all(60)), ".jpg"));
    said({"import", bun.parent_path()});
    said({"tag", "bun.jpg", "--look", "Low bun", "--angle", "back", "--stage", "after"});
    said({"accept", "bun.jpg", "--because", "small on purpose"});
    for (const char* command : {"board", "take-down", "sheet"}) {
        const std::string of = command == std::string("board") ? "Boathouse" : "Low bun";
        const Ran ran = run({command, of, "--out", folder / "page.pdf", "--replace"});
        EXPECT_TRUE(says(ran.out, "It shows a person")) << command << '\n' << ran.out << ran.error;
    }
}

TEST_F(BoardCommand, IsWrittenForPaperAndForAPhone) {
    said({"board", "Boathouse", "--out", (folder / "board.pdf").string(), "--paper", "a3"}, 3);
    EXPECT_TRUE(is_there("board.pdf"));
    const json phone =
        answer({"board", "Boathouse", "--client", "1", "--out", (folder / "board.html").string()});
    EXPECT_TRUE(is_there("board.html"));
    complained({"board", "Boathouse", "--out", (folder / "board.html").string()}, 2);  // there
    complained({"board", "Boathouse", "--out", (folder / "board.txt").string()}, 2);
    complained({"board", "Boathouse", "--out", (folder / "none" / "board.pdf").string()}, 2);
}

TEST_F(BoardCommand, TakeDownSaysWhatTheRecipeLacksUntilItIsWritten) {
    EXPECT_TRUE(says(said({"take-down", "Low bun"}, 3), "write it under \"Second look\""));
    said({"recipe", "set", "Low bun", "--part", "second_look.steps.1=Take out the comb.", "--part",
          "second_look.taken_out=six grips", "--part", "second_look.done_by=Berit"});
    const json card = answer({"take-down", "Low bun", "--out", (folder / "card.pdf").string()}, 3);
    EXPECT_EQ(card["steps"], json({"Take out the comb."}));
    EXPECT_EQ(card["taken_out"], "six grips");
    EXPECT_TRUE(is_there("card.pdf"));
}

TEST_F(BoardCommand, TimersRunOnBetweenCommands) {
    const json timer = answer({"timer", "start", "Boathouse", "15", "Ada: cooling"})["timer"];
    EXPECT_EQ(timer["ends"].get<std::int64_t>() - timer["begins"].get<std::int64_t>(), 15 * 60);
    const json timers = answer({"timer", "list", "Boathouse"})["timers"];
    ASSERT_EQ(timers.size(), 1U);
    EXPECT_EQ(timers[0]["name"], "Ada: cooling");
    EXPECT_EQ(timers[0]["state"], "running");
    complained({"timer", "start", "Boathouse", "0", "Ada: cooling"}, 2);
    complained({"timer", "start", "Boathouse", "soon", "Ada: cooling"}, 2);
    complained({"timer", "stop", "Boathouse", "Berit: cooling"}, 2);
    said({"timer", "stop", "Boathouse", "Ada: cooling"});
    EXPECT_TRUE(says(said({"timer", "list", "Boathouse"}), "No timer runs."));
}

}  // namespace
}  // namespace quarterturn
