#pragma once

#include <QString>
#include <string_view>

namespace quarterturn {

// A sentence of indexer/, which may name a command: here it names where the window does the same.
QString said_here(std::string_view sentence);

}  // namespace quarterturn
