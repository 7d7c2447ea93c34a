#pragma once
// Where the items of a page lie.

#include <optional>
#include <string>

#include "indexer/sheet/page.h"

namespace quarterturn {

inline std::optional<Box> box_of(const PageItem& item) {
    if (const auto* text = std::get_if<TextItem>(&item)) return text->box;
    if (const auto* photo = std::get_if<PhotoItem>(&item)) return photo->box;
    if (const auto* frame = std::get_if<FrameItem>(&item)) return frame->box;
    if (const auto* tick = std::get_if<TickItem>(&item)) return tick->box;
    if (const auto* ring = std::get_if<RingItem>(&item)) return ring->box;
    if (const auto* head = std::get_if<HeadItem>(&item)) return head->box;
    return std::nullopt;  // grounds and rules lie under and between the others
}

inline std::vector<Box> boxes_of(const Page& page) {
    std::vector<Box> boxes;
    for (const PageItem& item : page.items) {
        if (const auto box = box_of(item)) boxes.push_back(*box);
    }
    return boxes;
}

inline constexpr double near_zero = 1e-3;  // mm

inline bool overlap(const Box& a, const Box& b) {
    return a.x + a.width > b.x + near_zero && b.x + b.width > a.x + near_zero &&
           a.y + a.height > b.y + near_zero && b.y + b.height > a.y + near_zero;
}

// A word for what is wrong with where the boxes lie: one is empty, passes the margin (mm), or
// overlaps another. Empty when all is well.
inline std::string problem_of_boxes(const Document& document, double margin) {
    for (const Page& page : document.pages) {
        const std::vector<Box> boxes = boxes_of(page);
        for (std::size_t i = 0; i < boxes.size(); ++i) {
            const Box& box = boxes[i];
            if (box.width <= 0 || box.height <= 0) return "empty";
            if (box.x < margin - near_zero || box.y < margin - near_zero ||
                box.x + box.width > page.size.width - margin + near_zero ||
                box.y + box.height > page.size.height - margin + near_zero) {
                return "passes the margin";
            }
            for (std::size_t k = 0; k < i; ++k) {
                if (overlap(box, boxes[k])) return "overlaps";
            }
        }
    }
    return {};
}

}  // namespace quarterturn
