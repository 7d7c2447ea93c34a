#pragma once
// The commands of qturn, and what they have in common: --library and --json, help with an example,
// plain lines or one JSON object, the exit code.

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "app/qturn/command.h"
#include "app/qturn/reply.h"
#include "app/qturn/session.h"

namespace quarterturn {

struct About {
    std::string name;     // "photos", or "client add"
    std::string what;     // one sentence
    std::string example;  // a whole command line
};

using Run = std::function<Reply(Session&)>;

// What may follow some words on a command line: "qturn client" is followed by "add", "--json" …
struct NextWords {
    std::string after;
    std::vector<std::string> words;
};

class CommandSet {
  public:
    CommandSet();
    ~CommandSet();

    // A word that commands stand behind, such as "client". Named before the first of them.
    void group(const std::string& name, const std::string& what);
    // What it takes is added to the answer.
    Command add(const About& about, Run run);

    std::vector<NextWords> next_words() const;
    // Parses, runs, prints; answers the exit code.
    int run(int argc, char** argv);

  private:
    struct Parser;
    std::unique_ptr<Parser> parser_;
};

}  // namespace quarterturn
