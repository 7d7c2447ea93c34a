// The board for a phone, looked at by others: tidy reads its HTML, exiftool its pictures, and
// Chromium shows it at the sizes of phones.

#include "indexer/sheet/phone_page.h"
#include "indexer/worker/confined.h"

#include <nlohmann/json.hpp>
#include <regex>

#include "tests/support/command.h"
#include "tests/support/party_of_six.h"

namespace quarterturn {
namespace {

using nlohmann::json;

std::vector<std::byte> bytes_of_base64(const std::string& text) {
    const std::string letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::vector<std::byte> bytes;
    unsigned group = 0;
    int bits = 0;
    for (const char c : text) {
        if (c == '=') break;
        group = group << 6U | static_cast<unsigned>(letters.find(c));
        bits += 6;
        if (bits < 8) continue;
        bits -= 8;
        bytes.push_back(static_cast<std::byte>(group >> static_cast<unsigned>(bits) & 0xffU));
    }
    return bytes;
}

void write_text(const Path& file, const std::string& text) {
    write_bytes(file, std::as_bytes(std::span(text)));
}

std::string replaced(std::string text, const std::string& what, const std::string& by) {
    const std::size_t at = text.find(what);
    if (at == std::string::npos) throw std::runtime_error(what + " is not there");
    return text.replace(at, what.size(), by);
}

struct Shown {
    json frames;
    std::vector<std::string> requests;
};

// A page that says more than a phone may know of her is made once for all tests.
class PageForAPhone : public testing::Test {
  protected:
    static void SetUpTestSuite() {
        folder_ = std::make_unique<TemporaryFolder>();
        std::vector<Path> pictures;
        for (const char* name : {"141003", "141018", "141036", "141050"}) {
            pictures.push_back(*folder_ / (std::string(name) + ".jpg"));
            output_of(
                "exiftool -q -GPSLatitude=50.1 -GPSLatitudeRef=N -GPSLongitude=8.2 "
                "-GPSLongitudeRef=E -XMP-dc:Creator=Somebody -IPTC:City=Sallowmere -o " +
                shell_word(pictures.back().string()) + " " +
                shell_word(QUARTERTURN_DEMO_PHOTOS "/photos/phone/20260822_" + std::string(name) +
                           ".jpg"));
        }
        source_ = pictures.front();
        PartyOfSix party(pictures, 6);
        party.library.settings().set(business_name_setting, "Pins & Paper");
        const auto decoder = make_confined_decoder();
        page_ = phone_page(wedding_board(party.library, party.wedding), party.library, *decoder,
                           at("2026-11-20T18:05"));
        write_text(file(), page_.html);
    }
    static void TearDownTestSuite() { folder_.reset(); }

    static Path file() { return *folder_ / "board.html"; }

    static constexpr const char* sizes[]{"width=360 height=640", "width=390 height=844",
                                         "width=844 height=390"};

    static void write_measured_page() {
        static const std::regex policy("<meta http-equiv=\"Content-Security-Policy\"[^>]*>");
        const auto script = read_bytes(QUARTERTURN_MEASURE);
        const std::string words(reinterpret_cast<const char*>(script.data()), script.size());
        std::smatch found;
        ASSERT_TRUE(
            std::regex_search(page_.html.cbegin(), page_.html.cbegin() + 2000, found, policy));
        const std::string page = replaced(page_.html, found.str(), "");
        write_text(*folder_ / "measured.html",
                   replaced(page, "</body>", "<script>" + words + "</script></body>"));
    }

