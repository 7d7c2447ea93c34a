#include "app/qturn/command.h"

#include <CLI/CLI.hpp>

namespace quarterturn {
namespace {

struct OptionName {
    std::string name;
    std::string value_word;
};

OptionName parts_of(const std::string& name) {
    const std::size_t space = name.find(' ');
    return {name.substr(0, space), name.substr(space + 1)};
}

template <class Value>
CLI::Option* add_option(CLI::App& app, const std::string& name, Value& value,
                        const std::string& what) {
    const auto [option_name, value_word] = parts_of(name);
    return app.add_option(option_name, value, what)->option_text(value_word);
}

std::string reason_against_empty(const std::string& given) {
    return given.empty() ? "its value is empty: give one, or leave it out" : "";
}

}  // namespace

void Command::argument(const std::string& word, std::string& value, const std::string& what) {
    app_->add_option(word, value, what)->required();
}

void Command::argument(const std::string& word, Text& value, const std::string& what) {
    app_->add_option(word, value, what)->required();
}

void Command::argument(const std::string& word, Texts& value, const std::string& what) {
    app_->add_option(word, value, what)->required();
}

void Command::optional_argument(const std::string& word, std::string& value,
                                const std::string& what) {
    app_->add_option(word, value, what);
}

void Command::optional_argument(const std::string& word, Text& value, const std::string& what) {
    app_->add_option(word, value, what);
}

void Command::optional_argument(const std::string& word, Texts& value, const std::string& what) {
    app_->add_option(word, value, what);
}

void Command::option(const std::string& name, std::string& value, const std::string& what) {
    add_option(*app_, name, value, what)->check(reason_against_empty);
}

void Command::option(const std::string& name, Text& value, const std::string& what) {
    add_option(*app_, name, value, what);
}

void Command::option(const std::string& name, std::optional<int>& value, const std::string& what) {
    add_option(*app_, name, value, what)->check(reason_against_empty);
}

void Command::option(const std::string& name, Texts& value, const std::string& what) {
    add_option(*app_, name, value, what)->allow_extra_args(false);
}

void Command::required_option(const std::string& name, std::string& value,
                              const std::string& what) {
    add_option(*app_, name, value, what)->required()->check(reason_against_empty);
}

void Command::required_option(const std::string& name, Text& value, const std::string& what) {
    add_option(*app_, name, value, what)->required();
}

void Command::flag(const std::string& name, bool& value, const std::string& what) {
    app_->add_flag(name, value, what);
}

}  // namespace quarterturn
