// Every command on a library of somebody else, who lets us read it and change nothing.

#include <map>
#include <set>

#include "app/qturn/command_set.h"
#include "tests/app/pairs_fixture.h"
#include "tests/support/child.h"

namespace quarterturn {
namespace {

using CommandLines = std::vector<Arguments>;

// Those that change nothing, each with all it asks.
std::map<std::string, CommandLines> asking_commands(const std::string& free_place) {
    const auto place = [&](const std::string& name) { return free_place + '/' + name; };
    return {
        {"settings", {{}}},
        {"client list", {{}}},
        {"client show", {{"1"}}},
        {"client export", {{"1", "--to", place("hers")}}},
        {"client erase", {{"1", "--show-only"}}},
        {"client erasures", {{}}},
        {"client retention", {{}}},
        {"wedding list", {{}}},
        {"wedding show", {{"1"}}},
        {"sitting list", {{}}},
        {"sitting show", {{"1"}}},
        {"look list", {{}}},
        {"look show", {{"1"}}},
        {"look erase", {{"1", "--show-only"}}},
        {"recipe show", {{"1"}}},
        {"recipe revisions", {{"1"}}},
        {"recipe check", {{"1"}}},
        {"recipe rules", {{}}},
        {"recipe complete", {{"product"}}},
        {"recipe templates", {{}}},
        {"kit", {{"1"}, {"1", "--out", place("kit.pdf")}}},
        {"running-order", {{"1"}, {"1", "--out", place("order.pdf")}}},
        {"board", {{"1"}, {"1", "--out", place("board.pdf")}}},
        {"take-down", {{"1"}, {"1", "--out", place("down.pdf")}}},
        {"timer list", {{"1"}}},
        {"day-photos", {{"1"}}},
        {"as-made", {{"1"}, {"1", "--out", place("made.pdf")}}},
        {"head-points", {{"1"}}},
        {"photos", {{}}},
        {"find", {{"bun"}}},
        {"devices", {{}}},
        {"clock propose", {{}}},
        {"bin list", {{}}},
        {"check", {{}}},
        {"bursts", {{}}},
        {"coverage", {{"1"}}},
        {"shot-list", {{}, {"1"}}},
        {"sheet", {{"1", "--out", place("sheet.pdf")}}},
        {"pairs list", {{}}},
        {"pairs count", {{}}},
        {"pairs filters", {{}}},
        {"pairs show", {{"1"}}},
        {"pairs like", {{"--pair", "1"}}},
        {"pairs progress", {{"1"}}},
        {"inspiration list", {{}}},
        {"consent show", {{"1"}}},
        {"consent history", {{"1"}}},
        {"consent form", {{"1", "--out", place("form.pdf")}}},
        {"photo whose", {{"1"}}},
        {"photo people", {{"1"}}},
        {"may", {{"1", "--for", "website"}}},
        {"portfolio candidates", {{"--for", "website"}}},
        {"portfolio selections", {{}}},
        {"ledger list", {{}}},
        {"ledger print", {{"--out", place("ledger.pdf")}}},
        {"ledger tasks", {{}}},
        {"backups", {{}}},
        {"verify", {{}}},
        {"safe-to-delete", {{free_place}}},
    };
}

// Those that change something, ask nothing of the library, or ask for more than is in this one.
const std::set<std::string> other_commands{"init",
                                           "version",
                                           "completion",
                                           "help-report",
                                           "restore",
                                           "lock status",
                                           "rebuild-cache",
                                           "scenario",
                                           "client add",
                                           "client change",
                                           "wedding add",
                                           "wedding change",
                                           "sitting add",
                                           "sitting change",
                                           "look add",
                                           "look change",
                                           "recipe set",
                                           "recipe from",
                                           "recipe diff",
                                           "recipe step",
                                           "export-record",
                                           "recipe save-template",
                                           "recipe remove-template",
                                           "timer start",
                                           "timer stop",
                                           "import",
                                           "sort",
                                           "place",
                                           "clock apply",
                                           "clock decline",
                                           "clock pair",
                                           "tag",
                                           "confirm",
                                           "accept",
                                           "bin add",
                                           "bin take-out",
                                           "bin empty",
                                           "undo",
                                           "redo",
                                           "waive",
                                           "sign-off",
                                           "reopen",
                                           "pairs keep",
                                           "pairs forget",
                                           "pairs choose",
                                           "pairs pin",
                                           "pairs refuse",
                                           "pairs facts",
                                           "pairs measure",
                                           "pairs picture",
                                           "inspiration remove",
                                           "consent grant",
                                           "consent decline",
                                           "consent withdraw",
                                           "consent attach",
                                           "photo hair-only",
                                           "portfolio export",
                                           "portfolio select",
                                           "portfolio gallery",
                                           "ledger place",
                                           "ledger taken-down",
                                           "backup",
                                           "lock set",
                                           "lock change",
                                           "lock recovery-key",
                                           "lock remove"};

Arguments words_for(const std::string& command, const Arguments& more) {
    const std::size_t space = command.find(' ');
    Arguments line{command.substr(0, space)};
    if (space != std::string::npos) line.push_back(command.substr(space + 1));
    line.insert(line.end(), more.begin(), more.end());
    return line;
}

class OnlyToLookTest : public PairsTest {
  protected:
    void SetUp() override {
        PairsTest::SetUp();
        said({"wedding", "add", "Boathouse", "--date", "2027-05-15", "--ready-by", "12:30",
              "--party", "1=bride"});
        said({"look", "change", "1", "--wedding", "1"});
        std::filesystem::create_directory(free_place);
    }

