#include "app/qturn/command_set.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>
#include <span>

#include "app/qturn/print.h"

namespace quarterturn {

struct CommandSet::Parser {
    GlobalWishes wishes;
    CLI::App root{"Keeps a bridal hair trial so that it can be made again.", "qturn"};
    std::map<const CLI::App*, Run> runs;
};

namespace {

void add_global_options(CLI::App& app, GlobalWishes& wishes) {
    app.add_option("--library", wishes.library,
                   "The library's folder (else QUARTERTURN_LIBRARY, else ~/Quarterturn)")
        ->option_text("FOLDER");
    app.add_option("--passphrase-file", wishes.passphrase_file,
                   "Of a locked library: a file whose first line is the passphrase (else "
                   "QUARTERTURN_PASSPHRASE_FILE, else it is asked for)")
        ->option_text("FILE");
    app.add_flag("--json", wishes.json, "Answer with one JSON object");
}

const CLI::App& innermost(const CLI::App& app) {
    const auto chosen = app.get_subcommands();
    return chosen.empty() ? app : innermost(*chosen.front());
}

std::string full_name(const CLI::App& app) {
    if (app.get_parent() == nullptr) return app.get_name();
    return full_name(*app.get_parent()) + ' ' + app.get_name();
}

// In the order they were written; CLI11 tells them from the last to the first.
std::string unexpected_words(const CLI::App& root) {
    const std::vector<std::string> words = root.remaining(true);
    std::string sentence = words.size() == 1 ? "The following argument was not expected:"
                                             : "The following arguments were not expected:";
    for (const std::string& word : words) sentence += ' ' + word;
    return sentence;
}

std::string parse_sentence(const CLI::App& root, const CLI::ParseError& error) {
    const bool unexpected = dynamic_cast<const CLI::ExtrasError*>(&error) != nullptr;
    return (unexpected ? unexpected_words(root) : error.what()) +
           "\nSee: " + full_name(innermost(root)) + " --help";
}

// On a disk that can only be read, or is full, what is in the library can still be looked at.
void print_standing(const Session& session) {
    const std::string why = session.why_only_to_look();
    if (!why.empty()) print_beside("Only to be looked at: " + why);
}

// What is refused for that is told of once.
int print_failure(const Session& session, const std::string& sentence, Outcome outcome) {
    if (sentence != session.why_only_to_look()) print_standing(session);
    return print_error(sentence, outcome, session.json());
}

int run_and_print(const Run& run, Session& session) {
    try {
        const Reply reply = run(session);
        print_standing(session);
        const int code = print(reply, session.json());
        session.note_what_was_said();
        return code;
    } catch (const WrongUse& wrong) {
        return print_failure(session, wrong.what(), Outcome::wrong_use);
    } catch (const std::exception& failure) {
        return print_failure(session, failure.what(), Outcome::failed);
    }
}

void gather_next_words(const CLI::App& app, std::vector<NextWords>& all) {
    const auto subcommands = app.get_subcommands({});
    NextWords next{full_name(app), {}};
    for (const CLI::App* subcommand : subcommands) next.words.push_back(subcommand->get_name());
    for (const CLI::Option* option : app.get_options()) {
        for (const std::string& name : option->get_lnames()) next.words.push_back("--" + name);
    }
    all.push_back(next);
    for (const CLI::App* subcommand : subcommands) gather_next_words(*subcommand, all);
}

}  // namespace

CommandSet::CommandSet() : parser_(std::make_unique<Parser>()) {
    CLI::App& root = parser_->root;
    root.require_subcommand(1);
    root.get_formatter()->column_width(34);
    root.set_version_flag("--version", "qturn " QUARTERTURN_VERSION, "Say which version this is");
    add_global_options(root, parser_->wishes);
    root.footer(
        "Example:\n  qturn import /media/card\n\n"
        "Exit codes: 0 done, 1 failed, 2 wrong use, 3 done but something needs attention.\n"
        "Every command explains itself: qturn import --help");
}

CommandSet::~CommandSet() = default;

void CommandSet::group(const std::string& name, const std::string& what) {
    CLI::App& group = *parser_->root.add_subcommand(name, what);
    group.require_subcommand(1);
    group.footer("");  // in place of the program's; the first of its commands gives it one
    add_global_options(group, parser_->wishes);
}

Command CommandSet::add(const About& about, Run run) {
    const std::size_t space = about.name.find(' ');
    CLI::App& parent = space == std::string::npos
                           ? parser_->root
                           : *parser_->root.get_subcommand(about.name.substr(0, space));
    const std::string name = space == std::string::npos ? about.name : about.name.substr(space + 1);
    CLI::App& app = *parent.add_subcommand(name, about.what);
    app.footer("Example:\n  " + about.example);
    if (&parent != &parser_->root && parent.get_footer().empty()) {
        parent.footer("Example:\n  " + about.example + "\n\nEvery command explains itself: qturn " +
                      about.name + " --help");
    }
    add_global_options(app, parser_->wishes);
    parser_->runs[&app] = std::move(run);
    return Command(app);
}

std::vector<NextWords> CommandSet::next_words() const {
    std::vector<NextWords> all;
    gather_next_words(parser_->root, all);
    return all;
}

int CommandSet::run(int argc, char** argv) {
    CLI::App& root = parser_->root;
    const std::span<char*> words(argv, static_cast<std::size_t>(argc));
    // Also when the command line cannot be understood to its end.
    const bool json = std::ranges::count(words, std::string_view("--json")) > 0;
    try {
        root.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        if (error.get_exit_code() == 0) return root.exit(error);
        return print_error(parse_sentence(root, error), Outcome::wrong_use, json);
    }
    Session session(parser_->wishes);
    return run_and_print(parser_->runs.at(&innermost(root)), session);
}

}  // namespace quarterturn
