#pragma once
// What a command answers: lines for a person, one JSON object for a program, and how it went.

#include <nlohmann/json.hpp>
#include <stdexcept>
#include <string>
#include <vector>

namespace quarterturn {

// The exit codes of qturn.
enum class Outcome { done = 0, failed = 1, wrong_use = 2, needs_attention = 3 };

struct Reply {
    std::vector<std::string> lines;
    nlohmann::json data = nlohmann::json::object();
    Outcome outcome = Outcome::done;
};

// Something on the command line cannot be right. what() is a sentence with the next step.
class WrongUse : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

}  // namespace quarterturn
