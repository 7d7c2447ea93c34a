#include "tests/app/program.h"

namespace quarterturn {
namespace {

// What a packager does: install under a prefix of any name, and run from there.
TEST(Install, PutsProgramManPageAndCompletionUnderThePrefix) {
    const TemporaryFolder folder;
    const auto prefix = folder / "any prefix";
    output_of("cmake --install " + shell_word(QUARTERTURN_BUILD) + " --prefix " +
              shell_word(prefix));
    EXPECT_EQ(output_of(shell_word(prefix / "bin/qturn") + " version"),
              "qturn " QUARTERTURN_PROJECT_VERSION "\n");
    EXPECT_NE(output_of("mandoc " + shell_word(prefix / "share/man/man1/qturn.1")).find("qturn"),
              std::string::npos);
    const auto completion = prefix / "share/bash-completion/completions/qturn";
    EXPECT_EQ(output_of("bash -c " +
                        shell_word("source " + shell_word(completion) + "; complete -p qturn")),
              "complete -o default -F _qturn qturn\n");
}

}  // namespace
}  // namespace quarterturn
