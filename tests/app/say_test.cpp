#include "app/qturn/say.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "app/qturn/print.h"

namespace quarterturn {
namespace {

constexpr const char* replaced = "\xEF\xBF\xBD";  // U+FFFD

TEST(SafeText, LeavesTextOfAnyScriptAsItIs) {
    for (const char* text : {"plain", "Séraphine", "Ανθή", "ნინო", "ليان", "結婚式", "👰🏽"}) {
        EXPECT_EQ(safe_text(text), text);
    }
}

TEST(SafeText, TakesTheTerminalsCommandsOut) {
    EXPECT_EQ(safe_text("a\x1b[2Jb"), std::string("a") + replaced + "[2Jb");
    EXPECT_EQ(safe_text("a\rb\x07"), std::string("a") + replaced + "b" + replaced);
    EXPECT_EQ(safe_text("a\xC2\x9B"
                        "2Jb"),
              std::string("a") + replaced + "2Jb");  // U+009B, CSI
    EXPECT_EQ(safe_text("two\nlines\tand"), "two lines and");
}

// U+202E turns the direction, so that "gpj.exe" would be shown as "exe.jpg" (Unicode TR 36).
TEST(SafeText, TakesDirectionOverridesOut) {
    EXPECT_EQ(safe_text("a\xE2\x80\xAE"
                        "b"),
              std::string("a") + replaced + "b");
}

// Ill-formed by table 3-7 of the Unicode Standard: stray and missing continuations, overlong forms,
// a surrogate, beyond U+10FFFF.
TEST(SafeText, ReplacesWhatIsNoUtf8) {
    for (const char* text : {"\x80", "\xC3", "\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80",
                             "\xF4\x90\x80\x80", "\xF0\x80\x80\xAF", "\xFF"}) {
        const std::string safe = safe_text(std::string(text) + "!");
        EXPECT_TRUE(safe.starts_with(replaced) && safe.ends_with("!")) << safe;
        EXPECT_EQ(safe_text(safe), safe);
    }
}

RC_GTEST_PROP(SafeText, NeverHoldsAControlAndIsThenLeftAlone, (const std::string& any)) {
    const std::string safe = safe_text(any);
    for (const char c : safe) RC_ASSERT(static_cast<unsigned char>(c) >= 0x20 && c != 0x7F);
    RC_ASSERT(safe_text(safe) == safe);
    // nlohmann's strict writer throws for anything that is no UTF-8.
    RC_ASSERT(!nlohmann::json(safe).dump().empty());
}

RC_GTEST_PROP(JsonText, IsReadBackAsItWasForAnyValidText, (const std::string& any)) {
    const nlohmann::json data{{"text", safe_text(any)}};
    RC_ASSERT(nlohmann::json::parse(json_text(data)) == data);
}

TEST(JsonText, EscapesEveryControl) {
    const std::string text = json_text({{"name",
                                         "a\x1b\x7f\xC2\x9B"
                                         "b"}});
    EXPECT_EQ(text, "{\n  \"name\": \"a\\u001b\\u007f\\u009bb\"\n}");
    EXPECT_EQ(nlohmann::json::parse(text)["name"],
              "a\x1b\x7f\xC2\x9B"
              "b");
}

TEST(JsonText, ReplacesBytesThatAreNoUtf8) {
    EXPECT_EQ(nlohmann::json::parse(json_text({{"name", "a\xFF"}}))["name"],
              std::string("a") + replaced);
}

TEST(Joined, PutsAndBeforeTheLast) {
    EXPECT_EQ(joined({}), "");
    EXPECT_EQ(joined({"front"}), "front");
    EXPECT_EQ(joined({"left", "front", "back"}), "left, front and back");
}

TEST(Columns, LineUpByLettersNotByBytes) {
    EXPECT_EQ(columns({{"é", "x"}, {"ab", "y"}, {"c"}}),
              (std::vector<std::string>{"é   x", "ab  y", "c"}));
}

}  // namespace
}  // namespace quarterturn
