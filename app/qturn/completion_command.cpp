#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/say.h"

namespace quarterturn {
namespace {

// Walks the words before the cursor down the commands, then offers what the last one knows; bash
// itself offers files where nothing fits.
constexpr const char* script_start = R"bash(# bash completion for qturn
_qturn_words() {
  local words
  case "$1" in
)bash";
constexpr const char* script_end = R"bash(    *) return 1 ;;
  esac
  echo "$words"
}

_qturn() {
  local path=qturn word
  for word in "${COMP_WORDS[@]:1:COMP_CWORD-1}"; do
    _qturn_words "$path $word" >/dev/null && path="$path $word"
  done
  COMPREPLY=($(compgen -W "$(_qturn_words "$path")" -- "${COMP_WORDS[COMP_CWORD]}"))
}

complete -o default -F _qturn qturn)bash";

std::string known_words_line(const NextWords& next) {
    std::string words;
    for (const std::string& word : next.words) words += (words.empty() ? "" : " ") + word;
    return "    '" + next.after + "') words='" + words + "' ;;\n";
}

Reply completion() {
    CommandSet commands;
    add_all_commands(commands);
    std::string script = script_start;
    for (const NextWords& next : commands.next_words()) script += known_words_line(next);
    script += script_end;
    return {split_lines(script), {{"bash", script + '\n'}}};
}

}  // namespace

void add_completion_command(CommandSet& commands) {
    commands.add({"completion", "Prints the completion script for bash.",
                  "qturn completion > ~/.local/share/bash-completion/completions/qturn"},
                 [](Session&) { return completion(); });
}

}  // namespace quarterturn