    // Chromium shows the page in frames as large as phones. `mood` is its preferredColorScheme: 0
    // dark, 1 light. Answers what measure.js measured, and what pages asked the network for.
    static Shown shown(const std::string& mood, const std::string& beside) {
        write_measured_page();
        std::string frames;
        for (const char* size : sizes) {
            frames +=
                "<iframe src=measured.html style='border:0' " + std::string(size) + "></iframe>";
        }
        write_text(*folder_ / "around.html",
                   "<!DOCTYPE html><html style='color-scheme:light dark'><body><script>"
                   "const all=[];addEventListener('message',(each)=>{all.push(each.data);"
                   "if(all.length===3){document.body.innerHTML='<pre></pre>';"
                   "document.querySelector('pre').textContent=JSON.stringify(all)}});</script>" +
                       frames + "<iframe src=board.html></iframe>" + beside + "</body></html>");
        const TemporaryFolder profile;
        const Path log = *folder_ / "net.json";
        const std::string page = output_of(
            "timeout 120 chromium --headless --no-sandbox --disable-gpu --no-first-run "
            "--hide-scrollbars --disable-background-networking --disable-dev-shm-usage "
            "--virtual-time-budget=10000 --host-resolver-rules='MAP * ~NOTFOUND' "
            "--user-data-dir=" +
            shell_word((profile / "of").string()) + " --blink-settings=preferredColorScheme=" +
            mood + " --log-net-log=" + shell_word(log.string()) + " --dump-dom " +
            shell_word("file://" + (*folder_ / "around.html").string()) + " 2>/dev/null");
        const std::size_t from = page.find("<pre>") + 5;
        return {json::parse(page.substr(from, page.find("</pre>") - from)), requests_in(log)};
    }

    // The browser's own requests come from no page.
    static std::vector<std::string> requests_in(const Path& log) {
        const auto bytes = read_bytes(log);
        const json all = json::parse(reinterpret_cast<const char*>(bytes.data()),
                                     reinterpret_cast<const char*>(bytes.data()) + bytes.size());
        std::vector<std::string> requests;
        for (const json& event : all["events"]) {
            const json params = event.value("params", json::object());
            const std::string from = params.value("initiator", "not an origin");
            if (from != "not an origin") requests.push_back(params.value("url", ""));
        }
        return requests;
    }

    // WCAG 2.2: 1.4.3 contrast of 4.5, 1.4.10 nothing to scroll sideways.
    static void expect_readable(const json& frames, bool dark) {
        ASSERT_EQ(frames.size(), 3U);
        for (const json& frame : frames) {
            SCOPED_TRACE(frame.dump());
            EXPECT_EQ(frame["dark"], dark);
            EXPECT_LE(frame["overflow"], 0);
            EXPECT_GE(frame["contrast"], 4.5);
            EXPECT_GE(frame["font_px"], 17);
            EXPECT_GE(frame["target"], 44);
            EXPECT_EQ(frame["pictures"], 24);  // each shown whole within the height of the screen
            EXPECT_GT(frame["texts"], 100);
            EXPECT_EQ(frame["fetched"], 0);
        }
    }

