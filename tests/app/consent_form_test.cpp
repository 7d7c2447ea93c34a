// The form that a client signs, as poppler's pdftotext reads it.

#include "tests/app/program.h"

namespace quarterturn {
namespace {

class ConsentFormTest : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        said({"settings", "business name", "Pins and Paper"});
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

TEST_F(ConsentFormTest, TheFormIsOnePageToSign) {
    said({"settings", "business contact", "12 Ferry Lane, 555 0100"});
    const auto file = folder / "form.pdf";
    for (const char* paper : {"a4", "letter"}) {
        said({"consent", "form", "Ada Lindqvist", "--out", file, "--paper", paper, "--replace"});
        EXPECT_NE(output_of("pdfinfo " + shell_word(file)).find("Pages:           1"),
                  std::string::npos)
            << paper;
        const std::string text = output_of("pdftotext -layout " + shell_word(file) + " -");
        for (const char* part :
             {"Ada Lindqvist", "Pins and Paper", "12 Ferry Lane", "On my website",
              "In social media", "In print", "In a competition", "To teach others",
              "Shown to other clients", "Yes, hair only", "Yes, with my face",
              "take back your yes at any time", "Signature", "checked against the law"}) {
            EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
        }
    }
    said({"consent", "form", "--write-wording"});
    std::ofstream(std::filesystem::path(library) / "consent-form.txt") << "# Ask me\n\n[sign]\n";
    EXPECT_NE(complained({"consent", "form", "--out", folder / "own.pdf"}, 1)
                  .find("consent-form.txt has no line [uses]"),
              std::string::npos);
    std::ofstream(std::filesystem::path(library) / "consent-form.txt")
        << "# Ask me\n\n[uses]\n[sign]\n";
    said({"consent", "form", "--out", folder / "own.pdf"});
    const std::string own = output_of("pdftotext " + shell_word(folder / "own.pdf") + " -");
    EXPECT_NE(own.find("Ask me"), std::string::npos);
    EXPECT_NE(own.find("On my website"), std::string::npos);
    EXPECT_EQ(own.find("take back your yes"), std::string::npos);
}

}  // namespace
}  // namespace quarterturn
