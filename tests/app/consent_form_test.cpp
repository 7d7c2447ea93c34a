// The form that a client signs, as poppler's pdftotext reads it.

#include "tests/app/program.h"

namespace quarterturn {
namespace {

class ConsentFormTest : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        said({"client", "add", "Ada Lindqvist"});
    }

    // With one blank between words, wherever a line ends.
    std::string form_on(const std::string& paper) {
        const std::string file = folder / (paper + ".pdf");
        answer({"consent", "form", "Ada Lindqvist", "--out", file, "--paper", paper});
        std::string text;
        for (const char c : output_of("pdftotext -raw " + shell_word(file) + " -")) {
            const char next = c == '\n' || c == '\f' ? ' ' : c;
            if (next != ' ' || !text.ends_with(' ')) text += next;
        }
        return text;
    }
};

TEST_F(ConsentFormTest, CutsNoUseOffOnAnyPaper) {
    for (const char* paper : {"a3", "a4", "a5", "letter"}) {
        const std::string form = form_on(paper);
        for (const char* use : {"Kept to do your hair again", "Shown to other clients",
                                "On my website", "In social media", "To teach others"}) {
            EXPECT_NE(form.find(use), std::string::npos) << use << " on " << paper << '\n' << form;
        }
    }
}

}  // namespace
}  // namespace quarterturn
