// The gallery for a website, looked at by others: tidy reads it, Chromium shows it, and axe-core
// looks for what keeps anybody from using it (environment variable AXE_CORE: its axe.min.js).

#include <regex>

#include "tests/app/card_test.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class GalleryTest : public CardTest {
  protected:
    void SetUp() override {
        CardTest::SetUp();
        said({"settings", "business name", "Pins & Paper"});
        said({"client", "add", "Ada Lindqvist"});
        said({"look", "add", "Ada Lindqvist", "Ada's bun"});
        cv::Mat picture(1500, 1200, CV_8UC3);
        for (int number = 1; number <= 4; ++number) {
            cv::RNG(static_cast<std::uint64_t>(number)).fill(picture, cv::RNG::UNIFORM, 40, 215);
            write_bytes(card / ("DCIM/" + std::to_string(number) + ".jpg"),
                        encoded(picture, ".jpg"));
        }
        said({"import", card});
        said({"tag", "1.jpg", "2.jpg", "3.jpg", "4.jpg", "--look", "1", "--angle", "back"});
        said({"pairs", "facts", "1", "--family", "low bun", "--colour", "brown"});
        said({"photo", "whose", "1.jpg", "2.jpg", "--own"});
        said({"photo", "whose", "3.jpg", "--photographer", "Wren <Aldous>", "--licensed", "website",
              "--credit", "Photo: Wren <Aldous>"});
        said({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how",
              "message"});
        said({"portfolio", "select", "Spring page", "2.jpg", "1.jpg", "3.jpg", "4.jpg"});
        written = answer({"portfolio", "gallery", "--selection", "spring page", "--to", to}, 3);
        html = text_of(to / "index.html");
    }

    std::string shown_by_chromium(const std::filesystem::path& page, const char* mood) {
        const TemporaryFolder profile;
        return output_of(
            "timeout 120 chromium --headless --no-sandbox --disable-gpu --no-first-run "
            "--disable-background-networking --disable-dev-shm-usage --virtual-time-budget=20000 "
            "--host-resolver-rules='MAP * ~NOTFOUND' --user-data-dir=" +
            shell_word((profile / "of").string()) + " --blink-settings=preferredColorScheme=" +
            mood + " --log-net-log=" + shell_word((folder / "net.json").string()) + " --dump-dom " +
            shell_word("file://" + page.string()) + " 2>/dev/null");
    }

    // The browser's own requests come from no page.
    std::vector<std::string> requests() {
        std::vector<std::string> urls;
        const json log = json::parse(text_of(folder / "net.json"));
        for (const json& event : log["events"]) {
            const json params = event.value("params", json::object());
            if (params.value("initiator", "not an origin") != "not an origin") {
                urls.push_back(params.value("url", ""));
            }
        }
        return urls;
    }

    json written;
    std::string html;
    std::filesystem::path to = folder / "gallery";
};

TEST_F(GalleryTest, ACandidateSaysWhetherItsLookIsSignedOff) {
    said({"tag", "1.jpg", "--stage", "after"});
    const std::string told = said({"portfolio", "candidates", "--for", "website"});
    EXPECT_NE(told.find("1.jpg  Ada's bun, back, not signed off yet"), std::string::npos) << told;
    const json listed = answer({"portfolio", "candidates", "--for", "website"})["photos"];
    EXPECT_EQ(listed.at(0).at("signed_off"), false);
}

