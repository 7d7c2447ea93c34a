#pragma once
// Printing what a command answers. Nothing raw from a file name reaches the terminal.

#include "app/qturn/reply.h"

namespace quarterturn {

// Each answers the exit code: 1 instead when standard output cannot be written.
int print(const Reply& reply, bool json);
// The sentence goes to standard error, and with `json` also to standard output as {"error": …}.
int print_error(const std::string& sentence, Outcome outcome, bool json);

// A sentence to standard error, beside whatever is answered.
void print_beside(const std::string& sentence);

// Valid UTF-8 on several lines, with every control character escaped.
std::string json_text(const nlohmann::json& data);

}  // namespace quarterturn