    // What a command says is written beside the library.
    std::string to_stranger(const Work& work) {
        change_modes("-R a+rX,a-w", {library});
        change_modes("a+rwx", {folder.path(), free_place, folder / "out", folder / "error"});
        std::string answer = as_stranger(work);
        change_modes("-R u+w", {library});
        return answer;
    }

    const std::string free_place = folder / "free";
    const std::string why = library +
                            "/records.sqlite may not be changed: allow it in its "
                            "permissions, or sign in as the user it belongs to; or copy "
                            "the library's folder to a place you can write in and open "
                            "it there.\n";

  private:
    static void change_modes(const std::string& how,
                             const std::vector<std::filesystem::path>& places) {
        std::string command = "chmod " + how;
        for (const auto& place : places) command += ' ' + shell_word(place);
        output_of(command);
    }
};

TEST_F(OnlyToLookTest, EveryCommandThatOnlyAsksIsAnswered) {
    pairs();  // they are laid out once
    const auto asking = asking_commands(free_place);
    const std::string wrong = to_stranger([&] {
        std::string told;
        for (const auto& [command, lines] : asking) {
            for (const Arguments& more : lines) {
                const Ran ran = run(words_for(command, more));
                const bool told_once = ran.error.ends_with("Only to be looked at: " + why);
                if ((ran.code == 0 || !ran.out.empty()) && told_once) continue;
                told += command + ": " + std::to_string(ran.code) + ' ' + ran.error + '\n';
            }
        }
        return told;
    });
    EXPECT_EQ(wrong, "");
}

TEST_F(OnlyToLookTest, EveryCommandIsKnownToAskOrToChange) {
    const auto asking = asking_commands(free_place);
    CommandSet commands;
    add_all_commands(commands);
    for (const NextWords& next : commands.next_words()) {
        const bool is_group = !next.words.empty() && !next.words.front().starts_with("--");
        if (is_group) continue;
        const std::string name = next.after.substr(std::string("qturn ").size());
        EXPECT_TRUE(asking.contains(name) != other_commands.contains(name)) << name;
    }
}

TEST_F(OnlyToLookTest, WhatIsRefusedSaysWhyOnceAndLeavesNothingElsewhere) {
    const CommandLines changing{{"client", "add", "Bea Holm"},
                                {"shot-list", "1", "--drop", "before, back"},
                                {"head-points", "1", "--top", "48,12", "--bottom", "50,61"},
                                {"client", "erase", "1", "--yes-erase", "Ada Lindqvist"},
                                {"backup", free_place + "/backup"},
                                {"undo"}};
    const std::string told = to_stranger([&] {
        std::string all;
        for (const Arguments& line : changing) {
            const Ran ran = run(line);
            if (ran.code != 1 || ran.error != why) all += line[0] + ": " + ran.out + ran.error;
        }
        return all;
    });
    EXPECT_EQ(told, "");
    EXPECT_TRUE(std::filesystem::is_empty(free_place));
}

TEST_F(OnlyToLookTest, PairsThatCannotBeMadeThereAreNotDenied) {
    const std::string told = to_stranger([&] { return run({"pairs", "list"}).out; });
    EXPECT_EQ(told,
              "Some pairs are not among these, or stand as they were before: they are made when "
              "they are first listed, and here nothing can be written. Open the library where it "
              "can be changed, and list them there.\n");
}

// Her name stands in a note of another.
TEST_F(OnlyToLookTest, AnErasureIsShownAsItWouldBe) {
    said({"client", "add", "Bea Holm", "--note", "sister of Ada Lindqvist"});
    const Arguments show{"client", "erase", "1", "--show-only"};
    const std::string as_hers = said(show);
    const std::string told = to_stranger([&] { return run(show).out; });
    EXPECT_EQ(told, as_hers);
    EXPECT_NE(told.find("Her name is taken out of"), std::string::npos) << told;
}

}  // namespace
}  // namespace quarterturn
