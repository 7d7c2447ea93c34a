#include "indexer/sheet/head_svg.h"

#include <array>
#include <cmath>

namespace quarterturn {
namespace {

// The drawing is 220 by 250; the head stands in its middle, the nose above it.
constexpr double middle_x = 110;
constexpr double middle_y = 132;
constexpr double half_width = 88;
constexpr double half_height = 108;

constexpr const char* outline =
    R"(<ellipse cx="110" cy="132" rx="88" ry="108" stroke-width="2"/>)"
    R"(<path d="M98 25 L110 6 L122 25 M22 122 q-16 10 0 26 M198 122 q16 10 0 26" stroke-width="2"/>)";

std::string rounded(double number) {
    return std::to_string(static_cast<int>(std::lround(number)));
}

std::string in_drawing(const PlanPoint& point, const char* between) {
    return rounded(middle_x + point.x * half_width) + between +
           rounded(middle_y + point.y * half_height);
}

std::string stroke_svg(const Stroke& stroke) {
    std::string points;
    for (const PlanPoint& point : stroke.points) points += in_drawing(point, ",") + ' ';
    if (!points.empty()) points.pop_back();
    const bool parting = stroke.kind == StrokeKind::parting;
    return "<polyline points=\"" + points + "\" stroke-linejoin=\"round\" stroke-width=\"" +
           (parting ? "6\"" : "3\" stroke-dasharray=\"9 6\"") + "/>";
}

std::string mark_svg(const PlanMark& mark) {
    const PlanPoint below{mark.at.x, mark.at.y + 7 / half_height};  // the number's foot
    const std::string at = in_drawing(mark.at, "\" cy=\"");
    const std::string foot = in_drawing(below, "\" y=\"");
    return "<circle cx=\"" + at + "\" r=\"15\" class=\"mark\" stroke-width=\"2\"/><text x=\"" +
           foot + "\" text-anchor=\"middle\" font-size=\"20\" font-weight=\"700\">" +
           std::to_string(mark.number) + "</text>";
}

}  // namespace

std::string head_svg(const HeadDrawing& drawing) {
    std::string svg =
        "<svg class=\"head\" viewBox=\"0 0 220 250\" width=\"220\" height=\"250\" role=\"img\" "
        "aria-label=\"Parting and sections, seen from above, front at the top\">";
    svg += outline;
    for (const Stroke& stroke : drawing.strokes) svg += stroke_svg(stroke);
    for (const PlanMark& mark : drawing.marks) svg += mark_svg(mark);
    return svg + "</svg>\n";
}

}  // namespace quarterturn
