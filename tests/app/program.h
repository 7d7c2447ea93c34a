#pragma once
// qturn, run with the words of a command line.

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "app/qturn/commands.h"
#include "tests/app/redirected.h"
#include "tests/support/command.h"
#include "tests/support/files.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {

using Arguments = std::vector<std::string>;

struct Ran {
    int code = -1;
    std::string out;
    std::string error;
};

// Each test has a folder of its own; `library` lies in it.
class QturnTest : public ::testing::Test {
  protected:
    // What qturn's main function runs, in this process: with the sanitizers it takes half a second
    // to start one, and hundreds are run. What belongs to a process is tested on QTURN_PROGRAM.
    Ran run(Arguments arguments) {
        arguments.insert(arguments.begin(), "qturn");
        arguments.insert(arguments.end(), {"--library", library});
        const auto out = folder / "out";
        const auto error = folder / "error";
        const int code = run_main(arguments, out, error);
        return {code, text_of(out), text_of(error)};
    }

    // Runs, expects the exit code, and answers what was printed.
    std::string said(const Arguments& arguments, int code = 0) {
        const Ran ran = run(arguments);
        EXPECT_EQ(ran.code, code) << line_of(arguments) << '\n' << ran.out << ran.error;
        return ran.out;
    }

    std::string complained(const Arguments& arguments, int code) {
        const Ran ran = run(arguments);
        EXPECT_EQ(ran.code, code) << line_of(arguments) << '\n' << ran.out << ran.error;
        EXPECT_EQ(ran.out, "");
        return ran.error;
    }

    nlohmann::json answer(Arguments arguments, int code = 0) {
        arguments.emplace_back("--json");
        return nlohmann::json::parse(said(arguments, code));
    }

    TemporaryFolder folder;
    std::string library = folder / "library";

  private:
    static int run_main(Arguments line, const std::filesystem::path& out,
                        const std::filesystem::path& error) {
        std::vector<char*> words;
        for (std::string& word : line) words.push_back(word.data());
        const Redirected to_out(STDOUT_FILENO, out);
        const Redirected to_error(STDERR_FILENO, error);
        return run_line(static_cast<int>(words.size()), words.data());
    }

    static std::string line_of(const Arguments& arguments) {
        std::string line = "qturn";
        for (const std::string& argument : arguments) line += ' ' + argument;
        return line;
    }
};

}  // namespace quarterturn
