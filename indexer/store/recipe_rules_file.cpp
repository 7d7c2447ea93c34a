#include "indexer/store/recipe_rules_file.h"

#include "indexer/record/word_list.h"
#include "indexer/store/library.h"

namespace quarterturn {
namespace {

constexpr std::string_view space = " \t\r\n";
constexpr std::int64_t most_bytes = 1 << 20;

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(space);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(space) - first + 1);
}

std::string_view weight_word(std::optional<Weight> weight) {
    if (!weight) return "off";
    return *weight == Weight::warning ? "warning" : "bar";
}

// As word processors like to write it.
std::string with_plain_apostrophe(std::string name) {
    constexpr std::string_view curly = "’";
    if (const auto at = name.find(curly); at != std::string::npos) {
        name.replace(at, curly.size(), "'");
    }
    return name;
}

class RulesReader {
  public:
    void line(std::string_view whole) {
        ++number_;
        const std::string_view text = trimmed(whole.substr(0, whole.find('#')));
        if (text.empty()) return;
        const auto equals = text.find('=');
        if (equals == std::string_view::npos) {
            problem("'" + std::string(text) + "' is no rule: write it as \"patch test = bar\"");
            return;
        }
        weigh(trimmed(text.substr(0, equals)), trimmed(text.substr(equals + 1)));
    }

    ReadRules read;

  private:
    void weigh(std::string_view name, std::string_view weight) {
        const auto rule = parse_recipe_rule(with_plain_apostrophe(std::string(name)));
        const std::string plain = plain_word(weight);
        if (!rule) {
            problem("there is no rule '" + std::string(name) +
                    "': correct its name, or take the line out");
        } else if (plain == "off") {
            read.rules.changed[*rule] = std::nullopt;
        } else if (plain == "warning") {
            read.rules.changed[*rule] = Weight::warning;
        } else if (plain == "bar") {
            read.rules.changed[*rule] = Weight::bars_sign_off;
        } else {
            problem("'" + std::string(weight) + "' is no weight: write bar, warning or off");
        }
    }
    void problem(const std::string& what) {
        read.problems.push_back("In line " + std::to_string(number_) + " of " + recipe_rules_name +
                                ", " + what + ". The line counts for nothing until then.");
    }

    int number_ = 0;
};

}  // namespace

ReadRules parse_recipe_rules(std::string_view text) {
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    RulesReader reader;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        reader.line(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return std::move(reader.read);
}

std::string recipe_rules_text(const RecipeRules& rules) {
    std::string text =
        "# The recipe check. Each rule is \"bar\" (it stands against sign-off), \"warning\" or "
        "\"off\".\n";
    for (const RecipeRule rule : all_recipe_rules()) {
        text.append("\n# ").append(about(rule)).append("\n").append(word(rule));
        text.append(" = ").append(weight_word(rules.weight(rule))).append("\n");
    }
    return text;
}

ReadRules read_recipe_rules(Library& library) {
    const Path file = library.folder() / recipe_rules_name;
    if (!library.disk().exists(file)) return {};
    const Bytes bytes = library.disk().read(file, most_bytes);
    return parse_recipe_rules({reinterpret_cast<const char*>(bytes.data()), bytes.size()});
}

std::optional<Path> write_recipe_rules(Library& library, const RecipeRules& rules) {
    library.database().refuse_if_replaced();
    const std::string text = recipe_rules_text(rules);
    const auto bytes = std::as_bytes(std::span(text.data(), text.size()));
    const Path file = library.folder() / recipe_rules_name;
    std::optional<Path> kept;
    if (library.disk().exists(file)) {
        const Bytes before = library.disk().read(file, most_bytes);
        if (!std::ranges::equal(before, bytes)) {
            kept = library.folder() / recipe_rules_before_name;
            replace_file(library.disk(), *kept, before);
        }
    }
    replace_file(library.disk(), file, bytes);
    return kept;
}

}  // namespace quarterturn
