#include "app/qturn/print.h"

#include <iostream>

#include "app/qturn/say.h"

namespace quarterturn {
namespace {

// JSON asks only for U+0000 … U+001F to be escaped; terminals obey U+007F … U+009F as well.
std::string escape_further_controls(const std::string& text) {
    std::string escaped;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        const auto next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0U;
        if (byte == 0x7F) {
            escaped += "\\u007f";
        } else if (byte == 0xC2 && next >= 0x80 && next < 0xA0) {
            constexpr std::string_view hex = "0123456789abcdef";
            escaped += std::string("\\u00") + hex[next >> 4U] + hex[next & 0xFU];
            ++i;
        } else {
            escaped += text[i];
        }
    }
    return escaped;
}

int exit_code(Outcome outcome) {
    if (std::cout.flush()) return static_cast<int>(outcome);
    std::cerr << "The answer could not be written out. Is the disk full?\n";
    return static_cast<int>(Outcome::failed);
}

void print_lines(std::ostream& out, const std::vector<std::string>& lines) {
    for (const std::string& line : lines) out << safe_text(line) << '\n';
}

}  // namespace

std::string json_text(const nlohmann::json& data) {
    return escape_further_controls(
        data.dump(2, ' ', false, nlohmann::json::error_handler_t::replace));
}

int print(const Reply& reply, bool json) {
    if (json) {
        std::cout << json_text(reply.data) << '\n';
    } else {
        print_lines(std::cout, reply.lines);
    }
    return exit_code(reply.outcome);
}

void print_beside(const std::string& sentence) {
    std::cerr << safe_text(sentence) << '\n';
}

int print_error(const std::string& sentence, Outcome outcome, bool json) {
    print_lines(std::cerr, split_lines(sentence));
    if (json) std::cout << json_text({{"error", sentence}}) << '\n';
    return exit_code(outcome);
}

}  // namespace quarterturn
