#pragma once
// What one command takes from its command line. CLI11 stays behind it.

#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
class Option;
}  // namespace CLI

namespace quarterturn {

using Text = std::optional<std::string>;  // nothing when it was not named
using Texts = std::vector<std::string>;

// Each function stores in `value` when the command line is read; `value` must live until then.
// An option is written with the word for its value, as in "--angle ANGLE"; of the lists, each
// naming adds one.
class Command {
  public:
    explicit Command(CLI::App& app) : app_(&app) {}

    void argument(const std::string& word, std::string& value, const std::string& what);
    void argument(const std::string& word, Text& value, const std::string& what);
    void argument(const std::string& word, Texts& value, const std::string& what);
    void optional_argument(const std::string& word, std::string& value, const std::string& what);
    void optional_argument(const std::string& word, Text& value, const std::string& what);
    void optional_argument(const std::string& word, Texts& value, const std::string& what);

    void option(const std::string& name, std::string& value, const std::string& what);
    void option(const std::string& name, Text& value, const std::string& what);
    void option(const std::string& name, std::optional<int>& value, const std::string& what);
    void option(const std::string& name, Texts& value, const std::string& what);
    void required_option(const std::string& name, std::string& value, const std::string& what);
    void required_option(const std::string& name, Text& value, const std::string& what);

    void flag(const std::string& name, bool& value, const std::string& what);

  private:
    CLI::App* app_;
};

}  // namespace quarterturn
