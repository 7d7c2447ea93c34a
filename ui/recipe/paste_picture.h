#pragma once

#include <functional>
#include <string>
#include <vector>

#include "indexer/record/id.h"

class QMimeData;

namespace quarterturn {

class Session;

// Whether the clipboard holds a picture or files rather than words.
bool holds_pictures(const QMimeData& data);

// Brings what is in the clipboard into the library as photos of the look, off the window's thread,
// and then hands over their checksums. Says why when nothing came of it.
void bring_in_from_clipboard(Session& session, LookId look,
                             std::function<void(const std::vector<std::string>&)> hand_over);

}  // namespace quarterturn
