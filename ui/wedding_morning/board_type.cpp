#include "ui/wedding_morning/board_type.h"

#include <QApplication>
#include <QFontInfo>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr double larger_than_text = 1.25;
constexpr double lines_on_a_screen = 44;
constexpr double target_bodies = 2.1;

double share_of_body(BoardRole role) {
    switch (role) {
        case BoardRole::name:
            return 2.1;
        case BoardRole::heading:
        case BoardRole::body:
            return 1;
        case BoardRole::small:
            return 0.82;
    }
    return 1;
}

}  // namespace

BoardType BoardType::in_window() {
    return BoardType(QFontInfo(QApplication::font()).pixelSize() * larger_than_text);
}

BoardType BoardType::on_screen_of(int height) {
    return BoardType(std::max(in_window().body_, height / lines_on_a_screen));
}

QFont BoardType::font(BoardRole role) const {
    QFont font = QApplication::font();
    font.setPixelSize(px(share_of_body(role)));
    font.setBold(role == BoardRole::heading || role == BoardRole::name);
    return font;
}

int BoardType::target() const {
    return std::max(morning_target, px(target_bodies));
}

}  // namespace quarterturn
