#include "indexer/sheet/pair_picture.h"

#include <cmath>
#include <cstdio>
#include <numbers>
#include <utility>

#include "indexer/record/word_list.h"
#include "indexer/sheet/even_light.h"
#include "indexer/sheet/laid_pair.h"
#include "indexer/sheet/pair_on_paper.h"

namespace quarterturn {
namespace {

constexpr WordList<PictureShape, all_picture_shapes.size()> shape_words{
    {{PictureShape::square, "square"},
     {PictureShape::four_to_five, "4:5"},
     {PictureShape::nine_to_sixteen, "9:16"},
     {PictureShape::a5, "A5"}}};

constexpr int divide = 12;  // pixels of white between the two photos: a millimetre
constexpr double text_points = 11;
constexpr double text_margin = 3;  // mm

double mm_of(int pixels) {
    constexpr double inch = 25.4;
    return pixels * inch / print_dpi;
}

std::string figure(double value, int digits) {
    char text[32];
    std::snprintf(text, sizeof text, "%.*f", digits, value);
    return text;
}

// Where the two photos lie, in pixels from the upper left.
std::array<cv::Rect, 2> cells_in(cv::Size space, bool one_above_other) {
    if (one_above_other) {
        const int height = (space.height - divide) / 2;
        return {cv::Rect(0, 0, space.width, height),
                cv::Rect(0, space.height - height, space.width, height)};
    }
    const int width = (space.width - divide) / 2;
    return {cv::Rect(0, 0, width, space.height),
            cv::Rect(space.width - width, 0, width, space.height)};
}

// What was done stands on a line of its own, however her caption ends.
std::string words_below(const PairPictureWish& wish, const std::vector<std::string>& done) {
    std::string text = wish.caption;
    std::string before = text.empty() ? "" : "\n";
    for (const std::string& sentence : done) {
        if (wish.say_what_was_done) text += std::exchange(before, " ") + sentence;
    }
    return text;
}

// The lines below the photos, from the foot of the page up.
class Foot {
  public:
    Foot(TextRuler& ruler, const Size& page) : ruler_(ruler), page_(page), top_(page.height) {}

    void put(const std::string& text, Tone tone) {
        if (text.empty()) return;
        if (items_.empty()) top_ -= text_margin;
        const double width = page_.width - 2 * text_margin;
        const double height = ruler_.height_mm(text, text_points, false, width);
        top_ -= height;
        TextItem item{{text_margin, top_, width, height}, text};
        item.points = text_points;
        item.align = Align::start;
        item.tone = tone;
        items_.push_back(item);
    }

    double top() const { return items_.empty() ? top_ : top_ - text_margin; }
    const std::vector<TextItem>& items() const { return items_; }

  private:
    TextRuler& ruler_;
    Size page_;
    double top_;
    std::vector<TextItem> items_;
};

std::vector<std::string> laid_words(const HeadAlignment& alignment) {
    std::vector<std::string> words{"Cropped, and both heads laid equally large in one place."};
    const double turn = std::abs(alignment.second_onto_first.turn()) * 180 / std::numbers::pi;
    const std::string scale = figure(alignment.second_onto_first.scale() * 100, 0);
    if (scale != "100") words.push_back("The second photo is scaled to " + scale + " %.");
    if (turn >= 0.05) words.push_back("The second photo is turned by " + figure(turn, 1) + "°.");
    return words;
}

// Between the photos as they were taken; nothing where it cannot be told.
std::optional<LightDifference> light_to_even(Library& library, Decoder& decoder, const Photo& first,
                                             const Photo& second) {
    constexpr int small_enough = 512;
    const Decoded one = right_way_round(library, decoder, first, small_enough);
    const Decoded other = right_way_round(library, decoder, second, small_enough);
    if (!one.ok() || !other.ok()) return std::nullopt;
    const auto difference = light_difference(one.bgr, other.bgr);
    return difference && !difference->at_least ? difference : std::nullopt;
}

std::string light_words(const std::optional<LightDifference>& even) {
    if (!even) return "The light is left as it is: too little background shows to measure it.";
    const double ev = even->exposure_ev;
    const std::string steps = figure(std::abs(ev), 1);
    if (steps == "0.0") {
        return "Both photos are equally bright, measured on the background; the white balance of "
               "the whole second photo is set to the first's.";
    }
    return "The whole second photo is made " + steps + " EV " + (ev > 0 ? "darker" : "brighter") +
           " and its white balance set to the first's, measured on the background.";
}

PhotoItem photo_item(const cv::Mat& picture, const cv::Rect& cell, const Photo& photo) {
    PhotoItem item;
    item.box = {mm_of(cell.x), mm_of(cell.y), mm_of(cell.width), mm_of(cell.height)};
    item.picture = picture;
    item.described = photo.file.name;
    return item;
}

}  // namespace

std::string_view word(PictureShape shape) {
    return find_word(shape_words, shape);
}

std::optional<PictureShape> parse_picture_shape(std::string_view text) {
    return find_value(shape_words, text);
}

cv::Size picture_pixels(PictureShape shape) {
    switch (shape) {
        case PictureShape::square:
            return {2160, 2160};
        case PictureShape::four_to_five:
            return {2160, 2700};
        case PictureShape::nine_to_sixteen:
            return {2160, 3840};
        case PictureShape::a5:
            return {1748, 2480};
    }
    return {};
}

PairPicture pair_picture(Library& library, Decoder& decoder, HeadFinder& finder, TextRuler& ruler,
                         const Photo& first, const Photo& second, const PairPictureWish& wish) {
    PairPicture result;
    const LaidPair laid = lay_pair(library, decoder, finder, first, second);
    if (!laid.refused.empty()) {
        result.refused = laid.refused;
        return result;
    }
    if (!laid.alignment.sure()) {
        result.refused =
            "Where the heads stand is not sure, so that they cannot be shown equally large: show "
            "it "
            "with two points in each photo.";
        return result;
    }
    const cv::Size whole = picture_pixels(wish.shape);
    result.done = laid_words(laid.alignment);
    std::optional<LightDifference> even;
    if (wish.even_light) {
        even = light_to_even(library, decoder, first, second);
        result.done.push_back(light_words(even));
    }
    Page page{{mm_of(whole.width), mm_of(whole.height)}, {}};
    Foot foot(ruler, page.size);
    foot.put(wish.business_line, Tone::soft);
    foot.put(words_below(wish, result.done), Tone::ink);
    const int space = static_cast<int>(std::floor(foot.top() / mm_of(1)));
    const auto cells = cells_in({whole.width, space}, wish.one_above_other);
    const auto shown = cut_pair(library, decoder, laid, {&first, &second}, cells[0].size(), even);
    page.items.emplace_back(photo_item(shown[0], cells[0], first));
    page.items.emplace_back(photo_item(shown[1], cells[1], second));
    for (const TextItem& text : foot.items()) page.items.emplace_back(text);
    result.document.pages.push_back(std::move(page));
    return result;
}

}  // namespace quarterturn
