#include "tests/app/program.h"

namespace quarterturn {
namespace {

class CompletionTest : public QturnTest {
  protected:
    // What bash offers after these words; the last is the one being typed.
    std::string offered(const Arguments& words) {
        std::ofstream(folder / "qturn.bash") << said({"completion"});
        std::string script = "source " + shell_word(folder / "qturn.bash") + "; COMP_WORDS=(";
        for (const std::string& word : words) script += shell_word(word) + ' ';
        script += "); COMP_CWORD=" + std::to_string(words.size() - 1) +
                  "; _qturn; printf '%s ' \"${COMPREPLY[@]}\"";
        return output_of("bash -c " + shell_word(script));
    }
};

TEST_F(CompletionTest, OffersCommandsByTheirBeginning) {
    EXPECT_EQ(offered({"qturn", "sh"}), "shot-list sheet ");
    EXPECT_EQ(offered({"qturn", "cov"}), "coverage ");
}

TEST_F(CompletionTest, OffersWhatStandsBehindAGroup) {
    EXPECT_EQ(offered({"qturn", "client", "a"}), "add ");
    EXPECT_EQ(offered({"qturn", "clock", ""}),
              "propose apply decline pair --help --library --passphrase-file --json ");
}

TEST_F(CompletionTest, OffersOptionsOfTheCommandAlsoAfterOtherWords) {
    EXPECT_EQ(offered({"qturn", "--library", "/tmp", "sheet", "3", "--pap"}), "--paper ");
    EXPECT_EQ(offered({"qturn", "tag", "a.jpg", "--an"}), "--angle ");
}

}  // namespace
}  // namespace quarterturn
