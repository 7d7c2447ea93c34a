#pragma once
// Photos on their way out of the library: new pictures that say only what they should. Every one
// passes the gate (rules/gate.h), and stands in the ledger before its file is there.

#include <array>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/image/decode.h"
#include "indexer/looks/photo_gate.h"

namespace quarterturn {

enum class ExportShape { whole, square, four_to_five, nine_to_sixteen };
inline constexpr std::array all_export_shapes{ExportShape::whole, ExportShape::square,
                                              ExportShape::four_to_five,
                                              ExportShape::nine_to_sixteen};
std::string_view word(ExportShape shape);  // "whole", "square", "4:5", "9:16"
std::optional<ExportShape> parse_export_shape(std::string_view text);

inline constexpr int usual_export_quality = 88;  // common practice
// Pixels of the long edge, unless she names another: 2160 on screens, and all there are in print
// and for a competition (common practice).
std::optional<int> usual_long_edge(Use use);

struct ExportWishes {
    Use use = Use::website;
    Path folder;                   // made where it is not there, for the first picture
    std::optional<int> long_edge;  // pixels; nothing: all there are. No picture is made larger
    ExportShape shape = ExportShape::whole;
    int quality = usual_export_quality;  // 1 … 100
    std::string line;                    // drawn into the picture at its foot; may be empty
    std::string caption;                 // empty: look family and angle
    bool no_data_mining = false;
};

struct PhotoGone {
    Photo photo;
    std::vector<std::string> against;  // why it may not go
    std::string problem;               // why it could not be written though it may
    std::optional<Exported> exported;  // as it stands in the ledger
    std::string credit_line;           // that must stand beside it; may be empty
    // See gate.h, and papers that are no longer what was attached: it went all the same.
    std::vector<std::string> doubts;
    // That it has a flaw which she did not say is good enough; it went all the same.
    std::string flawed{};
};

// Draws words into the foot of a picture.
using DrawLine = std::function<void(cv::Mat& bgr, const std::string& words)>;

// Looks for faces where nobody has yet. A JPEG for each photo that may go, called after the use and
// its number in the ledger, and never over a file that is there. Throws StoreError when the folder
// lies in the library, or the caption names somebody who is shown. A photo of her own is a problem
// while nothing tells who she is (the setting "business name").
std::vector<PhotoGone> export_photos(Library& library, Decoder& decoder, const DrawLine& draw,
                                     std::span<const Photo> photos, const ExportWishes& wishes,
                                     LocalTime now);

}  // namespace quarterturn
