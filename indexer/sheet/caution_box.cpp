#include "indexer/sheet/caution_box.h"

#include "indexer/sheet/join.h"

namespace quarterturn {
namespace {

constexpr double caution_padding = 1.8;       // mm
constexpr double mark_points_share = 1.7;     // of the type of the words
constexpr double mark_width_of_points = 0.5;  // mm for each point of that type

TextItem caution_words(const CautionBox& caution) {
    std::string words;
    for (const std::string& line : caution.lines) {
        add_part(words, "\n", caution.lines.size() > 1 ? "• " + line : line);
    }
    TextItem text = text_item(std::move(words), caution.points, caution.bold);
    text.align = Align::start;
    return text;
}

double mark_width(const CautionBox& caution) {
    return caution.points * mark_width_of_points;
}

double words_width(const CautionBox& caution, double width) {
    return width - mark_width(caution) - 2 * caution_padding;
}

}  // namespace

double height_of(SheetFlow& flow, const CautionBox& caution, double width) {
    const double words = flow.height_of(caution_words(caution), words_width(caution, width));
    const double mark = flow.line_height(caution.points * mark_points_share);
    return std::max(words, mark) + 2 * caution_padding;
}

double put_caution_box(SheetFlow& flow, const CautionBox& caution, double x, double width) {
    const double height = height_of(flow, caution, width);
    const double y = flow.y();
    flow.put(BarItem{{x, y, width, height}, BarFill::plain});
    TextItem mark = text_item("!", caution.points * mark_points_share, true);
    mark.align = Align::centre;
    const double mark_height = flow.line_height(mark.points);
    flow.put_text(mark, x + caution_padding / 2, y + (height - mark_height) / 2,
                  mark_width(caution), mark_height);
    const TextItem words = caution_words(caution);
    const double most = height - 2 * caution_padding;
    const double taken = flow.height_of(words, words_width(caution, width));
    flow.put_text(words, x + mark_width(caution) + caution_padding,
                  y + caution_padding + std::max(0.0, (most - taken) / 2),
                  words_width(caution, width), most);
    return height;
}

}  // namespace quarterturn
