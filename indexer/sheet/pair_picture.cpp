#include "indexer/sheet/pair_picture.h"

#include <cmath>
#include <cstdio>
#include <numbers>

#include "indexer/record/word_list.h"
#include "indexer/sheet/heads_window.h"
#include "indexer/sheet/laid_pair.h"
#include "indexer/sheet/pair_on_paper.h"
#include "indexer/sheet/picture_foot.h"

namespace quarterturn {
namespace {

constexpr WordList<PictureShape, all_picture_shapes.size()> shape_words{
    {{PictureShape::square, "square"},
     {PictureShape::four_to_five, "4:5"},
     {PictureShape::nine_to_sixteen, "9:16"},
     {PictureShape::a5, "A5"}}};

constexpr int divide = 12;  // pixels of white between the two photos: a millimetre

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

std::string done_words(const PairPictureWish& wish, const std::vector<std::string>& done) {
    if (!wish.say_what_was_done) return {};
    std::string text;
    for (const std::string& sentence : done) text += (text.empty() ? "" : " ") + sentence;
    return wish.not_alike.empty() ? text : text + " " + wish.not_alike;
}

std::vector<std::string> laid_words(const HeadAlignment& alignment) {
    std::vector<std::string> words{"Cropped, and both heads laid equally large in one place."};
    const double turn = std::abs(alignment.second_onto_first.turn()) * 180 / std::numbers::pi;
    const std::string scale = figure(alignment.second_onto_first.scale() * 100, 0);
    if (scale != "100") words.push_back("The second photo is scaled to " + scale + " %.");
    if (turn >= 0.05) words.push_back("The second photo is turned by " + figure(turn, 1) + "°.");
    return words;
}

// Between the photos as they were taken; nothing where it cannot be told.
std::optional<LightDifference> light_between_photos(Library& library, Decoder& decoder,
                                                    const Photo& first, const Photo& second) {
    constexpr int small_enough = 512;
    const Decoded one = right_way_round(library, decoder, first, small_enough);
    const Decoded other = right_way_round(library, decoder, second, small_enough);
    if (!one.ok() || !other.ok()) return std::nullopt;
    return light_difference(one.bgr, other.bgr);
}

std::string even_light_words(const LightDifference& even) {
    const double ev = even.exposure_ev;
    const std::string steps = figure(std::abs(ev), 1);
    if (steps == "0.0") {
        return "Both photos are equally bright, measured on the background; the white balance of "
               "the whole second photo is set to the first's.";
    }
    return "The whole second photo is made " + steps + " EV " + (ev > 0 ? "darker" : "brighter") +
           " and its white balance set to the first's, measured on the background.";
}

// Where only bright places could be compared, cameras bend each colour by another measure: set by
// that, hair could take on a colour that it does not have.
std::string reason_against_even_light(const std::optional<LightDifference>& difference) {
    const std::string left = "The light is left as it is: ";
    if (!difference) {
        return left +
               "too little background shows to measure it. Photos with more of one wall "
               "behind the head can be lit alike.";
    }
    return left +
           "the background is so bright that only the least can be told by which it differs "
           "(" +
           figure(std::abs(difference->exposure_ev), 1) + " EV, ΔE00 " +
           figure(difference->white_balance_de00, 1) +
           "), and hair lit by that could take on a wrong colour. Photos before a darker wall can "
           "be lit alike.";
}

// What the second photo is lit by, with what is said of it.
std::optional<LightDifference> light_to_even(Library& library, Decoder& decoder, const Photo& first,
                                             const Photo& second, PairPicture& picture) {
    const auto difference = light_between_photos(library, decoder, first, second);
    if (difference && !difference->at_least) {
        picture.done.push_back(even_light_words(*difference));
        return difference;
    }
    picture.remarks.push_back(reason_against_even_light(difference));
    return std::nullopt;
}

// Cells of which each photo fills all but this are not spoken of (chosen).
constexpr double much_empty = 0.1;

double aspect_of_cell(const cv::Rect& cell) {
    return static_cast<double>(cell.width) / cell.height;
}

// So that both heads are whole, the photos' places can reach beyond the photos.
void tell_what_is_empty(PairPicture& picture, const LaidPair& laid, const HeadsWindow& window,
                        cv::Size space, const PairPictureWish& wish) {
    if (window.most_empty() < much_empty) return;
    const cv::Rect other_cell = cells_in(space, !wish.one_above_other)[0];
    const HeadsWindow otherwise = window_of_both_heads(laid, aspect_of_cell(other_cell));
    const auto percent = [](const HeadsWindow& of) { return figure(of.most_empty() * 100, 0); };
    std::string words = "In this shape up to " + percent(window) +
                        " % of a photo's place stays empty, so that both heads are whole.";
    if (otherwise.most_empty() < window.most_empty() - much_empty) {
        words += std::string(wish.one_above_other ? " Side by side" : " One above the other") +
                 " it would be " + percent(otherwise) + " %.";
    }
    picture.remarks.push_back(words);
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
    for (const std::string& reason : {laid.refused, laid.points_against}) {
        if (result.refused.empty()) result.refused = reason;
    }
    if (!result.refused.empty()) return result;
    if (!laid.alignment.sure()) {
        result.refused =
            "Where the heads stand is not sure, so that they cannot be shown equally large: show "
            "it with two points in each photo.";
        return result;
    }
    const cv::Size whole = picture_pixels(wish.shape);
    result.done = laid_words(laid.alignment);
    std::optional<LightDifference> even;
    if (wish.even_light) even = light_to_even(library, decoder, first, second, result);
    Page page{{mm_of(whole.width), mm_of(whole.height)}, {}};
    const FootWords words{wish.business_line, wish.caption, done_words(wish, result.done)};
    result.refused = reason_against_foot(ruler, page.size, words);
    if (!result.refused.empty()) return result;
    const PictureFoot foot = foot_of(ruler, page.size, words);
    const cv::Size space(whole.width, static_cast<int>(std::floor(foot.top() / mm_of(1))));
    const auto cells = cells_in(space, wish.one_above_other);
    const HeadsWindow window = window_of_both_heads(laid, aspect_of_cell(cells[0]));
    tell_what_is_empty(result, laid, window, space, wish);
    const auto shown =
        cut_pair(library, decoder, laid, {&first, &second}, cells[0].size(), window.window, even);
    page.items.emplace_back(photo_item(shown[0], cells[0], first));
    page.items.emplace_back(photo_item(shown[1], cells[1], second));
    for (const TextItem& text : foot.items()) page.items.emplace_back(text);
    result.document.pages.push_back(std::move(page));
    return result;
}

}  // namespace quarterturn
