#pragma once
// Whose photo it is, what of it may be shown, and who is seen in it beside the clients.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/consent.h"

namespace quarterturn {

enum class Whose { own, photographer, somebody_else };
std::string_view word(Whose whose);  // "own", "photographer", "somebody else"
std::optional<Whose> parse_whose(std::string_view text);

struct Credit {
    Whose whose = Whose::own;
    std::string name;           // the photographer's, or whose photo it is
    std::vector<Use> licensed;  // the uses that the photographer's licence covers
    std::optional<Date> until;  // the last day it does
    // What must stand beside a photographer's photo; empty: none is wanted. Nothing: not told.
    std::optional<std::string> line;

    bool operator==(const Credit&) const = default;
};

// What she says of the people in a photo, besides the clients it is tagged with.
struct Seen {
    std::optional<bool> face;  // whether a face shows; nothing: as the program judges
    bool strangers = false;    // somebody is in it who is no client
    bool nobody = false;       // no person is in it

    bool operator==(const Seen&) const = default;
};

}  // namespace quarterturn
