#pragma once
// The built qturn, run as a person or a script runs it.

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

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

inline std::string text_of(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

// Each test has a folder of its own; `library` lies in it.
class QturnTest : public ::testing::Test {
  protected:
    // `before` stands before the program on the shell's line, such as "LC_ALL=C".
    Ran run(const Arguments& arguments, const std::string& before = {}) {
        std::string line = before + ' ' + shell_word(QTURN_PROGRAM);
        for (const std::string& argument : arguments) line += ' ' + shell_word(argument);
        const auto out = folder / "out";
        const auto error = folder / "error";
        line += " --library " + shell_word(library) + " >" + shell_word(out) + " 2>" +
                shell_word(error);
        const int status = std::system(line.c_str());
        return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, text_of(out), text_of(error)};
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
    static std::string line_of(const Arguments& arguments) {
        std::string line = "qturn";
        for (const std::string& argument : arguments) line += ' ' + argument;
        return line;
    }
};

}  // namespace quarterturn
