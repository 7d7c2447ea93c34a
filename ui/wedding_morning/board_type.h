#pragma once
// Sizes of the board. On the whole screen they follow its height, so that it is read from two
// metres; in the window they follow the text size she chose.

#include <QFont>

namespace quarterturn {

enum class BoardRole { name, heading, body, small };

class BoardType {
  public:
    // Body text of so many device-independent pixels.
    explicit BoardType(double body) : body_(body) {}
    static BoardType in_window();
    // A step is at least 24 px high at 1080, the name at least 48.
    static BoardType on_screen_of(int height);

    QFont font(BoardRole role) const;
    int px(double bodies) const { return qRound(body_ * bodies); }
    int target() const;  // the least side of what is pressed, at least morning_target

    bool operator==(const BoardType&) const = default;

  private:
    double body_;
};

}  // namespace quarterturn