TEST_F(GalleryTest, ATitleThatNamesAClientIsRefused) {
    said({"portfolio", "select", "The Lindqvist party", "1.jpg"});
    const auto of_party = [&](Arguments more) {
        Arguments line{"portfolio",           "gallery", "--selection",
                       "The Lindqvist party", "--to",    folder / "party"};
        line.insert(line.end(), more.begin(), more.end());
        return line;
    };
    EXPECT_NE(complained(of_party({}), 1).find("Ada Lindqvist"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(folder / "party/index.html"));
    said(of_party({"--title", "A party by the water"}));
    const std::string page = text_of(folder / "party/index.html");
    EXPECT_NE(page.find("A party by the water"), std::string::npos);
    EXPECT_EQ(page.find("Lindqvist"), std::string::npos);
}

TEST_F(GalleryTest, ShowsWhatMayGoInHerOrderAndNothingOfTheClient) {
    EXPECT_EQ(written["photos"][3]["shown"], false) << "nobody said whose photo it is";
    EXPECT_EQ(written["pictures"], 9);
    EXPECT_EQ(files_in(to / "pictures").size(), 9U);
    EXPECT_EQ(answer({"ledger", "list"})["exports"].size(), 9U);
    // This tidy is older than the attribute of the HTML Standard, 4.8.3.
    EXPECT_EQ(output_of("tidy -q -e " + shell_word((to / "index.html").string()) +
                        " 2>&1 | grep -v 'proprietary attribute \"loading\"'; true"),
              "");
    for (const char* secret : {"Ada", "Lindqvist", "<script", "http", "4.jpg\""}) {
        EXPECT_EQ(html.find(secret), std::string::npos) << secret;
    }
    const std::regex picture(
        "src=\"(pictures/[^\"]*)\" srcset=\"([^\"]*)\"[^>]* width=\"(\\d+)\" height=\"(\\d+)\""
        "[^>]* alt=\"([^\"]*)\"");
    const auto begin = std::sregex_iterator(html.begin(), html.end(), picture);
    EXPECT_EQ(std::distance(begin, {}), 3);
    EXPECT_EQ((*begin)[5], "Low bun, seen from the back; hair: brown");
    EXPECT_EQ((*begin)[3], "1200");
    EXPECT_EQ(std::string((*begin)[2]),
              "pictures/website-0001.jpg 512w, pictures/website-0004.jpg 1024w, "
              "pictures/website-0007.jpg 1200w");
    EXPECT_NE(html.find("Photo: Wren &lt;Aldous&gt;"), std::string::npos);
    EXPECT_EQ(std::count(html.begin(), html.end(), '\n') > 10, true);
    complained({"portfolio", "gallery", "--selection", "Spring page", "--to", to}, 1);
}

TEST_F(GalleryTest, SaysOfAPhotoWhetherTheLookIsFinishedOnIt) {
    said({"tag", "1.jpg", "--stage", "during", "--angle", "detail"});
    said({"tag", "2.jpg", "--stage", "before"});
    answer({"portfolio", "gallery", "--selection", "Spring page", "--to", folder / "stages"}, 3);
    const std::string page = text_of(folder / "stages/index.html");
    for (const char* caption : {"<figcaption>Low bun while it is made, seen from close by",
                                "<figcaption>The hair before, seen from the back"}) {
        EXPECT_NE(page.find(caption), std::string::npos) << caption;
    }
}

TEST_F(GalleryTest, AsksTheNetworkForNothing) {
    EXPECT_NE(shown_by_chromium(to / "index.html", "1").find("Low bun, seen"), std::string::npos);
    EXPECT_EQ(requests(), std::vector<std::string>{});
}

// WCAG 2.2 as far as a program can tell.
TEST_F(GalleryTest, KeepsNobodyOutByDayOrByNight) {
    const char* axe = std::getenv("AXE_CORE");
    if (axe == nullptr) GTEST_SKIP() << "AXE_CORE names no axe.min.js";
    std::filesystem::copy_file(axe, to / "axe.min.js");
    const std::string run =
        "<script src=\"axe.min.js\"></script><script>axe.run().then(found=>{document.body."
        "innerHTML='<pre>'+JSON.stringify({passes:found.passes.length,wrong:found.violations.map("
        "each=>each.id)})+'</pre>'})</script></body>";
    std::string page = html;
    page.replace(page.find("</body>"), 7, run);
    std::ofstream(to / "axe.html") << page;
    for (const char* mood : {"0", "1"}) {
        const std::string shown = shown_by_chromium(to / "axe.html", mood);
        const auto from = shown.find("<pre>");
        ASSERT_NE(from, std::string::npos) << shown;
        const json found = json::parse(shown.substr(from + 5, shown.find("</pre>") - from - 5));
        EXPECT_EQ(found["wrong"], json::array()) << mood;
        EXPECT_GT(found["passes"], 10);
    }
}

}  // namespace
}  // namespace quarterturn
