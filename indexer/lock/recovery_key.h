#pragma once
// The recovery key: what is printed and put away for the day the passphrase is forgotten. 160
// random bits in eight groups of four characters, and a ninth that shows a slip of the pen. The
// characters are those of Crockford's base 32, which has no I, L, O or U: nothing on the paper can
// be taken for something else.

#include <optional>
#include <string>
#include <string_view>

#include "indexer/lock/secret.h"

namespace quarterturn {

inline constexpr std::size_t recovery_key_bytes = 20;

Secret new_recovery_key();
// "7K3M-…": nine groups with hyphens between.
std::string recovery_key_text(const Secret& key);
// However it was typed: in small letters, with spaces or without, O for 0, I and L for 1. Nothing
// when it is none, or has a mistake in it.
std::optional<Secret> parse_recovery_key(std::string_view text);
// Whether a text has the length of one, so that a slip can be told from a passphrase.
bool looks_like_recovery_key(std::string_view text);

}  // namespace quarterturn
