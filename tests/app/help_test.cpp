#include <regex>
#include <sstream>

#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "tests/app/program.h"

namespace quarterturn {
namespace {

std::vector<std::string> names_of(bool groups) {
    CommandSet commands;
    add_all_commands(commands);
    std::vector<std::string> names;
    for (const NextWords& next : commands.next_words()) {
        const bool is_group = !next.words.empty() && !next.words.front().starts_with("--");
        if (is_group == groups && next.after != "qturn") {
            names.push_back(next.after.substr(std::string("qturn ").size()));
        }
    }
    return names;
}

// All commands, as "client add".
std::vector<std::string> all_commands() {
    return names_of(false);
}

Arguments words_of(const std::string& name) {
    const std::size_t space = name.find(' ');
    if (space == std::string::npos) return {name};
    return {name.substr(0, space), name.substr(space + 1)};
}

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

class HelpTest : public QturnTest {};

TEST_F(HelpTest, EveryCommandExplainsItselfWithAnExampleOfItself) {
    ASSERT_GT(all_commands().size(), 30U);
    for (const std::string& name : all_commands()) {
        Arguments arguments = words_of(name);
        arguments.emplace_back("--help");
        const std::string help = said(arguments);
        EXPECT_TRUE(contains(help, "Example:\n  qturn " + name)) << name;
        EXPECT_TRUE(contains(help, "--library FOLDER")) << name;
        EXPECT_TRUE(contains(help, "--json")) << name;
    }
}

TEST_F(HelpTest, EveryGroupGivesAnExampleOfACommandOfItsOwn) {
    const std::vector<std::string> groups = names_of(true);
    ASSERT_GT(groups.size(), 10U);
    for (const std::string& group : groups) {
        EXPECT_TRUE(contains(said({group, "--help"}), "Example:\n  qturn " + group + ' ')) << group;
    }
}

TEST_F(HelpTest, HelpOfTheProgramNamesExitCodes) {
    EXPECT_TRUE(contains(said({"--help"}), "0 done, 1 failed, 2 wrong use, 3 done but"));
}

TEST_F(HelpTest, VersionIsTheProjects) {
    EXPECT_EQ(answer({"version"})["version"], QUARTERTURN_PROJECT_VERSION);
    EXPECT_EQ(said({"--version"}), "qturn " QUARTERTURN_PROJECT_VERSION "\n");
}

// mandoc's lint knows the man(7) language; it prints nothing for a clean page.
TEST(ManPage, IsWellFormed) {
    EXPECT_EQ(
        output_of("mandoc -T lint " + shell_word(QUARTERTURN_SOURCE "/app/man/qturn.1") + " 2>&1"),
        "");
}

std::string man_page_text() {
    return output_of("mandoc -T ascii -O width=1000 " +
                     shell_word(QUARTERTURN_SOURCE "/app/man/qturn.1") + " | sed 's/.\\x08//g'");
}

TEST(ManPage, NamesEveryCommand) {
    const std::string page = man_page_text();
    for (const std::string& name : all_commands()) {
        const Arguments words = words_of(name);
        EXPECT_TRUE(contains(page, "qturn " + words.front())) << name;
        EXPECT_TRUE(contains(page, words.back())) << name;
    }
}

TEST(ManPage, NamesEveryOptionThatIsNotAboutRecordsFields) {
    const std::string page = man_page_text();
    CommandSet commands;
    add_all_commands(commands);
    for (const NextWords& next : commands.next_words()) {
        if (next.after.ends_with(" add") || next.after.ends_with(" change")) continue;
        for (const std::string& word : next.words) EXPECT_TRUE(contains(page, word)) << word;
    }
}

// The words in backquotes of a command's row in the description of JSON.
std::vector<std::string> keys_described_of(const std::string& command) {
    std::istringstream page(text_of(QUARTERTURN_SOURCE "/app/qturn/json.md"));
    std::vector<std::string> keys;
    for (std::string line; std::getline(page, line);) {
        if (!line.starts_with("| `" + command + "` |")) continue;
        const std::regex key("`([a-z_]+)`");
        const auto from = line.begin() + static_cast<std::ptrdiff_t>(command.size() + 6);
        for (std::sregex_iterator found(from, line.end(), key); found != std::sregex_iterator();
             ++found) {
            keys.push_back((*found)[1]);
        }
    }
    return keys;
}

TEST(ManPage, NamesEveryKeyOfTheAnswersThatItDescribes) {
    const std::string page = man_page_text();
    const std::string answers = page.substr(page.find("\nJSON ANSWERS"));
    for (const char* command :
         {"import", "import --preview", "coverage", "sort", "confirm", "sign-off", "sheet"}) {
        const auto keys = keys_described_of(command);
        EXPECT_FALSE(keys.empty()) << command;
        for (const std::string& key : keys) EXPECT_TRUE(contains(answers, key)) << command << key;
    }
}

TEST(JsonDescription, SpeaksOfEveryCommand) {
    const std::string page = text_of(QUARTERTURN_SOURCE "/app/qturn/json.md");
    for (const std::string& name : all_commands()) {
        const Arguments words = words_of(name);
        EXPECT_TRUE(contains(page, '`' + words.front())) << name;
        EXPECT_TRUE(contains(page, words.back() + '`')) << name;
    }
}

}  // namespace
}  // namespace quarterturn
