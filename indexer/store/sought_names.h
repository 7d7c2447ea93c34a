#pragma once
// Clients' names as they may stand in what is written of others: whatever their case and accents,
// in either order ("Vašnovič, Séraphine"), and only whole words.

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "indexer/store/text_words.h"

namespace quarterturn {

struct NameSaid {
    std::size_t begin = 0;  // in bytes
    std::size_t end = 0;
    // The whole name, and by all signs hers. Not so a name of one word, which may be an ordinary
    // word, and what may go on as another name ("Anne-Ada Vale").
    bool surely = false;
};

class SoughtNames {
  public:
    // `hers_alone`: else somebody else is called so, too, and none is surely hers.
    explicit SoughtNames(const std::vector<std::string>& names, bool hers_alone = true);

    // In their order, none within another. A name of one word counts where it begins as it does in
    // the name, with a capital or not.
    std::vector<NameSaid> said_in(std::string_view text) const;
    // As it stands there first; empty when none does.
    std::string first_said_in(std::string_view text) const;
    // The text with `instead` where a name surely stands.
    std::string without(std::string_view text, std::string_view instead) const;

  private:
    struct Form {
        std::vector<std::string> words;
        bool turned = false;    // the last name first
        bool one_word = false;  // between white space
        bool capital = false;
    };

    void add(std::string_view name);
    void add_form(Form form);
    void add_running(std::string_view text, std::vector<NameSaid>& said) const;

    bool hers_alone_;
    std::unordered_map<std::string, std::vector<Form>> forms_;  // by their first word
    std::vector<std::string> running_;                          // of scripts in which words run on
};

}  // namespace quarterturn
