#include "indexer/rules/shorthand.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <iostream>
#include <sstream>

#include "tests/support/arbitrary_text.h"
#include "tests/support/csv.h"

namespace quarterturn {
namespace {

std::string number(std::optional<double> value) {
    if (!value) return {};
    std::ostringstream text;
    text << *value;
    return text.str();
}
std::string number(std::optional<int> value) {
    return value ? std::to_string(*value) : std::string();
}

std::string temperature(const HeatTool& tool) {
    if (tool.temperature_c) return number(tool.temperature_c) + " C";
    return tool.temperature_f ? number(tool.temperature_f) + " F" : "";
}

// All that a step says, as the table writes it.
std::string told(const Step& step) {
    std::string text;
    const auto add = [&](const char* name, const std::string& value) {
        if (value.empty()) return;
        text += (text.empty() ? "" : "; ") + std::string(name) + '=' + value;
    };
    add("words", step.words);
    std::string products;
    for (const Product& each : step.products) {
        products +=
            (products.empty() ? "" : ", ") + each.name + '/' + each.amount + '/' + each.where;
    }
    add("product", products);
    if (step.heat_tool) {
        add("tool", step.heat_tool->kind + '/' + number(step.heat_tool->barrel_mm) + '/' +
                        temperature(*step.heat_tool));
    }
    add("section", number(step.winding.section_mm));
    if (step.winding.direction) add("wind", std::string(word(*step.winding.direction)));
    add("lift", step.winding.root_lift);
    if (step.setting != Setting{}) {
        add("set", step.setting.how + '/' + number(step.setting.cooling_minutes) + '/' +
                       number(step.setting.may_be_left_minutes));
    }
    if (step.backcombing) {
        add("backcomb", step.backcombing->where + '/' + step.backcombing->amount);
    }
    std::string pins;
    for (const Pins& each : step.pins) {
        pins += (pins.empty() ? "" : ", ") + number(each.count) + ' ' + each.kind + '/' +
                each.colour + '/' + (each.crossed ? "crossed" : "");
    }
    add("pins", pins);
    add("min", number(step.minutes));
    add("wait", number(step.waiting_minutes));
    return text;
}

std::vector<CsvRow> lines() {
    return read_csv(QUARTERTURN_SHORTHAND_LINES);
}

// Lines as stylists write them, with what each means: common practice.
TEST(Shorthand, UnderstandsNineLinesOfTenAsSheMeantThem) {
    int understood = 0;
    const auto rows = lines();
    ASSERT_GE(rows.size(), 120U);
    for (const CsvRow& row : rows) {
        const std::string read = told(parse_shorthand(row.at("line")).step);
        if (read == row.at("expected")) {
            ++understood;
        } else {
            std::cout << "not as meant: " << row.at("line") << "\n  meant " << row.at("expected")
                      << "\n  read  " << read << '\n';
        }
    }
    const double share = 100.0 * understood / static_cast<double>(rows.size());
    std::cout << "fully understood: " << understood << " of " << rows.size() << " lines (" << share
              << " %)\n";
    EXPECT_GE(share, 90.0);
}

TEST(Shorthand, TellsWhichWordsItTook) {
    const Shorthand read = parse_shorthand("low pony, 4 grips crossed somehow");
    const std::vector<ShorthandPart> parts{{"low", false},  {"pony", false},   {"4", true},
                                           {"grips", true}, {"crossed", true}, {"somehow", false}};
    EXPECT_EQ(read.parts, parts);
    EXPECT_EQ(read.step.words, "low pony, somehow");
}

TEST(Shorthand, AnEmptyLineIsAnEmptyStep) {
    for (const char* nothing : {"", "  ", ",,;", "()", "\n"}) {
        EXPECT_EQ(parse_shorthand(nothing).step, Step{}) << nothing;
    }
}

// What stands between spaces and the signs that end a phrase, in order, joined.
std::string bare(const std::string& text) {
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const bool in_number = (c == '.' || c == ',') && i > 0 && i + 1 < text.size() &&
                               std::isdigit(static_cast<unsigned char>(text[i - 1])) &&
                               std::isdigit(static_cast<unsigned char>(text[i + 1]));
        if (in_number || std::string(" \t\r\n,;.()").find(c) == std::string::npos) result += c;
    }
    return result;
}

std::string words_of(const std::vector<ShorthandPart>& parts, bool all) {
    std::string text;
    for (const ShorthandPart& part : parts) {
        if (all || !part.understood) text += part.text;
    }
    return text;
}

rc::Gen<std::string> any_line() {
    return rc::gen::exec([] {
        const auto rows = lines();
        std::string line;
        for (int left = *rc::gen::inRange(0, 5); left > 0; --left) {
            switch (*rc::gen::inRange(0, 3)) {
                case 0:
                    line += *arbitrary_text();
                    break;
                case 1:
                    line += rows[*rc::gen::inRange<std::size_t>(0, rows.size())].at("line");
                    break;
                default:
                    line += std::to_string(*rc::gen::inRange(0, 100'000));
            }
            line += *rc::gen::element<std::string>(" ", ", ", "; ", ".", "");
        }
        return line;
    });
}

RC_GTEST_PROP(Shorthand, DropsNothing, ()) {
    const std::string line = *any_line();
    const Shorthand read = parse_shorthand(line);
    RC_ASSERT(words_of(read.parts, true) == bare(line));
    RC_ASSERT(bare(read.step.words) == bare(words_of(read.parts, false)));
}

// A word of no meaning is found again in the words, wherever it was said.
RC_GTEST_PROP(Shorthand, KeepsAWordItDoesNotKnow, ()) {
    const auto rows = lines();
    std::string line = rows[*rc::gen::inRange<std::size_t>(0, rows.size())].at("line");
    std::vector<std::size_t> gaps{0, line.size()};
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (line[i] == ' ') gaps.push_back(i);
    }
    line.insert(*rc::gen::elementOf(gaps), " Quillonesque ");
    RC_ASSERT(parse_shorthand(line).step.words.find("Quillonesque") != std::string::npos);
}

// Whatever was understood was said: a number in a field stands in the line.
RC_GTEST_PROP(Shorthand, InventsNoPins, ()) {
    const int count = *rc::gen::inRange(1, 10'000);
    const std::string line = std::to_string(count) + " brown hair pins crossed";
    const Step step = parse_shorthand(line).step;
    RC_ASSERT(step.pins.size() == 1U);
    RC_ASSERT(step.pins[0] == (Pins{"hair pin", "brown", count, true}));
}

}  // namespace
}  // namespace quarterturn
