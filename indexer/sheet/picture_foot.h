#pragma once
// The lines below the two photos of a picture.

#include <string>
#include <vector>

#include "indexer/sheet/page.h"

namespace quarterturn {

// Put from the foot of the page up.
class PictureFoot {
  public:
    PictureFoot(TextRuler& ruler, const Size& page);

    void put(const std::string& text, Tone tone);  // nothing where it is empty

    double top() const;     // mm, where the photos end
    bool too_high() const;  // leaves the photos less than three quarters of the page
    const std::vector<TextItem>& items() const { return items_; }

  private:
    TextRuler& ruler_;
    Size page_;
    double top_;
    std::vector<TextItem> items_;
};

struct FootWords {
    std::string business_line;
    std::string caption;
    std::string done;  // behind the caption, on a line of its own
};

PictureFoot foot_of(TextRuler& ruler, const Size& page, const FootWords& words);

// A sentence that says how long a caption may be, where the foot is too high; else empty.
std::string reason_against_foot(TextRuler& ruler, const Size& page, const FootWords& words);

}  // namespace quarterturn
