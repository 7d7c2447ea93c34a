#include "app/qturn/passphrase.h"

#include <termios.h>
#include <unistd.h>

#include <iostream>

#include "app/qturn/read_file.h"
#include "app/qturn/reply.h"

namespace quarterturn {
namespace {

// While it lives, what is typed is not shown.
class Unseen {
  public:
    Unseen() {
        known_ = ::tcgetattr(STDIN_FILENO, &before_) == 0;
        if (!known_) return;
        termios quiet = before_;
        quiet.c_lflag &= ~static_cast<tcflag_t>(ECHO);
        ::tcsetattr(STDIN_FILENO, TCSAFLUSH, &quiet);
    }
    ~Unseen() {
        if (known_) ::tcsetattr(STDIN_FILENO, TCSAFLUSH, &before_);
    }
    Unseen(const Unseen&) = delete;
    Unseen& operator=(const Unseen&) = delete;

  private:
    termios before_{};
    bool known_ = false;
};

std::string typed(const std::string& question) {
    if (::isatty(STDIN_FILENO) == 0) {
        throw WrongUse(
            "A passphrase is needed and nobody can be asked: name a file whose first line it is "
            "(see --help), or run this in a terminal.");
    }
    std::cerr << question << ": " << std::flush;
    std::string line;
    {
        const Unseen unseen;
        std::getline(std::cin, line);
    }
    std::cerr << '\n';
    return line;
}

std::string first_line(const std::string& file) {
    const std::string text = read_text(file);
    return text.substr(0, text.find_first_of("\r\n"));
}

}  // namespace

std::string asked_passphrase(const std::string& question, const std::string& file) {
    return file.empty() ? typed(question) : first_line(file);
}

std::string asked_new_passphrase(const std::string& file) {
    if (!file.empty()) return first_line(file);
    std::string once = typed("New passphrase");
    if (typed("The same again") != once) {
        throw WrongUse("The two were not the same: try again. Nothing was changed.");
    }
    return once;
}

}  // namespace quarterturn
