#include "indexer/record/count_text.h"

namespace quarterturn {

std::string count_text(std::size_t count, std::string_view one, std::string_view many) {
    std::string number = std::to_string(count);
    for (auto place = static_cast<std::ptrdiff_t>(number.size()) - 3; place > 0; place -= 3) {
        number.insert(static_cast<std::size_t>(place), 1, ',');
    }
    number += ' ';
    if (count == 1) return number + std::string(one);
    return number + (many.empty() ? std::string(one) + 's' : std::string(many));
}

}  // namespace quarterturn
