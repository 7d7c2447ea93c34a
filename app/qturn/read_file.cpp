#include "app/qturn/read_file.h"

#include <iostream>
#include <iterator>

#include "app/qturn/reply.h"
#include "indexer/disk/file_system.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_bytes = 64 << 20;  // far more than any scenario or recipe holds

}  // namespace

std::string read_text(const std::string& file) {
    if (file == "-") return {std::istreambuf_iterator<char>(std::cin), {}};
    if (!real_file_system().exists(file)) throw WrongUse("There is no file " + file + ".");
    const Bytes bytes = real_file_system().read(file, most_bytes);
    std::string text;
    for (const std::byte byte : bytes) text += static_cast<char>(byte);
    return text;
}

}  // namespace quarterturn
