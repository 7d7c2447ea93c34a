#include "indexer/sheet/picture_foot.h"

namespace quarterturn {
namespace {

constexpr double foot_points = 11;
constexpr double foot_margin = 3;          // mm
constexpr double most_of_the_page = 0.25;  // of its height: the photos are what is shown (chosen)

// Where each character begins (UTF-8), and the end.
std::vector<std::size_t> beginnings_of_characters(const std::string& text) {
    std::vector<std::size_t> beginnings;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool goes_on = (static_cast<unsigned char>(text[i]) & 0xc0) == 0x80;
        if (!goes_on) beginnings.push_back(i);
    }
    beginnings.push_back(text.size());
    return beginnings;
}

// What was done stands on a line of its own, however her caption ends.
std::string words_below(const FootWords& words) {
    if (words.caption.empty() || words.done.empty()) return words.caption + words.done;
    return words.caption + "\n" + words.done;
}

}  // namespace

PictureFoot::PictureFoot(TextRuler& ruler, const Size& page)
    : ruler_(ruler), page_(page), top_(page.height) {}

void PictureFoot::put(const std::string& text, Tone tone) {
    if (text.empty()) return;
    if (items_.empty()) top_ -= foot_margin;
    const double width = page_.width - 2 * foot_margin;
    const double height = ruler_.height_mm(text, foot_points, false, width);
    top_ -= height;
    TextItem item{{foot_margin, top_, width, height}, text};
    item.points = foot_points;
    item.align = Align::start;
    item.tone = tone;
    items_.push_back(item);
}

double PictureFoot::top() const {
    return items_.empty() ? top_ : top_ - foot_margin;
}

bool PictureFoot::too_high() const {
    return page_.height - top() > most_of_the_page * page_.height;
}

PictureFoot foot_of(TextRuler& ruler, const Size& page, const FootWords& words) {
    PictureFoot foot(ruler, page);
    foot.put(words.business_line, Tone::soft);
    foot.put(words_below(words), Tone::ink);
    return foot;
}

std::string reason_against_foot(TextRuler& ruler, const Size& page, const FootWords& words) {
    if (!foot_of(ruler, page, words).too_high()) return {};
    const std::string too_much =
        "The words below the photos would take more than a quarter of the picture";
    const auto beginnings = beginnings_of_characters(words.caption);
    std::size_t fits = 0;
    std::size_t does_not = beginnings.size();
    while (does_not - fits > 1) {
        const std::size_t middle = (fits + does_not) / 2;
        FootWords shorter = words;
        shorter.caption.resize(beginnings[middle]);
        (foot_of(ruler, page, shorter).too_high() ? does_not : fits) = middle;
    }
    if (fits == 0) {
        return too_much +
               " even without a caption: leave out what was done, or shorten the business line.";
    }
    return too_much + ": of the caption's " + std::to_string(beginnings.size() - 1) +
           " characters about " + std::to_string(fits) + " fit. Say less in it.";
}

}  // namespace quarterturn
