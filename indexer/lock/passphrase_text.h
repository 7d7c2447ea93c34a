#pragma once
// One passphrase, however a keyboard writes it: an accent comes as a letter with it or as a letter
// and a mark after it (Unicode Standard Annex #15).

#include <string>
#include <string_view>
#include <vector>

namespace quarterturn {

// Composed (NFC); bytes that are no UTF-8 stay as they are.
std::string composed(std::string_view passphrase);

// All that it may have been when the lock was put on: composed, as a new lock has it, then as it
// was typed, and decomposed. One alone for most.
std::vector<std::string> spellings_of(std::string_view passphrase);

}  // namespace quarterturn
