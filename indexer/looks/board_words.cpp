#include "indexer/looks/board_words.h"

#include <algorithm>
#include <cmath>

namespace quarterturn {
namespace {

constexpr double same_place = 0.06;  // on the head plan, whose sides are 2 long

bool several_stylists(const WeddingBoard& board) {
    return std::ranges::any_of(board.clients, [](const BoardClient& client) {
        return std::ranges::any_of(client.seats, [](const Seat& seat) { return seat.stylist > 0; });
    });
}

bool marked_at(const HeadDrawing& drawing, const PlanPoint& at) {
    return std::ranges::any_of(drawing.marks, [&](const PlanMark& mark) {
        return std::hypot(mark.at.x - at.x, mark.at.y - at.y) < same_place;
    });
}

int next_number(const HeadDrawing& drawing) {
    int number = 1;
    for (const PlanMark& mark : drawing.marks) number = std::max(number, mark.number + 1);
    return number;
}

}  // namespace

std::string ready_text(const BoardClient& client) {
    return client.ready_by.empty() ? "no ready-by time" : "ready by " + client.ready_by;
}

std::string chair_text(const WeddingBoard& board, const BoardClient& client) {
    const bool several = several_stylists(board);
    std::string text;
    for (const Seat& seat : client.seats) {
        text += text.empty() ? "In the chair " : " and ";
        text += minute_text(seat.begins) + " to " + minute_text(seat.ends);
        if (several) text += ", with stylist " + std::to_string(seat.stylist + 1);
    }
    return text;
}

std::string evening_time(const BoardClient& client, const BoardLook& look) {
    const auto told_in = [](const BoardLook& each) -> std::string {
        const Recipe* recipe = each.recipe();
        return recipe && recipe->second_look ? recipe->second_look->at : std::string();
    };
    const std::string own = told_in(look);
    if (!own.empty()) return own;
    for (const BoardLook& other : client.looks) {
        if (!told_in(other).empty()) return told_in(other);
    }
    return {};
}

std::string pins_count_text(const BoardStep& step) {
    std::string text;
    const auto add = [&](int count, const char* one) {
        if (count == 0) return;
        if (!text.empty()) text += ", ";
        text += std::to_string(count) + " " + one + (count == 1 ? "" : "s");
    };
    add(step.pins, "pin");
    add(step.clips, "clip");
    return text;
}

std::string wait_text(const BoardStep& step) {
    if (!step.waiting_minutes) return {};
    return std::to_string(*step.waiting_minutes) + " min " + step.waits_for;
}

std::string all_pins_text(const BoardLook& look) {
    if (look.pins() == 0) return {};
    return "Pins: " + std::to_string(look.pins_in()) + " of " + std::to_string(look.pins()) +
           " in.";
}

HeadDrawing drawing_with_accessories(const Recipe& recipe) {
    HeadDrawing drawing = recipe.head_plan;
    for (const Piece& piece : recipe.pieces) {
        if (piece.kind != PieceKind::accessory || !piece.at) continue;
        if (marked_at(drawing, *piece.at)) continue;
        drawing.marks.push_back({next_number(drawing), *piece.at, piece.what});
    }
    return drawing;
}

}  // namespace quarterturn