    static inline std::unique_ptr<TemporaryFolder> folder_;
    static inline Path source_;  // one of the photos
    static inline PhonePage page_;
};

TEST_F(PageForAPhone, IsHtmlInWhichTidyFindsNoFault) {
    EXPECT_EQ(output_of("tidy -q -e " + shell_word(file().string()) + " 2>&1; true"), "");
}

TEST_F(PageForAPhone, SaysWhatIsNeededAndNothingElse) {
    EXPECT_TRUE(page_.problems.empty());
    EXPECT_LT(page_.html.size(), most_phone_bytes);
    const std::string text = output_of("sed 's/base64,[^\"]*//g' " + shell_word(file().string()));
    const auto has = [&](const std::string& words) {
        return text.find(words) != std::string::npos;
    };
    for (const char* words :
         {"<html lang=\"en\" dir=\"ltr\">", "Vale &amp; &lt;Okonjo&gt;",
          "S\u00e9raphine &lt;/h2&gt; Va\u0161novi\u010d",
          "Zo\u00eb O&#39;&quot;Hara&quot; &amp; Daughter", "\u10dc\u10d8\u10dc\u10dd",
          "\u0644\u064a\u0627\u0646", "Ready by 12:30", "tender &lt;left&gt; ear",
          "Twist &lt;/style&gt;&lt;script&gt;", "6 pins", "15 min waiting",
          "pearl comb above the left ear", "loves it", "21 November 2026",
          "This page is from Pins &amp; Paper,", "delete it after the day",
          "Heat burns and dries hair", "As it stood on 20 November 2026 at 18:05."}) {
        EXPECT_TRUE(has(words)) << words;
    }
    for (const char* words : {"<script", "Old Granary", "Sallowmere", "0123", "SECRET_NAME",
                              "photos/", "http://", "https://", "url(", "@import"}) {
        EXPECT_FALSE(has(words)) << words;
    }
}

std::vector<std::string> all_of(const std::string& text, const std::regex& wanted) {
    std::vector<std::string> found;
    for (std::sregex_iterator each(text.begin(), text.end(), wanted), end; each != end; ++each) {
        found.push_back((*each)[1]);
    }
    return found;
}

TEST_F(PageForAPhone, LeadsToEachClientAndFromThereToPhotosStepsAndBack) {
    const std::string text = output_of("sed 's/base64,[^\"]*//g' " + shell_word(file().string()));
    const auto links = all_of(text, std::regex("href=\"#([^\"]*)\""));
    const auto places = all_of(text, std::regex(" id=\"([^\"]*)\""));
    EXPECT_EQ(links.size(), 6U + 3 * 6);
    for (const std::string& link : links) {
        EXPECT_EQ(std::ranges::count(places, link), 1) << link;
    }
    EXPECT_EQ(std::ranges::count(links, "top"), 6);
    EXPECT_EQ(std::ranges::count(links, "client-6-look-1-photos"), 1);
    EXPECT_EQ(std::ranges::count(links, "client-6-look-1-steps"), 1);
}

TEST_F(PageForAPhone, PicturesCarryNothingOfCameraPlaceOrTime) {
    const std::string ask = "exiftool -q -j -G1 -a -u ";
    const std::string source = output_of(ask + shell_word(source_.string()));
    for (const char* group : {"IFD0:", "GPS:", "XMP-dc:", "IPTC:"}) {
        EXPECT_NE(source.find(group), std::string::npos) << group;  // or this test sees nothing
    }
    const Path pictures = *folder_ / "pictures";
    std::filesystem::create_directory(pictures);
    const std::string begin = "base64,";
    int count = 0;
    for (std::size_t at = page_.html.find(begin); at != std::string::npos;
         at = page_.html.find(begin, at + 1)) {
        const std::size_t from = at + begin.size();
        write_bytes(pictures / (std::to_string(++count) + ".jpg"),
                    bytes_of_base64(page_.html.substr(from, page_.html.find('"', from) - from)));
    }
    EXPECT_EQ(count, 24);
    const json told = json::parse(output_of(ask + shell_word(pictures.string())));
    ASSERT_EQ(told.size(), 24U);
    for (const json& picture : told) {
        EXPECT_EQ(picture["File:FileType"], "JPEG");
        EXPECT_GE(picture["File:ImageHeight"], 600);
        EXPECT_GT(picture["File:ImageHeight"], picture["File:ImageWidth"]);
        for (const auto& [name, value] : picture.items()) {
            const std::string group = name.substr(0, name.find(':'));
            EXPECT_TRUE(group == "SourceFile" || group == "ExifTool" || group == "System" ||
                        group == "File" || group == "JFIF" || group == "Composite")
                << name << ": " << value;
        }
    }
}

TEST_F(PageForAPhone, IsReadableByDayOnEveryPhoneAndFetchesNothing) {
    const Shown by_day = shown("1", "");
    expect_readable(by_day.frames, false);
    EXPECT_EQ(by_day.requests, std::vector<std::string>{});
}

TEST_F(PageForAPhone, IsReadableByNightAndARequestWouldBeSeen) {
    const Shown by_night = shown("0", "<img src='http://127.0.0.1:9/seen.png'>");
    expect_readable(by_night.frames, true);
    ASSERT_FALSE(by_night.requests.empty());
    for (const std::string& url : by_night.requests) {
        EXPECT_EQ(url, "http://127.0.0.1:9/seen.png");
    }
}

}  // namespace
}  // namespace quarterturn
