#pragma once
// A page is data first: boxes in millimetres from the top left, holding photos, text and marks. One
// painter (ui/painter) draws any page, to PDF, pixels, screen or printer.

#include <array>
#include <future>
#include <opencv2/core.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "indexer/disk/file_system.h"
#include "indexer/record/paper.h"
#include "indexer/record/recipe/head_drawing.h"
#include "indexer/record/words.h"

namespace quarterturn {

inline constexpr int print_dpi = 300;  // of every picture on paper

struct Size {
    double width = 0;
    double height = 0;
};

// Millimetres, landscape when asked for.
Size paper_size(Paper paper, bool landscape);

struct Box {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
};

// start: left for text that runs to the right, right for text that runs to the left.
enum class Align { left, centre, right, start };
enum class Tone { ink, soft, accent };

struct TextItem {
    Box box;           // wrapped inside; what does not fit is cut with an ellipsis
    std::string text;  // UTF-8, any script
    double points = 9;
    bool bold = false;
    Align align = Align::left;
    Tone tone = Tone::ink;
};

// The part of the picture that is shown, in shares of its upright width and height.
struct Part {
    double x = 0;
    double y = 0;
    double width = 1;
    double height = 1;
};

struct PhotoItem {
    Box box;  // filled by the part, centred, never stretched
    Path file;
    std::string sha256;     // of the file: one that holds something else is not shown. Or empty
    int orientation = 1;    // EXIF, still to be applied
    bool mirrored = false;  // taken in a mirror: turned the right way round when drawn
    Part part;              // of the picture the right way round
    std::string described;  // in words, for those who cannot see it
    // Decoded already while laying out: upright, not yet turned. Drawn when it has pixels enough
    // for the box, else the file is read again. Empty when nobody has decoded it.
    cv::Mat picture;
    // Being made for just these pixels (small_picture_for, box_picture.h), where anybody does.
    std::shared_future<cv::Mat> ahead;
    // A smaller copy, upright, in sRGB; drawn in place of the file when it has pixels enough for
    // the box. Empty when there is none.
    Path small_file;
    bool unnamed = false;  // where it cannot be shown, the page does not say which file it is
};

// An empty frame for a shot that is missing.
struct FrameItem {
    Box box;
    std::string text;
    double points = 7.5;
};

// A box to tick by hand; ticked already where `ticked`.
struct TickItem {
    Box box;
    bool ticked = false;
};

struct RingItem {
    Box box;
    Ring ring{};
};

struct RuleItem {  // a thin line
    double x1 = 0, y1 = 0, x2 = 0, y2 = 0;
};

// A tinted ground; items that follow stand on it. A caution carries a mark besides its tint.
struct PanelItem {
    Box box;
    bool caution = false;
};

// Partings, sections and marks on the head seen from above, as large as fits the box.
struct HeadItem {
    Box box;
    HeadDrawing drawing;
};

enum class BarFill { plain, tinted, hatched };  // told apart without colour

// An outlined bar, as in a chart; items that follow stand on it.
struct BarItem {
    Box box;
    BarFill fill = BarFill::plain;
};

// A line in ink with a short stroke across each end.
struct ThreadItem {
    double x1 = 0, y1 = 0, x2 = 0, y2 = 0;
};

using PageItem = std::variant<TextItem, PhotoItem, FrameItem, TickItem, RingItem, RuleItem,
                              PanelItem, HeadItem, BarItem, ThreadItem>;

struct Page {
    Size size;
    std::vector<PageItem> items;
};

struct Document {
    std::string title;
    std::vector<Page> pages;
};

// How high a text stands when wrapped to a width: asked of whoever will draw it.
class TextRuler {
  public:
    virtual ~TextRuler() = default;
    virtual double height_mm(const std::string& text, double points, bool bold,
                             double width_mm) = 0;
};

}  // namespace quarterturn
